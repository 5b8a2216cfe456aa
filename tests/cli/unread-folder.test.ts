import { spawnSync } from "node:child_process";
import { chmodSync, cpSync } from "node:fs";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { madeDemo } from "../made-demo.ts";
import { command, temporaryFolder } from "./built-command.ts";

/** Runs the command as somebody who may not read everything: root may, and is nobody for the while. */
function asNobody(...words: readonly string[]) {
  const nobody = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...words], { encoding: "utf8", ...nobody });
  return { status, lines: stdout.trimEnd().split("\n"), complaints: stderr };
}

/** A filing folder in which the records of one loop cannot be read by everybody. */
function partlyClosed(): string {
  const folder = join(temporaryFolder(), "filed");
  for (const name of ["ledger.jsonl", "signers.csv", "LT-430", "LT-808"])
    cpSync(join(madeDemo(), "filed", name), join(folder, name), { recursive: true });
  chmodSync(join(folder, ".."), 0o755);
  chmodSync(join(folder, "LT-430"), 0o000);
  onTestFinished(() => chmodSync(join(folder, "LT-430"), 0o755));
  return folder;
}

test("one folder that cannot be read is a doubt, and keeps nobody from verifying the others", () => {
  const { status, lines, complaints } = asNobody("verify", partlyClosed());
  expect({ status, complaints }).toEqual({ status: 1, complaints: "" });
  expect(lines.filter((line) => line.startsWith("doubt")).map((line) => line.replace(/\S*\/filed\//u, ""))).toEqual([
    expect.stringMatching(/^doubt {8}ledger\.jsonl /u),
    "doubt        LT-430  unread",
  ]);
  expect(lines.filter((line) => line.startsWith("ok"))).toHaveLength(2);
  expect(lines).toContainEqual(expect.stringMatching(/the folder cannot be read: EACCES: permission denied/u));
});

test("register, due and trail do not speak of the rest as if it were all", () => {
  const folder = partlyClosed();
  for (const words of [["due"], ["register"], ["trail"]]) {
    const { status, complaints } = asNobody(...words, folder);
    expect(status, words[0]).toBe(2);
    expect(complaints, words[0]).toContain("LT-430");
  }
});
