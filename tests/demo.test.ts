import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { filesBelow, spanwright, temporaryFolder } from "./cli/built-command.ts";

const root = fileURLToPath(new URL("..", import.meta.url));
const committed = join(root, "reports");
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
  expect(filesBelow(committed), `reports holds other files than the demo gives: ${advice}`).toEqual(filesBelow(first));
  expect(differing(first, committed), `these files of reports differ from what the demo gives: ${advice}`).toEqual([]);
});
