import type { CalibrationRecord, JudgedPointRecord } from "../../record/record-schema.ts";
import { writeFixed, writePlain, writeSignificant } from "../../units/write-number.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { degreesWords } from "./budget-table.tsx";

type BudgetsProps = { record: CalibrationRecord; title: string; points: readonly JudgedPointRecord[] };

/** The budgets of every test point beside each other: a contribution a row, a point a column. */
export function BudgetsTable({ record, title, points }: BudgetsProps) {
  const unit = record.instrument.distanceUnit;
  const missing = [...new Set(points.flatMap(({ budget }) => budget.missing))];
  return (
    <DataTable
      label={title}
      caption={`${title}: standard uncertainty of each contribution, ${unit}`}
      kind="plain is-wide budgets"
      columns={columnsOf(record, points)}
      rows={[...contributions(points), ...sums(points)]}
      classOf={({ isSum }) => (isSum ? "sum" : undefined)}
    >
      <Disagreements points={points} unit={unit} />
      {missing.length > 0 && <p class="small">Not in the budgets: {missing.join("; ")}.</p>}
    </DataTable>
  );
}

type BudgetRow = { name: string; isSum?: boolean; of: (point: JudgedPointRecord) => string };

function columnsOf({ instrument }: CalibrationRecord, points: readonly JudgedPointRecord[]) {
  return [
    { heading: "Contribution", isRowHeader: true, text: ({ name }) => name },
    ...points.map(
      (point): Column<BudgetRow> => ({
        heading: `${writePlain(Number(point.point.toPrecision(6)))} ${instrument.distanceUnit}, ${point.direction}`,
        ...{ kind: "number", text: ({ of }) => of(point) },
      }),
    ),
  ] satisfies readonly Column<BudgetRow>[];
}

/** Every source that any of the points has, in the order of the budgets. */
function contributions(points: readonly JudgedPointRecord[]): readonly BudgetRow[] {
  const names = new Set(points.flatMap(({ budget }) => budget.lines.map(({ source }) => source)));
  return [...names].map((name) => ({
    name,
    of: ({ budget }) => {
      const lines = budget.lines.filter(({ source }) => source === name);
      return lines.map(({ standardUncertainty }) => writeSignificant(standardUncertainty, 3)).join(", ") || "–";
    },
  }));
}

function sums(points: readonly JudgedPointRecord[]): readonly BudgetRow[] {
  const drawn: BudgetRow = {
    ...{ name: "Half interval by drawing (JCGM 101:2008)", isSum: true },
    of: ({ monteCarlo }) => (monteCarlo === undefined ? "–" : writeSignificant(monteCarlo.halfWidth, 3)),
  };
  return [
    { name: "Combined", isSum: true, of: ({ budget }) => writeSignificant(budget.combinedUncertainty, 3) },
    {
      ...{ name: "Effective degrees of freedom", isSum: true },
      of: ({ budget }) => degreesWords(budget.effectiveDegreesOfFreedom),
    },
    { name: "k", isSum: true, of: ({ coverageFactor }) => writeFixed(coverageFactor, 2) },
    { name: "U", isSum: true, of: ({ expandedUncertainty }) => writeSignificant(expandedUncertainty, 2) },
    ...(points.some(({ monteCarlo }) => monteCarlo !== undefined) ? [drawn] : []),
  ];
}

/** Where drawing does not agree, and why. */
function Disagreements({ points, unit }: { points: readonly JudgedPointRecord[]; unit: string }) {
  return points.map(
    ({ point, monteCarlo }) =>
      monteCarlo?.agrees === false && (
        <p key={point} class="small">
          At {writePlain(Number(point.toPrecision(6)))} {unit} drawing does not agree with the budget:{" "}
          {monteCarlo.reason}.
        </p>
      ),
  );
}
