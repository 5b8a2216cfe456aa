import { overTheYears } from "../../assembly/years/over-the-years.ts";
import { historyChart } from "../../charts/history-chart.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import type { IndexEntry } from "../../filing/index-entry.ts";
import { currentRecordsByTag } from "../../filing/latest-records.ts";
import type { DecidedLine, TagLine } from "../../filing/ledger-line.ts";
import { readFiledRecord } from "../../filing/read-filed-record.ts";
import { decidedOf } from "../../filing/register-row.ts";
import { lifeOf, presentTag } from "../../filing/tag-lives.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { recordSummary } from "../../record/record-summary.ts";
import type { FiledNotes, NotesOfRecords } from "../../report/columns/history-columns.tsx";
import { renderHistory, type TagHistory } from "../../report/history-page.tsx";
import { withDecimalMark } from "../../units/decimal-mark.ts";
import type { IntervalSettings } from "../../verdict/intervals/interval-settings.ts";
import type { Disk } from "../disk.ts";
import { readDecimalMark } from "../workbook/decimal-mark-option.ts";
import { readIntervalSettings, type SettingOptions } from "../workbook/interval-settings-options.ts";
import { openFolder } from "./open-folder.ts";
import { writeDerived } from "./write-derived.ts";

/** The tag, the page to write if any, and settings of the proposals as they were typed. */
export type HistoryOptions = {
  tag: string;
  out?: string | undefined;
  settings?: SettingOptions | undefined;
  /** `--decimal-mark` as it was typed; without it, that of the last record. */
  decimalMark?: string | undefined;
  /** From the page that is written to one of the folder, whose path inside it is given. */
  linkTo?: ((path: string) => string) | undefined;
};

type Disks = { filing: FilingDisk; plain: Pick<Disk, "read" | "writeTogether"> };

/** The history of a tag from its filed pages, and a page of it where one is asked for. */
export async function writeHistory(
  disks: Disks,
  folder: string,
  { tag, out, settings: typed = {}, decimalMark, linkTo }: HistoryOptions,
): Promise<{ history: TagHistory | undefined; problems: ProblemList }> {
  const problems = new ProblemList();
  const settings = readIntervalSettings(typed, problems);
  const mark = readDecimalMark(decimalMark, problems);
  const index = problems.hasStop ? undefined : await openFolder(disks.filing, folder, problems);
  if (settings === undefined || index === undefined) return { history: undefined, problems };
  const byTag = currentRecordsByTag(index.entries);
  const now = byTag.has(tag) ? tag : presentTag({ tag, number: 0, performedOn: null }, index.tagLines);
  const entries = byTag.get(now);
  if (entries === undefined) {
    const values = { choices: someOf([...byTag.keys()].sort()) };
    problems.add("options/tag-not-filed", { file: "command line" }, { read: tag, values });
    return { history: undefined, problems };
  }
  const records = await readPages(disks.filing, folder, entries, problems);
  if (records === undefined) return { history: undefined, problems };
  const found = historyOf(records, settings);
  const history = found && {
    ...{ ...found, tag: now, fate: fateWords(entries, index.tagLines), notes: notesOf(entries, index.decisions) },
    ...(mark && { decimalMark: mark }),
  };
  if (history === undefined) problems.add("options/no-history", { file: folder }, { read: tag });
  else if (out !== undefined)
    await writePage(disks.plain, out, { ...history, notes: linked(history.notes, entries, linkTo) }, problems);
  return { history, problems };
}

/** What the ledger says of the loop beside its records: earlier tags, and what became of it since the last one. */
function fateWords(entries: readonly IndexEntry[], tagLines: readonly TagLine[]): readonly string[] {
  const last = entries.at(-1);
  const { outOfUse, exchangedOn, place } = last === undefined ? {} : lifeOf(last, tagLines);
  const earlier = [...new Set(entries.flatMap(({ filedAs }) => filedAs ?? []))];
  const filedAs = (tag: string) => entries.filter((entry) => entry.filedAs === tag).map(calibrationOf);
  return [
    ...earlier.map((tag) => `filed as ${tag}: ${filedAs(tag).join(", ")}`),
    ...(place === undefined ? [] : [`at ${place} since its last record`]),
    ...(exchangedOn === undefined ? [] : [`another sensor was put there on ${exchangedOn}, after its last record`]),
    ...(outOfUse === undefined ? [] : [`out of use since ${outOfUse.since}: ${outOfUse.why}`]),
  ];
}

const calibrationOf = ({ summary }: IndexEntry) => summary.calibration;

/** Who signed each record, and what was decided about it. */
function notesOf(entries: readonly IndexEntry[], decisions: readonly DecidedLine[]): NotesOfRecords {
  return Object.fromEntries(
    entries.map((entry) => {
      const { signedBy = [], paper, summary } = entry;
      const decided = decidedOf(entry, decisions);
      const notes: FiledNotes = {
        signedBy: [...signedBy, ...(paper === undefined ? [] : [`on paper: ${paper}`])],
        ...(decided && { decided: decided.by === null ? decided.decision : `${decided.decision} (${decided.by})` }),
      };
      return [summary.calibration, notes];
    }),
  );
}

function linked(
  notes: NotesOfRecords,
  entries: readonly IndexEntry[],
  linkTo: HistoryOptions["linkTo"],
): NotesOfRecords {
  if (linkTo === undefined) return notes;
  const links = new Map(entries.map(({ summary, path }) => [summary.calibration, linkTo(path)]));
  return Object.fromEntries(
    Object.entries(notes).map(([calibration, one]) => {
      const link = links.get(calibration);
      return [calibration, link === undefined ? one : { ...one, link }];
    }),
  );
}

const mostChoices = 20;

function someOf(tags: readonly string[]): string {
  return tags.length > mostChoices ? `${tags.slice(0, mostChoices).join(", ")}, …` : tags.join(", ");
}

/** Every page that cannot be read is told; then there is no history, for it would lack a record without a word. */
async function readPages(
  disk: Pick<FilingDisk, "read">,
  folder: string,
  entries: readonly IndexEntry[],
  problems: ProblemList,
): Promise<readonly SealedRecord[] | undefined> {
  const records: SealedRecord[] = [];
  for (const entry of entries) {
    const found = await readFiledRecord(disk, folder, entry);
    if ("record" in found) records.push(found.record);
    else problems.add("options/filed-page", { file: `${folder}/${entry.path}` }, { values: found });
  }
  return records.length === entries.length ? records : undefined;
}

async function writePage(disk: Disks["plain"], out: string, history: TagHistory, problems: ProblemList): Promise<void> {
  const [wide, narrow] = await withDecimalMark(history.decimalMark, () =>
    Promise.all([historyChart(history, "wide"), historyChart(history, "narrow")]),
  );
  const drawings = { wide, narrow };
  await writeDerived(disk, out, renderHistory(history, drawings), problems);
}

/** A tag over its records; what it is comes from the last of them. Nothing where no record has a day. */
export function historyOf(
  records: readonly SealedRecord[],
  settings?: IntervalSettings | undefined,
): TagHistory | undefined {
  const instrument = latest(records)?.instrument;
  if (instrument === undefined) return undefined;
  const { tag, description, location, distanceUnit, rangeLower, rangeUpper, intervalMonths, intervalAgreedBy } =
    instrument;
  const { decimalMark } = instrument;
  const found = overTheYears(records.map(recordSummary), { intervalMonths, instrument, settings });
  if (found === undefined) return undefined;
  return {
    ...{ tag, description, location, distanceUnit, rangeLower, rangeUpper, intervalMonths, intervalAgreedBy },
    ...(decimalMark && { decimalMark }),
    overTheYears: found,
  };
}

/** Of those of one day the last that was made. */
function latest(records: readonly SealedRecord[]): SealedRecord | undefined {
  const dayOf = ({ calibration }: SealedRecord) => calibration.performedOn ?? "";
  return records.reduce<SealedRecord | undefined>(
    (last, record) => (last === undefined || dayOf(record) >= dayOf(last) ? record : last),
    undefined,
  );
}
