import { checkLedger } from "../../filing/check-ledger.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { ledgerName } from "../../filing/ledger.ts";
import { textOf } from "../../filing/text-of.ts";
import { type TrailRow, trailOf } from "../../filing/trail.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { type Column, namedRows } from "../../report/table/column.ts";
import { openFolder } from "./open-folder.ts";

export type TrailOptions = { tag?: string | undefined };

export type Trail = {
  rows: readonly (readonly (string | number)[])[];
  trail: readonly TrailRow[];
  problems: ProblemList;
};

const columns: readonly Column<TrailRow>[] = [
  { heading: "Line", name: "line", text: ({ number }) => String(number) },
  { heading: "When", name: "when", text: ({ at }) => at.replace("T", " ").replace(/\.\d+/u, "") },
  { heading: "What", name: "what", text: ({ action }) => action },
  { heading: "Tag", name: "tag", text: ({ tag = "–" }) => tag },
  { heading: "Record", name: "record", text: recordWords },
  { heading: "By", name: "by", text: ({ by = "–" }) => by },
  { heading: "Words", name: "words", text: ({ says }) => says },
];

/**
 * Everything that was done in a filing folder, as rows for a terminal: who, what, when. Nothing, and problems, where one
 * page or one line of the ledger cannot be read.
 */
export async function listTrail(disk: FilingDisk, folder: string, { tag }: TrailOptions): Promise<Trail> {
  const problems = new ProblemList();
  const index = await openFolder(disk, folder, problems);
  if (index === undefined) return { rows: [], trail: [], problems };
  const { lines } = checkLedger(await textOf(disk, `${folder}/${ledgerName}`));
  const trail = trailOf(lines, index.entries, tag);
  if (trail.length > 0 || tag === undefined) return { rows: namedRows(columns, trail), trail, problems };
  const tags = lines.flatMap((line) => ("tag" in line ? [line.tag] : []));
  const choices = [...new Set(tags)].toSorted().join(", ");
  problems.add("options/tag-not-filed", { file: "command line" }, { read: tag, values: { choices } });
  return { rows: [], trail, problems };
}

function recordWords({ calibration, revision }: TrailRow): string {
  return calibration === undefined ? "–" : `${calibration}, revision ${revision}`;
}
