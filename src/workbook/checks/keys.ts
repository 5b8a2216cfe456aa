import { lookOfName } from "../../model/look-of-name.ts";
import { nameColumns } from "../belonging.ts";
import type { DraftRow } from "../table-row.ts";
import type { Check, CheckContext } from "./check-context.ts";

const whatByTable = {
  instruments: "tag",
  outputs: "output of the tag",
  controller_limits: "limit of the tag",
  standards: "standard",
  calibrations: "calibration",
  candidates: "candidate",
} as const;

type KeyedTable = keyof typeof whatByTable;

const betweenParts = "\u0000";

/** Each name stands in its table once, and no two look the same. */
export const keys: Check = (context) => {
  for (const table of Object.keys(whatByTable) as KeyedTable[]) checkKeys(table, context);
};

function checkKeys(table: KeyedTable, { drafts, report }: CheckContext): void {
  const firstByFold = new Map<string, { draft: DraftRow; name: string }>();
  const column: string = nameColumns[table].at(-1) ?? "";
  const what = whatByTable[table];
  for (const draft of drafts[table] as readonly DraftRow[]) {
    const name = nameOf(table, draft);
    if (name === undefined) continue;
    const first = firstByFold.get(lookOf(name));
    if (first === undefined) {
      firstByFold.set(lookOf(name), { draft, name });
    } else if (first.name === name) {
      report(table, draft, "model/key-twice", { column, values: { what, firstLine: first.draft.line } });
    } else {
      // Neither of the two may be taken for the other: both are reported, and each stops what belongs to it.
      report(table, first.draft, "model/key-alike", { column, values: { what, otherLine: draft.line } });
      report(table, draft, "model/key-alike", { column, values: { what, otherLine: first.draft.line } });
    }
  }
}

function nameOf(table: KeyedTable, { cells }: DraftRow): string | undefined {
  const parts = nameColumns[table].map((column) => cells[column]);
  return parts.includes(undefined) ? undefined : parts.join(betweenParts);
}

const lookOf = (name: string) => name.split(betweenParts).map(lookOfName).join(betweenParts);
