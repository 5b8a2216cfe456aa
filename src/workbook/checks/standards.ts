import { type UnitKind, unitTable } from "../../units/unit-table.ts";
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
  checkUnit(draft, report);
  if (draft.cells.expanded_uncertainty === undefined) {
    report("standards", draft, "model/standard-without-uncertainty", { values: { standard } });
  }
}

/** What a unit has to measure where the standard says what it measures. */
const kindOfQuantity: Readonly<Partial<Record<string, UnitKind>>> = {
  distance: "distance",
  current: "current",
  voltage: "voltage",
  temperature: "temperature",
  humidity: "ratio",
  pressure: "pressure",
  resistance: "resistance",
};

function checkUnit({ row, ...draft }: DraftRow<"standards">, report: CheckContext["report"]): void {
  const { standard = "", quantity = "", uncertaintyUnit: unit } = row;
  const kind = kindOfQuantity[quantity];
  if (unit === undefined || kind === undefined || unitTable[unit].kind === kind) return;
  const units = Object.entries(unitTable).filter(([, one]) => one.kind === kind);
  const values = { standard, quantity, unit, units: units.map(([symbol]) => symbol).join(", ") };
  report("standards", { row, ...draft }, "model/standard-unit", { column: "uncertainty_unit", values });
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
