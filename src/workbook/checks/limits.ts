import { columnName } from "../../model/column-name.ts";
import type { TableName } from "../../model/table-names.ts";
import type { DraftRow } from "../table-row.ts";
import type { Check, CheckContext } from "./check-context.ts";

const limitPairs = [
  ["airMin", "airMax"],
  ["supplyMin", "supplyMax"],
  ["faultLow", "faultHigh"],
] as const;

/** A lower limit lies below its upper limit. */
export const limits: Check = (context) => {
  for (const draft of context.drafts.instruments) checkLimits("instruments", draft, context);
  for (const draft of context.drafts.candidates) checkLimits("candidates", draft, context);
};

function checkLimits(table: TableName, draft: DraftRow, { report }: CheckContext): void {
  const row = draft.row as Readonly<Partial<Record<string, unknown>>>;
  for (const [lowerKey, upperKey] of limitPairs) {
    const lower = row[lowerKey];
    const upper = row[upperKey];
    if (typeof lower !== "number" || typeof upper !== "number" || lower < upper) continue;
    const values = { lower: columnName(lowerKey), upper: columnName(upperKey) };
    report(table, draft, "model/limits-reversed", { column: values.upper, values });
  }
}
