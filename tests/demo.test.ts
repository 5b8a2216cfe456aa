import { cpSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { filesBelow, spanwright, temporaryFolder } from "./cli/built-command.ts";
import { digestsOf } from "./computed/demo/digests-of.mjs";
import { madeDemo } from "./made-demo.ts";

const root = fileURLToPath(new URL("..", import.meta.url));
const committed = join(root, "reports");
const filed = join(madeDemo(), "filed");
const advice = "run npm run demo and review the change";

/** The list is of another run, at another time and place. */
test("the demo plant gives the same bytes again, those in the list of digests", () => {
  expect(readFileSync(join(committed, "digests.txt"), "utf8").split("\n"), advice).toEqual(
    digestsOf(madeDemo()).split("\n"),
  );
});

test("the pages in reports are those that the demo gives", () => {
  const kept = filesBelow(committed).filter((name) => name !== "digests.txt");
  expect(kept).toContain("LT-310/C-2026-015.html");
  const differing = kept.filter((name) => !isSame(join(committed, name), join(madeDemo(), name)));
  expect(differing, advice).toEqual([]);
});

function isSame(one: string, other: string): boolean {
  return existsSync(other) && readFileSync(one).equals(readFileSync(other));
}

test("the filing folder of the demo is verified without a doubt, by its own table of signers", () => {
  const { exitCode, output, complaints } = spanwright("verify", filed);
  const pages = filesBelow(filed).filter((name) => /_r\d+\.html$/u.test(name));
  expect(complaints).toBe("");
  expect(output.match(/^doubt.*$(?:\n {2}.*)*/gmu) ?? []).toEqual([]);
  expect(
    output.match(
      /^ok .*, signed, filed (?:on the day of|\d+ days? after) the last signature(?:, superseded by revision \d)?$/gmu,
    ),
  ).toHaveLength(pages.length);
  expect(output).toContain(`${pages.length + 1} files verified: no doubt`);
  expect(exitCode).toBe(0);
});

test("one byte changed in a copy of it is found", () => {
  const copy = temporaryFolder();
  cpSync(filed, copy, { recursive: true });
  const page = join(copy, "ZT-250/2021-12-07_C-2021-060_r1.html");
  const bytes = readFileSync(page);
  const middle = Math.floor(bytes.length / 2);
  bytes[middle] = (bytes[middle] ?? 0) ^ 1;
  writeFileSync(page, bytes);
  const { exitCode, output } = spanwright("verify", copy);
  expect(exitCode).toBe(1);
  expect(output.match(/^doubt.*$/gmu)).toEqual([
    expect.stringContaining("ledger.jsonl"),
    expect.stringContaining("ZT-250/2021-12-07_C-2021-060_r1.html"),
  ]);
});
