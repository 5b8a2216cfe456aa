import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { assembleRecord } from "../../src/assembly/assemble-record.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { sentence } from "../../src/problems/sentence.ts";
import { fileDigest } from "../../src/record/file-digest.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { buildWorkbook } from "../../src/workbook/build-workbook.ts";
import { casesOf } from "../../src/workbook/calibration-case.ts";
import { readTables } from "../../src/workbook/read-tables.ts";

/** A folder of tables taken through every stage up to the records; `problems` in words, stops and warnings. */
export async function recordsOfFolder(
  folder: string,
): Promise<{ records: readonly CalibrationRecord[]; problems: readonly string[] }> {
  const files = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => ({ name, bytes: new Uint8Array(readFileSync(join(folder, name))) }));
  const problems = new ProblemList();
  const workbook = buildWorkbook(await readTables(files, problems), { today: "2026-11-01" }, problems);
  const digests = new Map(files.map(({ name, bytes }) => [name, fileDigest(bytes)]));
  return {
    records: casesOf(workbook, problems.all).map(({ read }) => {
      const found = read();
      return assembleRecord(found, { softwareVersion: "0.0.0", digests, warnings: found.warnings });
    }),
    problems: problems.all.map(sentence),
  };
}
