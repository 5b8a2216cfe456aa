import type { CalibrationRecord, JudgedPointRecord } from "../../record/record-schema.ts";
import { writeFixed, writePlain, writeSignificant } from "../../units/write-number.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { degreesWords } from "./budget-table.tsx";

type BudgetsProps = { record: CalibrationRecord; title: string; points: readonly JudgedPointRecord[] };

/** The budgets of every test point beside each other: a contribution a row, a point a column. */
export function BudgetsTable({ record, title, points }: BudgetsProps) {
  const unit = record.instrument.distanceUnit;
  const rows = [...contributions(points), ...sums(points)];
  const missing = [...new Set(points.flatMap(({ budget }) => budget.missing))];
  return (
    <DataTable
      label={title}
      caption={`${title}: standard uncertainty of each contribution, ${unit}`}
      kind="plain is-wide budgets"
      columns={columnsOf(record, points, rows)}
      rows={rows}
      classOf={({ isSum }) => (isSum ? "sum" : undefined)}
    >
      <Disagreements points={points} unit={unit} />
      {missing.length > 0 && <p class="small">Not in the budgets: {missing.join("; ")}.</p>}
    </DataTable>
  );
}

type BudgetRow = { name: string; isSum?: boolean; of: (point: JudgedPointRecord) => string };

/** Of more test points those whose budgets read alike share a column, so that the table stays one that can be read. */
const mostColumns = 24;

function columnsOf(record: CalibrationRecord, points: readonly JudgedPointRecord[], rows: readonly BudgetRow[]) {
  const columns = points.length > mostColumns ? alike(points, rows) : points.map((point) => [point] as const);
  return [
    { heading: "Contribution", isRowHeader: true, text: ({ name }) => name },
    ...columns.map(
      (those): Column<BudgetRow> => ({
        heading: headingOf(those, record.instrument.distanceUnit),
        ...{ kind: "number", text: ({ of }) => of(those[0]) },
      }),
    ),
  ] satisfies readonly Column<BudgetRow>[];
}

type Alike = readonly [JudgedPointRecord, ...JudgedPointRecord[]];

/** In the order of the first of each. */
function alike(points: readonly JudgedPointRecord[], rows: readonly BudgetRow[]): readonly Alike[] {
  const byText = new Map<string, [JudgedPointRecord, ...JudgedPointRecord[]]>();
  for (const point of points) {
    const text = rows.map(({ of }) => of(point)).join("\n");
    const those = byText.get(text);
    if (those === undefined) byText.set(text, [point]);
    else those.push(point);
  }
  return [...byText.values()];
}

function headingOf([first, ...others]: Alike, unit: string): string {
  const place = (point: number) => `${writePlain(Number(point.toPrecision(6)))} ${unit}`;
  const last = others.at(-1);
  if (last === undefined) return `${place(first.point)}, ${first.direction}`;
  return `${others.length + 1} points, ${place(first.point)} to ${place(last.point)}`;
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
