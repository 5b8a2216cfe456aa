import { readdirSync, readFileSync } from "node:fs";
import { assembleRecord } from "../../src/assembly/assemble-record.ts";
import type { Disk } from "../../src/jobs/disk.ts";
import { type ReportOptions, reportCalibrations } from "../../src/jobs/records/report-calibrations.ts";
import type { CaseReporter, WrittenLine, WrittenRecord } from "../../src/jobs/records/report-case.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { indexRow } from "../../src/report/columns/index-columns.tsx";
import { frozen } from "../charts/frozen.ts";
import { smallestWorkbook, type Texts } from "../workbook/smallest-workbook.ts";
import { inFolder, memoryDisk } from "./memory-disk.ts";

/** The version that wrote every record of these tests. */
export const softwareVersion = "0.1.0";

/** The tables of the demonstration, as they lie in the repository. */
export const demoTexts: Texts = Object.fromEntries(
  readdirSync("data-demo", { withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => [name, new Uint8Array(readFileSync(`data-demo/${name}`))]),
);

/** What the reports of a workbook come to, with every record kept. */
export async function reportKept(disk: Disk, workbook: string, options: ReportOptions) {
  const written: WrittenRecord[] = [];
  const onRecord = ({ page, isKept, record }: WrittenLine) => {
    if (record === undefined) throw new TypeError("reportKept: the record was let go");
    written.push({ record, page, ...(isKept && { isKept }) });
  };
  const { reading } = await reportCalibrations(disk, workbook, { ...options, onRecord });
  return { written, reading };
}

/** The files that a workbook gives, page and JSON by their paths, and their records. */
export async function reportedFrom(texts: Texts, path: string, options: Partial<ReportOptions> = {}) {
  const disk = memoryDisk(texts);
  const { written } = await reportKept(disk, path, {
    out: "out",
    today: "2026-11-25",
    firstLook: {},
    softwareVersion,
    ...options,
  });
  return { files: disk.written, records: written.map(({ record }) => record) };
}

/** Makes records as `report` does, those of some cases by their place, and neither draws nor writes the pages. */
function withoutPages(isMade: (place: number) => boolean): CaseReporter {
  return async function* (cases) {
    let place = 0;
    for await (const { calibrationCase, context } of cases) {
      const { warnings } = calibrationCase;
      if (isMade(place)) {
        const record = sealRecord(assembleRecord(calibrationCase, { ...context, warnings }));
        yield { written: { record, page: "", row: indexRow(record, "") }, problems: [] };
      }
      place += 1;
    }
  };
}

/** The records that a workbook gives, where nobody looks at their pages, which take most of the time. */
export async function recordsFrom(
  texts: Texts,
  path: string,
  options: Partial<ReportOptions> = {},
  isMade: (place: number) => boolean = () => true,
) {
  return (await reportedFrom(texts, path, { ...options, reporterFor: async () => withoutPages(isMade) })).records;
}

let demo: Promise<readonly SealedRecord[]> | undefined;

/** The records of the demonstration as `report` makes them, once for all tests, which leave them as they are. */
export function reportedDemo(): Promise<readonly SealedRecord[]> {
  demo ??= recordsFrom(inFolder("demo", demoTexts), "demo").then(frozen);
  return demo;
}

/** The one record of a workbook, by default of the smallest, where nobody looks at its page. */
export async function recordFrom(texts: Texts = smallestWorkbook, options: Partial<ReportOptions> = {}) {
  return (await recordsFrom(inFolder("book", texts), "book", options))[0] as SealedRecord;
}

/** The one record of a workbook, by default of the smallest, with its page and its JSON. */
export async function reportedRecord(texts: Texts = smallestWorkbook, options: Partial<ReportOptions> = {}) {
  const { files, records } = await reportedFrom(inFolder("book", texts), "book", options);
  const [page = "", json = ""] = [...files.values()];
  return { record: records[0] as SealedRecord, page, json };
}
