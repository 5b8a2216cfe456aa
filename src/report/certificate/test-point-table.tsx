import { type PhaseName, phaseNames, phaseTitles } from "../../record/phase-name.ts";
import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import type { NumberStyle } from "../style/number-style.ts";
import type { Column } from "../table/column.ts";
import { DataTable, type RowGroup } from "../table/data-table.tsx";
import { outputRows } from "./output-rows.ts";
import { haveSameDistances, type RowOfPhase, type TestPointRow, testPointRows } from "./test-point-rows.ts";

/** Test points whose two stages stand one below the other; on paper more of them stand side by side. */
const mostStacked = 6;

/** What the meter should show at each test point, what it showed, and how much of the tolerance that takes. */
export function TestPointTable({ record, style }: { record: CalibrationRecord; style: NumberStyle }) {
  const rows = testPointRows(record, style);
  const outputs = outputRows(record);
  if (rows.length === 0 && outputs.length === 0) return null;
  const columns = haveSameDistances(rows) ? sharedColumns(record) : apartColumns(record);
  return (
    <section class="test-points" aria-labelledby="test-points-title">
      <h2 id="test-points-title">Test points</h2>
      <DataTable
        label="Table of test points"
        kind={rows.length > mostStacked ? "plain points is-wide is-long" : "plain points is-wide"}
        columns={columns}
        groups={groupsOf(record, rows, outputs)}
        classOf={({ of }) => (Object.values(of).some(({ statement }) => statement.includes("fail")) ? "has-fail" : "")}
      />
      <p class="small">{noteWords(record)}</p>
    </section>
  );
}

function groupsOf(
  { instrument }: CalibrationRecord,
  rows: readonly TestPointRow[],
  outputs: readonly TestPointRow[],
): readonly RowGroup<TestPointRow>[] {
  const title = `Switched outputs: set point, ${instrument.distanceUnit}; released at (rising), operated at (falling), ${instrument.distanceUnit}`;
  return [...(rows.length === 0 ? [] : [{ rows }]), ...(outputs.length === 0 ? [] : [{ title, rows: outputs }])];
}

/** One column of distances and one of what is expected for both phases. */
function sharedColumns(record: CalibrationRecord): readonly Column<TestPointRow>[] {
  const first = ({ of: { asFound, asLeft } }: TestPointRow) => asFound ?? asLeft;
  return [
    {
      ...{ heading: "Distance", unit: record.instrument.distanceUnit, kind: "number", isRowHeader: true },
      text: (row) => (row.isOutput ? row.name : (first(row)?.distance ?? row.name)),
    },
    ...expectedColumns(record, first),
    ...tableNames(record).flatMap((name) => foundColumns(record, name, true)),
  ];
}

/** As found and as left stood at other distances: each has its own. */
function apartColumns(record: CalibrationRecord): readonly Column<TestPointRow>[] {
  const unit = record.instrument.distanceUnit;
  return [
    { heading: "Point", unit, kind: "number", isRowHeader: true, text: ({ name }) => name },
    ...tableNames(record).flatMap((name): readonly Column<TestPointRow>[] => [
      {
        heading: "At",
        unit,
        kind: "number",
        over: phaseTitles[name],
        classOf: begins,
        text: ({ of }) => of[name]?.distance ?? "",
      },
      ...expectedColumns(record, ({ of }) => of[name]).map((column) => ({ ...column, over: phaseTitles[name] })),
      ...foundColumns(record, name, false),
    ]),
  ];
}

/** The phases that the loop, or a switched output of it, was looked at in. */
function tableNames(record: CalibrationRecord): readonly PhaseName[] {
  const all = [record, ...(record.switching ?? [])].flatMap((one) => phasesOf<unknown>(one).map(({ name }) => name));
  return phaseNames.filter((name) => all.includes(name));
}

type Of = (row: TestPointRow) => RowOfPhase | undefined;

function expectedColumns(record: CalibrationRecord, of: Of): readonly Column<TestPointRow>[] {
  return [
    {
      ...{ heading: "Expected", unit: unitsOf(record).first, kind: "number" },
      text: (row) => of(row)?.expected ?? "",
      cell: (row) => <Stacked main={of(row)?.expected} below={of(row)?.further?.expected} />,
    },
  ];
}

/** The first column of a phase has a stronger line before it. */
const begins = () => "begins";

function foundColumns(record: CalibrationRecord, name: PhaseName, isFirst: boolean): readonly Column<TestPointRow>[] {
  const over = phaseTitles[name];
  const of: Of = (row) => row.of[name];
  const isPlain = record.decisionRule.name === "simple acceptance";
  const direction = (heading: "Rising" | "Falling", key: "rising" | "falling"): Column<TestPointRow> => ({
    ...{ heading, kind: "number", over, classOf: () => (isFirst && key === "rising" ? "begins" : undefined) },
    cell: (row) => <Stacked main={of(row)?.[key]} below={of(row)?.further?.[key]} />,
  });
  return [
    direction("Rising", "rising"),
    direction("Falling", "falling"),
    {
      ...{ heading: isPlain ? "Worst error" : "Worst error ± U", unit: record.instrument.distanceUnit },
      ...{ kind: "decimal", over, text: (row) => of(row)?.error ?? "" },
    },
    { heading: "%\u00a0of\u00a0tol.", kind: "number", over, text: (row) => of(row)?.shareOfTolerance ?? "" },
    { heading: "Statement", over, classOf: (row) => statementClass(of(row)), text: (row) => of(row)?.statement ?? "" },
  ];
}

function statementClass(of: RowOfPhase | undefined): string {
  return of?.statement.includes("fail") ? "statement is-bad" : "statement";
}

/** What the signal gave and, smaller, what the stage that decides gave. */
function Stacked({ main, below }: { main: string | undefined; below: string | undefined }) {
  return (
    <>
      {main}
      {below && <span class="where">{below}</span>}
    </>
  );
}

const endNames: Readonly<Record<PhaseRecord["endOf"], string>> = {
  sensor: "",
  wiring: "the signal at the input card",
  "input card": "the raw counts",
  controller: "what the controller shows",
};

/** The unit of what was read first, and what stands smaller below it. */
function unitsOf(record: CalibrationRecord): { first: string; further?: string } {
  const { signalUnit, valueUnit } = record.instrument;
  const phases = phasesOf(record).map(({ phase }) => phase);
  const judged = phases[0]?.judged;
  const first = judged === "counts" ? "counts" : judged === "value" ? (valueUnit ?? "value") : signalUnit;
  const endOf = phases.find((phase) => phase.endOf !== "sensor")?.endOf;
  if (endOf === undefined) return { first };
  const units = { sensor: "", wiring: signalUnit, "input card": "counts", controller: valueUnit ?? "" }[endOf];
  return { first, further: [endNames[endOf], units].filter((word) => word !== "").join(", ") };
}

function noteWords(record: CalibrationRecord): string {
  const { first, further } = unitsOf(record);
  const second = further === undefined ? "" : ` Smaller below or beside it: ${further}; the errors are of that.`;
  const judged =
    record.decisionRule.name === "simple acceptance"
      ? "Worst error: of the worst single reading there"
      : "Worst error ± U: the mean of the worse direction";
  return (
    `Expected: what a meter should show at that distance, ${first}; rising and falling: the means of what it showed.` +
    `${second} ${judged}; % of tol.: the part of the tolerance that it takes. Every reading: annex A.`
  );
}
