import type { TableName } from "../../model/table-names.ts";
import type { DraftRow } from "../table-row.ts";
import type { Check, CheckContext } from "./check-context.ts";

/** A column that says nothing without the other. */
type Dependence = readonly [present: string, absent: string];

const instrumentDependences: readonly Dependence[] = [
  ["second_tolerance_basis", "second_tolerance"],
  ["second_tolerance_minus", "second_tolerance"],
  ["tolerance_combined", "second_tolerance"],
  ["counts_lower", "counts_upper"],
  ["counts_upper", "counts_lower"],
  ["value_lower", "value_upper"],
  ["value_upper", "value_lower"],
];

const candidateDependences: readonly Dependence[] = [
  ["range_lower", "range_upper"],
  ["range_upper", "range_lower"],
  ["range_lower", "distance_unit"],
  ["blind_zone", "distance_unit"],
  ["signal_lower", "signal_upper"],
  ["signal_upper", "signal_lower"],
  ["signal_lower", "signal_unit"],
  ["accuracy", "accuracy_basis"],
];

/** Columns without which an accuracy of each basis is no distance. */
const accuracyNeeds: Readonly<Partial<Record<string, readonly string[]>>> = {
  "percent of span": ["range_upper"],
  distance: ["distance_unit"],
  signal: ["range_upper", "signal_upper"],
};

const standardDependences: readonly Dependence[] = [
  ["expanded_uncertainty", "uncertainty_unit"],
  ["resolution", "uncertainty_unit"],
  ["drift_per_year", "uncertainty_unit"],
];

/** What only means something together is given together, and the two ends of a scale differ. */
export const instrumentPairs: Check = (context) => {
  for (const draft of context.drafts.instruments) {
    checkDependences("instruments", draft, instrumentDependences, context);
    checkSecondTolerance(draft, context);
    checkScales(draft, context);
  }
  for (const draft of context.drafts.candidates) {
    checkDependences("candidates", draft, candidateDependences, context);
    const needed = draft.row.accuracy === undefined ? [] : (accuracyNeeds[draft.row.accuracyBasis ?? ""] ?? []);
    checkDependences(
      "candidates",
      draft,
      needed.map((column) => ["accuracy", column]),
      context,
    );
  }
  for (const draft of context.drafts.standards) checkDependences("standards", draft, standardDependences, context);
};

function checkDependences(
  table: TableName,
  draft: DraftRow,
  dependences: readonly Dependence[],
  { report }: CheckContext,
): void {
  for (const [present, absent] of dependences) {
    if (draft.cells[present] === undefined || draft.cells[absent] !== undefined) continue;
    report(table, draft, "model/pair-incomplete", { column: present, values: { present, absent } });
  }
}

function checkSecondTolerance(draft: DraftRow<"instruments">, { report }: CheckContext): void {
  const { second_tolerance: tolerance, second_tolerance_basis: basis } = draft.cells;
  if (tolerance === undefined || basis !== undefined) return;
  report("instruments", draft, "model/tolerance-two-sided-basis", { column: "second_tolerance" });
}

function checkScales(draft: DraftRow<"instruments">, { report }: CheckContext): void {
  const { countsLower, countsUpper, valueLower, valueUpper } = draft.row;
  if (countsLower !== undefined && countsLower === countsUpper) {
    const values = { first: "counts_lower", second: "counts_upper" };
    report("instruments", draft, "model/pair-flat", { column: "counts_upper", values });
  }
  if (valueLower !== undefined && valueLower === valueUpper) {
    const values = { first: "value_lower", second: "value_upper" };
    report("instruments", draft, "model/pair-flat", { column: "value_upper", values });
  }
}
