import type { FilingDisk } from "../../filing/filing-disk.ts";
import { ledgerName } from "../../filing/ledger.ts";
import { lineHash } from "../../filing/ledger-line.ts";
import { readFiledRecord } from "../../filing/read-filed-record.ts";
import type { FilingIndex } from "../../filing/read-index.ts";
import { textOf } from "../../filing/text-of.ts";
import type { FleetRow } from "../../fleet/fleet-columns.ts";
import { fleetByYear } from "../../fleet/fleet-order.ts";
import { type FleetEntry, fleetRow } from "../../fleet/fleet-row.ts";
import { isYearFile, yearFile } from "../../fleet/year-file.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import type { Doubt } from "../../record/doubt.ts";
import type { PartedDisk } from "../disk.ts";
import { writeOrTell } from "../write-or-tell.ts";
import { openFolder } from "./open-folder.ts";

/** The yearly files that were written, and how many records are in each; nothing where a problem stops it. */
export type YearlyFiles = readonly { path: string; records: number }[] | undefined;

const nameOf = (year: string) => `calibrations-${year}.parquet`;
const yearOfName = /^calibrations-(\d{4}|no-day)\.parquet$/u;

/** A filed page that cannot be read any more, though its line in the index could. */
class UnreadPage extends Error {
  constructor(readonly doubt: Pick<Doubt, "place" | "says">) {
    super(doubt.says);
  }
}

/**
 * Writes every record of a filing folder into a Parquet file a year; all of the files, or none.
 *
 * A yearly file of a year of which no record is left, withdrawn or disposed as they may be, is written empty: else its
 * rows would go on counting.
 *
 * @param out folder of the yearly files; made where there is none
 * @param others options that are of page and table alone, as they were typed
 */
export async function writeYearlyFiles(
  disks: { filing: FilingDisk; plain: PartedDisk },
  folder: string,
  out: string,
  others: { on?: string | undefined; decimalMark?: string | undefined } = {},
): Promise<{ written: YearlyFiles; problems: ProblemList }> {
  const problems = new ProblemList();
  refuseOptions(others, problems);
  const index = problems.hasStop ? undefined : await openFolder(disks.filing, folder, problems);
  if (index === undefined) return { written: undefined, problems };
  const begins = lineHash((await textOf(disks.filing, `${folder}/${ledgerName}`)).split("\n", 1)[0] ?? "");
  const byYear = fleetByYear(index);
  const years = [...new Set([...byYear.keys(), ...(await yearsIn(disks.filing, out))])].sort();
  const files = years.map((year) => ({ path: `${out}/${nameOf(year)}`, entries: byYear.get(year) ?? [] }));
  await refuseOthers(disks.filing, files, begins, problems);
  if (problems.hasStop) return { written: undefined, problems };
  const parted = files.map(({ path, entries }) => ({
    path,
    parts: () => yearFile(rowsOf(disks.filing, folder, entries, index), begins),
  }));
  const isWritten = await toldIfUnread(folder, problems, () =>
    writeOrTell(() => disks.plain.streamTogether(parted), out, problems),
  );
  const written = files.map(({ path, entries }) => ({ path, records: entries.length }));
  return { written: isWritten ? written : undefined, problems };
}

function refuseOptions(others: { on?: string | undefined; decimalMark?: string | undefined }, problems: ProblemList) {
  const place = { file: "command line" };
  const refuse = (option: string, why: string) =>
    problems.add("options/overridden", place, { values: { option, why, accepted: "one of the two options alone" } });
  if (others.on !== undefined) refuse("--on", "yearly files hold what the folder says now");
  if (others.decimalMark !== undefined) refuse("--decimal-mark", "numbers in yearly files have no mark");
}

async function yearsIn(disk: FilingDisk, out: string): Promise<readonly string[]> {
  const names = (await disk.namesIn(out).catch(() => undefined)) ?? [];
  return names.flatMap((name) => yearOfName.exec(name)?.[1] ?? []);
}

/** Nothing but an earlier yearly file of the same folder is written over. */
async function refuseOthers(
  disk: FilingDisk,
  files: readonly { path: string }[],
  begins: string,
  problems: ProblemList,
): Promise<void> {
  for (const { path } of files) {
    const there = await disk.read(path).catch(() => new Uint8Array());
    if (there !== undefined && !isYearFile(there, begins)) problems.add("options/not-a-yearly-file", { file: path });
  }
}

/** A page at a time: each is read, held against the ledger, and forgotten. */
async function* rowsOf(
  disk: FilingDisk,
  folder: string,
  entries: readonly FleetEntry[],
  { decisions }: Pick<FilingIndex, "decisions">,
): AsyncGenerator<FleetRow> {
  for (const fleet of entries) {
    const found = await readFiledRecord(disk, folder, fleet.entry);
    if (!("record" in found)) throw new UnreadPage({ place: fleet.entry.path, says: found.says });
    yield fleetRow(fleet, found.record, decisions);
  }
}

async function toldIfUnread(folder: string, problems: ProblemList, write: () => Promise<boolean>): Promise<boolean> {
  try {
    return await write();
  } catch (fault) {
    if (!(fault instanceof UnreadPage)) throw fault;
    const { place, says } = fault.doubt;
    problems.add("options/filed-page", { file: `${folder}/${place}` }, { values: { says } });
    return false;
  }
}
