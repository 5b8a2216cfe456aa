import type { DraftRow } from "../table-row.ts";
import type { Check, CheckContext } from "./check-context.ts";

type RangedTable = "instruments" | "candidates";

/** A range has a span, and a signal that differs at its ends. */
export const range: Check = (context) => {
  for (const draft of context.drafts.instruments) checkEnds("instruments", draft, context);
  for (const draft of context.drafts.candidates) checkEnds("candidates", draft, context);
};

function checkEnds(table: RangedTable, draft: DraftRow<RangedTable>, { report }: CheckContext): void {
  const { rangeLower, rangeUpper, signalLower, signalUpper } = draft.row;
  if (rangeLower !== undefined && rangeUpper !== undefined && rangeUpper <= rangeLower) {
    const values = { lower: draft.cells.range_lower ?? "", upper: draft.cells.range_upper ?? "" };
    const code = rangeUpper === rangeLower ? "model/range-empty" : "model/range-reversed";
    report(table, draft, code, { column: "range_upper", values });
  }
  if (signalLower !== undefined && signalLower === signalUpper) {
    report(table, draft, "model/signal-flat", { column: "signal_upper" });
  }
}
