import { execFileSync } from "node:child_process";
import { cpSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { filesBelow, spanwright, temporaryFolder } from "./cli/built-command.ts";

const root = fileURLToPath(new URL("..", import.meta.url));
const committed = join(root, "reports");
const filed = join(committed, "filed");
const advice = "run npm run demo and review the change";

/** The reports of data-demo, made as `npm run demo` makes them: paths are part of a record, so it runs from the root. */
function madeReports(): string {
  const out = temporaryFolder();
  const { exitCode, complaints } = spanwright("report", "data-demo", "--out", out);
  expect(complaints).toBe("");
  expect(exitCode).toBe(0);
  return out;
}

/** Rows of the table of calibrations below its header; no cell of it holds a newline. */
function calibrationsOfDemo(): number {
  const [, ...rows] = readFileSync(join(root, "data-demo/calibrations.csv"), "latin1").trimEnd().split("\n");
  return rows.length;
}

function differing(one: string, other: string): readonly string[] {
  return filesBelow(one).filter((name) => !readFileSync(join(one, name)).equals(readFileSync(join(other, name))));
}

test("the demo plant gives the same bytes twice, and those in reports", () => {
  const [first, second] = [madeReports(), madeReports()];
  expect(filesBelow(first)).toHaveLength(2 * calibrationsOfDemo());
  expect(filesBelow(second)).toEqual(filesBelow(first));
  expect(differing(first, second)).toEqual([]);

  expect(existsSync(committed), `the folder reports is missing: ${advice}`).toBe(true);
  const reported = filesBelow(committed).filter((name) => !/^filed(?:-histories)?\//u.test(name));
  expect(reported, `reports holds other files than the demo gives: ${advice}`).toEqual(filesBelow(first));
  expect(differing(first, committed), `these files of reports differ from what the demo gives: ${advice}`).toEqual([]);
});

test("the filing folder of the demo is made anew with the same bytes as those in reports/filed", () => {
  const made = join(temporaryFolder(), "filed");
  const maker = join(root, "tests/computed/demo/file-demo.mjs");
  expect(execFileSync(process.execPath, [maker, made], { encoding: "utf8" })).toBe("");
  expect(filesBelow(made).filter((name) => name.endsWith("_r2.html"))).toHaveLength(1);
  expect(filesBelow(filed), `reports/filed holds other files than the demo gives: ${advice}`).toEqual(filesBelow(made));
  expect(differing(made, filed), `these files of reports/filed differ from what the demo gives: ${advice}`).toEqual([]);
  const histories = [made, filed].map((folder) => `${folder}-histories`) as [string, string];
  expect(filesBelow(histories[0])).toHaveLength(5);
  expect(differing(...histories), `these histories differ from what the demo gives: ${advice}`).toEqual([]);
});

test("the filing folder of the demo is verified without a doubt, by its own table of signers", () => {
  const { exitCode, output, complaints } = spanwright("verify", "reports/filed");
  const pages = filesBelow(filed).filter((name) => /_r\d+\.html$/u.test(name));
  expect(complaints).toBe("");
  expect(output.match(/^doubt.*$(?:\n {2}.*)*/gmu) ?? []).toEqual([]);
  expect(output.match(/^ok .*, signed$/gmu)).toHaveLength(pages.length);
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
