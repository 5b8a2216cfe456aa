import type { CalibrationRecord, JudgedPointRecord } from "../../record/record-schema.ts";
import { writeFixed, writePlain, writeSignificant } from "../../units/write-number.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";

/** What has a budget: a test point, a set point. */
type Budgeted = Pick<JudgedPointRecord, "budget" | "coverageFactor" | "expandedUncertainty" | "monteCarlo">;

/** "1650 mm, falling, U = 2.1 mm". */
export function budgetTitle({ instrument }: CalibrationRecord, point: JudgedPointRecord): string {
  const at = writePlain(Number(point.point.toPrecision(6)));
  return `${at} ${instrument.distanceUnit}, ${point.direction}, U = ${writeSignificant(point.expandedUncertainty, 2)} ${instrument.distanceUnit}`;
}

/** The budget of one test point, a line a contribution, the sum below, and what it could not take in. */
export function BudgetTable({ record, point, label }: { record: CalibrationRecord; point: Budgeted; label: string }) {
  const { budget } = point;
  return (
    <DataTable
      label={`Uncertainty budget at ${label}`}
      kind="plain budget"
      columns={budgetColumns(record, point)}
      rows={budget.lines}
    >
      <MonteCarloLine record={record} point={point} />
      <SharingLine record={record} point={point} />
      {budget.missing.length > 0 && <p class="small">Not in the budget: {budget.missing.join("; ")}.</p>}
    </DataTable>
  );
}

type BudgetLine = Budgeted["budget"]["lines"][number];

function budgetColumns({ instrument }: CalibrationRecord, point: Budgeted): readonly Column<BudgetLine>[] {
  const { distanceUnit: unit, valueUnit = "" } = instrument;
  const { combinedUncertainty, effectiveDegreesOfFreedom } = point.budget;
  return [
    { heading: "Contribution", isRowHeader: true, text: ({ source }) => source, foot: { text: "Combined" } },
    {
      ...{ heading: "Value", kind: "number", foot: { text: expandedWords(point, unit), span: 4 } },
      text: (line) => `${writeSignificant(line.value, 3)} ${line.unit === "value" ? valueUnit : line.unit}`,
    },
    { heading: "Distribution", text: ({ distribution }) => distribution },
    { heading: "Divisor", kind: "number", text: ({ divisor }) => writeSignificant(divisor, 3) },
    {
      ...{ heading: "Sensitivity", unit: `${unit} per unit`, kind: "decimal" },
      text: ({ sensitivity }) => writeSignificant(sensitivity, 4),
    },
    {
      ...{ heading: "Standard uncertainty", unit, kind: "decimal" },
      text: ({ standardUncertainty }) => writeSignificant(standardUncertainty, 3),
      foot: { text: writeSignificant(combinedUncertainty, 3) },
    },
    {
      ...{ heading: "Degrees of freedom", kind: "decimal", foot: { text: degreesWords(effectiveDegreesOfFreedom) } },
      text: ({ degreesOfFreedom }) => degreesWords(degreesOfFreedom),
    },
    { heading: "Share", kind: "number", text: ({ share }) => `${writeFixed(100 * share, 0)} %` },
  ];
}

function expandedWords({ coverageFactor, expandedUncertainty, budget }: Budgeted, unit: string): string {
  const { coverageBasis, coverageProbability } = budget;
  const factor = `k = ${writeFixed(coverageFactor, 2)} (${coverageBasis}, ${writePlain(100 * coverageProbability)} %)`;
  return `${factor}: U = ${writeSignificant(expandedUncertainty, 2)} ${unit}`;
}

/** How the standard uncertainty of one reading is parted among what all share, its cycle, and itself. */
function SharingLine({ record, point }: { record: CalibrationRecord; point: Budgeted }) {
  const { sharing } = point.budget;
  if (sharing === undefined) return null;
  const cycle = sharing.cycle > 0 ? `, ${writeSignificant(sharing.cycle, 3)} the readings of a cycle` : "";
  return (
    <p class="small">
      Standard uncertainty of one reading in {record.instrument.distanceUnit}: {writeSignificant(sharing.all, 3)} all
      readings share{cycle}, {writeSignificant(sharing.reading, 3)} is its own.
    </p>
  );
}

/** The same budget by drawing, beside what it gave. */
function MonteCarloLine({ record, point }: { record: CalibrationRecord; point: Budgeted }) {
  if (point.monteCarlo === undefined) return null;
  const { draws, halfWidth, standardUncertainty, agrees, reason } = point.monteCarlo;
  const unit = record.instrument.distanceUnit;
  return (
    <p class="small">
      By drawing (JCGM 101:2008, {writePlain(draws)} draws): standard uncertainty{" "}
      {writeSignificant(standardUncertainty, 3)} {unit}, half of the shortest interval {writeSignificant(halfWidth, 3)}{" "}
      {unit}; {agrees ? "agrees with the budget." : `does not agree: ${reason}.`}
    </p>
  );
}

export function degreesWords(degreesOfFreedom: number | null): string {
  if (degreesOfFreedom === null) return "unlimited";
  return degreesOfFreedom > 1000
    ? "over 1000"
    : writeFixed(degreesOfFreedom, Number.isInteger(degreesOfFreedom) ? 0 : 1);
}
