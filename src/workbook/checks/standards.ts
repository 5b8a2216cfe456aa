import type { DraftRow } from "../table-row.ts";
import type { Check, CheckContext } from "./check-context.ts";

/** The standards used were fit for use on the day, and state an uncertainty. */
export const standards: Check = (context) => {
  if (context.firstLook) return;
  for (const draft of context.drafts.standards) checkStandard(draft, context);
  for (const draft of context.drafts.calibrations) checkUse(draft, context);
};

function checkStandard(draft: DraftRow<"standards">, { report }: CheckContext): void {
  const { standard = "", calibratedOn, dueOn } = draft.row;
  if (calibratedOn !== undefined && dueOn !== undefined && dueOn < calibratedOn) {
    report("standards", draft, "model/due-before-calibrated", { column: "due_on" });
  }
  if (draft.cells.expanded_uncertainty === undefined) {
    report("standards", draft, "model/standard-without-uncertainty", { values: { standard } });
  }
}

function checkUse(draft: DraftRow<"calibrations">, { standardByName, report }: CheckContext): void {
  const { standards: names, performedOn: used } = draft.row;
  if (draft.cells.standards === undefined) report("calibrations", draft, "model/no-standard");
  if (used === undefined) return;
  for (const standard of names ?? []) {
    const { calibratedOn: calibrated = used, dueOn: due = used } = standardByName.get(standard)?.row ?? {};
    if (due < used) {
      report("calibrations", draft, "model/standard-overdue", {
        column: "standards",
        read: standard,
        values: { standard, due, used },
      });
    }
    if (calibrated > used) {
      const values = { standard, calibrated, used };
      report("calibrations", draft, "model/standard-not-yet-calibrated", {
        column: "standards",
        read: standard,
        values,
      });
    }
  }
}
