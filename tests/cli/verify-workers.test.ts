import { cpSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { madeDemo } from "../made-demo.ts";
import { spanwright, temporaryFolder } from "./built-command.ts";

test("threads change neither what is verified nor the order in which it is said, and a noted head spares most of it", () => {
  const folder = join(temporaryFolder(), "filed");
  for (const name of ["ledger.jsonl", "signers.csv", "LT-430", "LT-808", "register.html"])
    cpSync(join(madeDemo(), "filed", name), join(folder, name), { recursive: true });
  const [one, three] = ["1", "3"].map((workers) => spanwright("verify", folder, "--workers", workers));
  expect(one?.output).toMatch(/^ok {11}\S+LT-808/mu);
  expect(one?.output).toMatch(/^doubt/mu);
  expect(three).toEqual(one);
  const head = /head [a-z ]+ · ([0-9a-f ]{19})/u.exec(one?.output ?? "")?.[1] ?? "";
  const since = spanwright("verify", folder, "--since", head);
  expect(since.output.match(/unchanged since the head/gu)).toHaveLength(7);
  expect(since.output.replace(/^ {2}unchanged since.*\n/gmu, "")).toBe(one?.output);
});
