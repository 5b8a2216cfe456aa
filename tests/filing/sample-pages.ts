import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import { assembleRecord } from "../../src/assembly/assemble-record.ts";
import { nodeFilingDisk } from "../../src/cli/node-filing-disk.ts";
import type { SignedPage } from "../../src/filing/file-page.ts";
import type { FilingDisk } from "../../src/filing/filing-disk.ts";
import { recordChanges } from "../../src/proof/record-changes.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { fileDigest } from "../../src/record/file-digest.ts";
import type { CalibrationRecord, SealedRecord } from "../../src/record/record-schema.ts";
import { checked, filesOf, smallestWorkbook, type Texts, withText } from "../workbook/smallest-workbook.ts";

/** A loop with 0.06 % error against a tolerance of 0.5 %. */
const inTolerance = await recordOf(smallestWorkbook);
/** The same with its last reading far outside. */
const outOfTolerance = await recordOf(withText("readings.csv", "100,20.01", "100,20.51"));

export async function recordOf(texts: Texts): Promise<CalibrationRecord> {
  const { cases } = await checked(texts);
  const digests = new Map(filesOf(texts).map(({ name, bytes }) => [name, fileDigest(bytes)]));
  const [rows] = cases;
  if (rows === undefined) throw new TypeError("recordOf: the workbook gives no calibration");
  return assembleRecord(rows, { softwareVersion: "0.0.0", digests, warnings: [] });
}

type Particulars = { tag?: string; calibration?: string; performedOn?: string | undefined; isOutOfTolerance?: boolean };

/** A record of that tag and number; nothing else of it differs. */
export function sampleRecord(particulars: Particulars = {}): CalibrationRecord {
  const { tag = "LT-1", calibration = "C-1", isOutOfTolerance = false } = particulars;
  const base = isOutOfTolerance ? outOfTolerance : inTolerance;
  const { performedOn: usual, ...rest } = base.calibration;
  const performedOn = "performedOn" in particulars ? particulars.performedOn : usual;
  return {
    ...base,
    instrument: { ...base.instrument, tag },
    calibration: { ...rest, tag, calibration, ...(performedOn !== undefined && { performedOn }) },
  };
}

/** The page of a record, with as little around its data as a reader needs. */
export function pageOf(record: CalibrationRecord, words = ""): SignedPage {
  const sealed = sealRecord(record);
  const json = JSON.stringify(sealed).replaceAll("<", "\\u003c");
  const text = `<!doctype html>\n<p>${words}</p>\n<script type="application/json" id="record">${json}</script>\n`;
  return { bytes: new TextEncoder().encode(text), record: sealed };
}

export function samplePage(particulars: Particulars = {}, words = ""): SignedPage {
  return pageOf(sampleRecord(particulars), words);
}

/** The next revision of a record, with another remark. */
export function amended(replaced: SealedRecord, remarks: string): SignedPage {
  const { seal, signOff: _, amendment: __, ...content } = replaced;
  const changed = { ...content, calibration: { ...content.calibration, remarks }, revision: replaced.revision + 1 };
  const replaces = {
    calibration: content.calibration.calibration,
    revision: replaced.revision,
    sha256: seal.sha256,
  };
  const changes = [...recordChanges(replaced, changed)];
  const amendment = { replaces, reason: "a remark", by: "A. Example", at: "2026-11-25T10:00:00.000+01:00", changes };
  return pageOf({ ...changed, amendment });
}

/** How a page is filed that nobody signed in it. */
export const onPaper = { paper: "binder 7" } as const;

/** A new folder that is gone after the test. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-filing-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** The real disk, with what a test wants otherwise. */
export function diskWith(changes: Partial<FilingDisk> = {}): FilingDisk {
  return { ...nodeFilingDisk(() => undefined), ...changes };
}

/** Clocks of disks are coarse: what was written in one tick with the index is read rather than believed. */
export async function settled(folder: string): Promise<void> {
  await new Promise((settle) => setTimeout(settle, 20));
  const index = join(folder, "index.jsonl");
  writeFileSync(index, readFileSync(index));
}
