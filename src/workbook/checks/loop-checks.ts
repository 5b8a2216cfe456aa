import { groupedBy } from "../../model/grouped-by.ts";
import { isBypassed } from "../../model/is-bypassed.ts";
import type { DraftRow } from "../table-row.ts";
import type { Check, CheckContext } from "./check-context.ts";

/** A bypass of a safety function has a permit; every item of a loop check has a result, and limits in their order. */
export const loopChecks: Check = (context) => {
  for (const draft of context.drafts.calibrations) checkPermit(draft, context);
  for (const draft of context.drafts.loop_checks) checkLimits(draft, context);
  for (const drafts of groupedBy(context.drafts.loop_checks, ({ row }) => row.calibration).values()) {
    checkAnswered(drafts, context);
  }
};

function checkPermit(draft: DraftRow<"calibrations">, { instrumentByTag, report }: CheckContext): void {
  const { tag, bypassPermit } = draft.row;
  const instrument = tag === undefined ? undefined : instrumentByTag.get(tag)?.row;
  if (instrument?.criticality !== "safety" || isBypassed({ bypassPermit })) return;
  report("calibrations", draft, "model/permit-missing");
}

/** An item that takes one value only has the same limit on both sides. */
function checkLimits(draft: DraftRow<"loop_checks">, { report }: CheckContext): void {
  const { low, high } = draft.row;
  if (typeof low !== "number" || typeof high !== "number" || low <= high) return;
  report("loop_checks", draft, "model/limits-reversed", { column: "high", values: { lower: "low", upper: "high" } });
}

/** Once a calibration: the first open item stands for all of them. */
function checkAnswered(drafts: readonly DraftRow<"loop_checks">[], { report }: CheckContext): void {
  const open = drafts.filter(({ cells }) => cells.result === undefined);
  const [first] = open;
  if (first === undefined) return;
  const values = { count: open.length, item: first.row.item ?? "" };
  report("loop_checks", first, "model/loop-check-open", { column: "result", values });
}
