import { columnName } from "../../model/column-name.ts";
import type { DraftRow } from "../table-row.ts";
import type { Check, CheckContext } from "./check-context.ts";

const inOrder = ["receivedOn", "performedOn", "reviewedOn", "approvedOn", "issuedOn"] as const;

/** The work was done before today, and its dates follow each other. */
export const dates: Check = (context) => {
  for (const draft of context.drafts.calibrations) {
    checkFuture(draft, context);
    checkOrder(draft, context);
  }
};

function checkFuture(draft: DraftRow<"calibrations">, { today, firstLook, report }: CheckContext): void {
  const { performedOn } = draft.row;
  if (firstLook || performedOn === undefined || performedOn <= today) return;
  report("calibrations", draft, "model/performed-in-future", { column: "performed_on", values: { today } });
}

/** Each date is held against the one given before it. */
function checkOrder(draft: DraftRow<"calibrations">, { report }: CheckContext): void {
  const given = inOrder.filter((key) => draft.row[key] !== undefined);
  for (const [index, key] of given.entries()) {
    const before = given[index - 1];
    if (before === undefined || (draft.row[key] ?? "") >= (draft.row[before] ?? "")) continue;
    const values = { later: columnName(key), earlier: columnName(before) };
    report("calibrations", draft, "model/dates-out-of-order", { column: values.later, values });
  }
}
