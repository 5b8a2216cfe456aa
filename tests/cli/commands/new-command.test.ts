import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { tableNames } from "../../../src/model/table-names.ts";
import { filesBelow, spanwright, temporaryFolder, written } from "../built-command.ts";

test("new writes a workbook that check accepts, and says what to do next", () => {
  const folder = join(temporaryFolder(), "plant");
  const made = spanwright("new", folder);
  expect(made).toEqual({
    exitCode: 0,
    output: `wrote 10 files into ${folder}; fill in the tables as its README.md says, then: spanwright check ${folder}\n`,
    complaints: "",
  });
  expect(filesBelow(folder)).toEqual([...tableNames.map((table) => `${table}.csv`), "README.md"].sort());
  expect(spanwright("check", folder)).toEqual({
    exitCode: 0,
    output: "every table has its header and no row: nothing wrong, nothing filled in\n",
    complaints: "",
  });
});

test("report of a new workbook makes nothing and says so", () => {
  const folder = join(temporaryFolder(), "plant");
  spanwright("new", folder);
  const { exitCode, complaints } = spanwright("report", folder, "--out", join(folder, "out"));
  expect(exitCode).toBe(2);
  expect(complaints).toContain("calibrations.csv: the table has no rows");
  expect(filesBelow(join(folder, "out"))).toEqual([]);
});

test("new writes into an empty folder, and never into one that holds something", () => {
  const folder = temporaryFolder();
  expect(spanwright("new", folder).exitCode).toBe(0);
  const before = readFileSync(join(folder, "README.md"), "utf8");
  const { exitCode, complaints } = spanwright("new", folder);
  expect(exitCode).toBe(2);
  expect(complaints).toMatch(/^wrong {2}.*: the folder holds files already: .*README\.md/u);
  expect(readFileSync(join(folder, "README.md"), "utf8")).toBe(before);
});

test("new refuses a file in the folder's place", () => {
  const folder = written(temporaryFolder(), { plant: "a file" });
  const { exitCode, complaints } = spanwright("new", join(folder, "plant"));
  expect(exitCode).toBe(2);
  expect(complaints).toContain("nothing could be written there");
  expect(readFileSync(join(folder, "plant"), "utf8")).toBe("a file");
});
