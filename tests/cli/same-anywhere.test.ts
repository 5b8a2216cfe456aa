import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { sealedRecordSchema } from "../../src/record/record-schema.ts";
import { smallestWorkbook, withText } from "../workbook/smallest-workbook.ts";
import { command, filesBelow, temporaryFolder, written } from "./built-command.ts";

/** A workbook with a warning, because the place of one is part of a record. */
const texts = withText("standards.csv", "2027-06-01", "2025-12-01");
const look = ["--range", "0:100mm", "--signal", "4:20mA", "--tolerance", "0.5%span"];

/** A folder of a plant: a workbook, a table of readings alone, links to both of their folders. */
function plant(): string {
  const folder = temporaryFolder();
  written(folder, Object.fromEntries(Object.entries(texts).map(([name, text]) => [`plant/book/${name}`, text])));
  written(folder, { "plant/lone/LT-1.csv": smallestWorkbook["readings.csv"] });
  mkdirSync(join(folder, "plant/elsewhere"));
  for (const name of ["book", "lone"]) symlinkSync(join(folder, `plant/${name}`), join(folder, `plant/${name}-link`));
  return join(folder, "plant");
}

/** The record that the command writes, run in a folder. */
function reported(cwd: string, workbook: string, options: readonly string[]) {
  const out = temporaryFolder();
  execFileSync(process.execPath, [command, "report", workbook, "--out", out, ...options], { cwd, stdio: "pipe" });
  const [json = ""] = filesBelow(out).filter((name) => name.endsWith(".json"));
  return sealedRecordSchema.parse(JSON.parse(readFileSync(join(out, json), "utf8")));
}

function fingerprints(ways: readonly (readonly [cwd: string, path: string])[], options: readonly string[] = []) {
  const root = plant();
  const records = ways.map(([cwd, path]) => reported(join(root, cwd), path.replace("ROOT", root), options));
  return { root, records, fingerprints: [...new Set(records.map(({ seal }) => seal.fingerprint))] };
}

test("a workbook gives one fingerprint, from whichever folder and by whichever path it is read", () => {
  const {
    root,
    records,
    fingerprints: found,
  } = fingerprints([
    [".", "book"],
    [".", "./book/"],
    [".", "book-link"],
    ["book", "."],
    ["elsewhere", "../book"],
    ["elsewhere", "ROOT/book"],
    ["elsewhere", "ROOT/elsewhere/../book-link//"],
  ]);
  expect(found).toHaveLength(1);
  const [record] = records;
  expect(record?.inputs.files.map(({ name }) => name)).toEqual(Object.keys(texts).toSorted());
  expect(record?.warnings.map(({ place }) => place)).toEqual([expect.stringMatching(/^calibrations\.csv:2/u)]);
  expect(JSON.stringify(records)).not.toContain(root);
}, 60_000);

test("so does a table of readings alone", () => {
  const {
    root,
    records,
    fingerprints: found,
  } = fingerprints(
    [
      [".", "lone/LT-1.csv"],
      ["lone", "LT-1.csv"],
      ["lone", "./LT-1.csv"],
      ["elsewhere", "ROOT/lone-link/LT-1.csv"],
    ],
    look,
  );
  expect(found).toHaveLength(1);
  expect(records[0]?.inputs.files.map(({ name }) => name)).toContain("LT-1.csv");
  expect(JSON.stringify(records)).not.toContain(root);
}, 60_000);

test("what is wrong in a table is told by the path that was typed, so that it is found", () => {
  const root = plant();
  written(join(root, "book"), { "readings.csv": smallestWorkbook["readings.csv"].replace("12.01", "twelve") });
  const run = () =>
    execFileSync(process.execPath, [command, "check", "../book"], { cwd: join(root, "elsewhere"), stdio: "pipe" });
  expect(run).toThrow(/\.\.\/book\/readings\.csv:4:signal/u);
});
