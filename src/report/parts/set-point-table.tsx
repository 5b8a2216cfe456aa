import { greatestOf } from "../../numeric/least-and-greatest.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { decimalsOf as writtenDecimals } from "../../units/decimal-mark.ts";
import { writeFixed, writePlain } from "../../units/write-number.ts";
import { Part } from "../annexes/part.tsx";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";

/** What belongs together along the loop: distance, signal, counts, controller value, percent of span. */
export function SetPointTable({ record }: { record: CalibrationRecord }) {
  const { setPointTable } = record;
  if (setPointTable === undefined) return null;
  const hasCounts = setPointTable.some(({ counts }) => counts !== null);
  const hasValue = setPointTable.some(({ value }) => value !== null);
  return (
    <Part id="set-points" title="Set points and signals" kind="set-point-part">
      <p class="small">
        What the loop is meant to give, from its range, its signal ends and the controller's scaling; nothing here was
        measured. A fault level is a signal alone.
      </p>
      <PointsAndSignals record={record} points={setPointTable} hasCounts={hasCounts} hasValue={hasValue} />
    </Part>
  );
}

type SetPoint = NonNullable<CalibrationRecord["setPointTable"]>[number];

type PointsProps = {
  record: CalibrationRecord;
  points: readonly SetPoint[];
  hasCounts: boolean;
  hasValue: boolean;
};

function PointsAndSignals({ record: { instrument }, points, hasCounts, hasValue }: PointsProps) {
  const distanceDecimals = decimalsOf(points.map(({ distance }) => distance));
  const valueDecimals = decimalsOf(points.map(({ value }) => value));
  const ofCounts: Column<SetPoint> = { heading: "Counts", kind: "number", text: ({ counts }) => shown(counts, 0) };
  const ofValue: Column<SetPoint> = {
    ...{ heading: "Controller", unit: instrument.valueUnit, kind: "number" },
    text: ({ value }) => shown(value, valueDecimals),
  };
  const columns: readonly Column<SetPoint>[] = [
    { heading: "Point", isRowHeader: true, text: ({ name }) => name },
    {
      ...{ heading: "Distance", unit: instrument.distanceUnit, kind: "number" },
      text: ({ distance }) => shown(distance, distanceDecimals),
    },
    { heading: "Signal", unit: instrument.signalUnit, kind: "number", text: ({ signal }) => writeFixed(signal, 3) },
    ...(hasCounts ? [ofCounts] : []),
    ...(hasValue ? [ofValue] : []),
    { heading: "% of span", kind: "number", text: ({ percentSpan }) => shown(percentSpan, 2) },
  ];
  return <DataTable label="Table of set points and signals" kind="plain set-points" columns={columns} rows={points} />;
}

/** As many decimals as the number of the column that needs most. */
function decimalsOf(column: readonly (number | null)[]): number {
  const written = column.map((value) => (value === null ? "" : writePlain(Number(value.toPrecision(6)))));
  return Math.max(0, greatestOf(written.map((text) => writtenDecimals(text))));
}

function shown(value: number | null, decimals: number): string {
  return value === null ? "–" : writeFixed(value, decimals);
}
