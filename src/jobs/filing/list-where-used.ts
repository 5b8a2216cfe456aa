import type { FilingDisk } from "../../filing/filing-disk.ts";
import { type DoubtedStandard, type RestingRecord, whereUsed } from "../../filing/where-used.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { overallSays } from "../../record/overall-words.ts";
import { type Column, namedRows } from "../../report/table/column.ts";
import { openFolder } from "./open-folder.ts";

export type WhereUsed = { rows: readonly (readonly (string | number)[])[]; problems: ProblemList };

const columns: readonly Column<RestingRecord>[] = [
  { heading: "Performed", name: "performed", text: ({ entry }) => entry.summary.performedOn ?? "not stated" },
  { heading: "Tag", name: "tag", text: ({ entry }) => entry.summary.tag },
  { heading: "Record", name: "record", text: ({ entry }) => entry.summary.calibration },
  { heading: "Revision", name: "revision", text: ({ entry, isCurrent }) => revisionWords(entry.summary, isCurrent) },
  { heading: "Result", name: "result", text: ({ entry: { summary } }) => resultOf(summary) },
  { heading: "Certificate", name: "certificate", text: ({ certificates }) => certificates.join(", ") },
  { heading: "Page", name: "page", text: ({ entry }) => entry.path },
];

/** The records of a filing folder that rest on a standard, as rows for a terminal; none where no record does. */
export async function listWhereUsed(
  disk: FilingDisk,
  folder: string,
  { standard, certificate }: DoubtedStandard,
): Promise<WhereUsed> {
  const problems = new ProblemList();
  const index = await openFolder(disk, folder, problems);
  if (index === undefined) return { rows: [], problems };
  const found = whereUsed(index.entries, { standard, certificate });
  if (found.length > 0) return { rows: namedRows(columns, found), problems };
  const named = index.entries.flatMap(({ standards }) => standards);
  const ofStandard = named.filter((one) => one.standard === standard);
  const known = ofStandard.length > 0 ? ofStandard.map((one) => one.certificate) : named.map((one) => one.standard);
  const choices = [...new Set(known)].toSorted().join(", ") || "no record of the folder names a standard";
  const place = { file: "command line" };
  const read = ofStandard.length > 0 ? certificate : standard;
  problems.add("options/standard-not-filed", place, { read, values: { choices } });
  return { rows: [], problems };
}

function resultOf({ overall }: RestingRecord["entry"]["summary"]): string {
  return overall === undefined ? "not stated" : overallSays(overall.word, overall.missing.length === 0);
}

function revisionWords({ revision }: { revision: number }, isCurrent: boolean): string {
  return isCurrent ? String(revision) : `${revision}, superseded`;
}
