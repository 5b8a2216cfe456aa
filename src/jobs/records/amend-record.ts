import { assembleRecord, type RanWith, type RecordContext } from "../../assembly/assemble-record.ts";
import { filedPages, placeInFolder } from "../../filing/filed-lines.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import type { FiledLine } from "../../filing/ledger-line.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { checkSeal } from "../../proof/check-seal.ts";
import { recordChanges, saysAnythingElse } from "../../proof/record-changes.ts";
import { sealRecord } from "../../proof/seal-record.ts";
import { signingState } from "../../proof/signing-state.ts";
import { fileDigest } from "../../record/file-digest.ts";
import { readSealedRecord } from "../../record/read-sealed-record.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import type { Disk } from "../disk.ts";
import { readWorkbook, type WorkbookReading } from "../workbook/read-workbook.ts";
import { recordPlace } from "./record-place.ts";
import type { WrittenRecord } from "./report-case.ts";
import { recordFiles, writeDraft } from "./write-record.ts";

export type AmendOptions = {
  workbook: string;
  reason: string;
  by: string;
  out: string;
  today: string;
  now: string;
  softwareVersion: string;
  /** Digest and self-test of the program, for the record. */
  ranWith?: RanWith | undefined;
};

/** The next revision, and where it was written; nothing, and problems, where there is none. */
export type Amended = { written: WrittenRecord | undefined; problems: ProblemList };

type Disks = { disk: Disk; filing: Pick<FilingDisk, "read"> };

/** Makes the next revision of an issued or filed record from a workbook that was put right: a draft until it is signed. */
export async function amendRecord(disks: Disks, page: string, options: AmendOptions): Promise<Amended> {
  const problems = new ProblemList();
  checkWords(options, problems);
  const replaced = await readReplaced(disks.filing, page, problems);
  if (replaced === undefined || problems.hasStop) return { written: undefined, problems };
  const reading = await readWorkbook(disks.disk, options.workbook, {
    ...{ today: options.today, firstLook: {} },
    decimalMark: markOfRun(replaced),
  });
  const record = nextRevision(replaced, reading, options);
  if (record === undefined) return { written: undefined, problems: reading.problems };
  // The revision is part of the name, so that the replaced record stays beside it.
  const place = `${recordPlace(options.out, record)}_r${record.revision}`;
  const drafted = await writeDraft(disks.disk, await recordFiles(record, place), place, reading.problems);
  return { written: drafted === undefined ? undefined : { record, page: drafted }, problems: reading.problems };
}

/** The decimal mark that an option gave to the run, and not the row of the instrument; a revision keeps it. */
function markOfRun({ instrument: { decimalMark }, inputs }: SealedRecord): string | undefined {
  const stated = inputs.rows.instruments[0]?.cells.decimal_mark?.trim().toLowerCase();
  return stated === decimalMark ? undefined : decimalMark;
}

function checkWords({ reason, by }: AmendOptions, problems: ProblemList): void {
  const words = [
    { option: "--reason", text: reason, accepted: "why the record is amended" },
    { option: "--by", text: by, accepted: "the name of whoever amends it" },
  ];
  for (const { option, text, accepted } of words) {
    if (text.trim() === "")
      problems.add("filing/words-missing", { file: "command line" }, { values: { option, accepted } });
  }
}

/** The record of a page that is issued by its signatures, or filed with them on paper; it must be the last revision. */
async function readReplaced(
  disk: Pick<FilingDisk, "read">,
  page: string,
  problems: ProblemList,
): Promise<SealedRecord | undefined> {
  const place = { file: page };
  const bytes = await disk.read(page);
  if (bytes === undefined) return void problems.add("options/no-such-record", place);
  const found = readSealedRecord(new TextDecoder().decode(bytes), page);
  if ("doubts" in found) {
    const says = found.doubts.map((doubt) => doubt.says).join("; ");
    return void problems.add("filing/no-record", place, { values: { says } });
  }
  const { record, written } = found;
  if (checkSeal(written).length > 0) return void problems.add("filing/seal-broken", place);
  const { standing: lines } = await filedPages(disk, placeInFolder(page).folder);
  const { isIssued, missing } = signingState(record);
  if (!isIssued && !lines.some(({ fileSha256 }) => fileSha256 === fileDigest(bytes).sha256)) {
    const values = { missing: `it is not yet signed as ${missing.join(" and ")}` };
    return void problems.add("filing/amends-draft", place, { values });
  }
  const later = laterRevision(lines, record);
  if (later === undefined) return record;
  return void problems.add("filing/superseded", place, { values: { revision: record.revision, later } });
}

function laterRevision(lines: readonly FiledLine[], record: SealedRecord): number | undefined {
  const revisions = lines
    .filter(({ tag, calibration }) => tag === record.instrument.tag && calibration === record.calibration.calibration)
    .map(({ revision }) => revision);
  return revisions.find((revision) => revision > record.revision);
}

function nextRevision(
  replaced: SealedRecord,
  { cases, named, digests, problems }: WorkbookReading,
  { softwareVersion, ranWith, reason, by, now, workbook }: AmendOptions,
): SealedRecord | undefined {
  const { tag } = replaced.instrument;
  const { calibration } = replaced.calibration;
  const rows = cases.find((one) => one.tag === tag && one.calibration === calibration)?.read();
  if (rows === undefined) {
    const isNamed = named.some((one) => one.tag === tag && one.calibration === calibration);
    if (!isNamed) problems.add("filing/not-in-workbook", { file: workbook }, { values: { tag, calibration } });
    return undefined;
  }
  const context: RecordContext = {
    softwareVersion,
    ranWith,
    digests,
    warnings: rows.warnings,
    ruleOverride: replaced.decisionRule.givenForThisRun,
    history: replaced.history,
    filedRate: replaced.filedRate,
    monteCarloDraws: replaced.monteCarloDraws,
  };
  const changes = recordChanges(replaced, assembleRecord(rows, context));
  if (!saysAnythingElse(changes)) return void problems.add("filing/nothing-differs", { file: workbook });
  const replaces = { calibration, revision: replaced.revision, sha256: replaced.seal.sha256 };
  const amendment = { replaces, reason, by, at: now, changes: [...changes] };
  return sealRecord(assembleRecord(rows, { ...context, amendment }));
}
