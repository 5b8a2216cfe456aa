import { spawnSync } from "node:child_process";
import { expect, test } from "vitest";
import { programOf } from "../../src/cli/command-line.ts";
import { completionScript } from "../../src/cli/completion-script.ts";
import { recordingConsole } from "./recording-console.ts";

const program = programOf(recordingConsole(), () => undefined);

/** What bash would offer behind these words. */
function offered(...words: readonly string[]): readonly string[] {
  const all = ["spanwright", ...words].map((word) => `'${word}'`).join(" ");
  const script = `${completionScript(program, "bash")}\nCOMP_WORDS=(${all}); COMP_CWORD=${words.length}; _spanwright; printf '%s\\n' "\${COMPREPLY[@]}"`;
  return spawnSync("bash", ["-c", script], { encoding: "utf8" }).stdout.trim().split("\n");
}

test("bash completes commands, their options, and commands of two words", () => {
  expect(offered("re")).toEqual(["report", "restore", "retire", "rename", "register"]);
  expect(offered("due", "--w")).toEqual(["--within"]);
  expect(offered("keys", "")).toEqual(["passphrase", "new"]);
  expect(offered("keys", "new", "--na")).toEqual(["--name"]);
  expect(offered("register", "filed", "--o")).toEqual(["--on"]);
});

test("every command and option is in the script of each shell", () => {
  for (const shell of ["bash", "zsh", "fish"] as const) {
    const script = completionScript(program, shell);
    for (const command of program.commands) {
      expect(script).toContain(command.name());
      for (const { long } of command.options) expect(script).toContain(long?.slice(2));
    }
  }
});
