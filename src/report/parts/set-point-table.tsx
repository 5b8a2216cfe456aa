import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeFixed, writePlain } from "../../units/write-number.ts";
import { Definitions } from "./definitions.tsx";

/** What belongs together along the loop: distance, signal, counts, controller value, percent of span. */
export function SetPointTable({ record }: { record: CalibrationRecord }) {
  const { setPointTable } = record;
  if (setPointTable === undefined) return null;
  const hasCounts = setPointTable.some(({ counts }) => counts !== null);
  const hasValue = setPointTable.some(({ value }) => value !== null);
  return (
    <section class="set-point-part" aria-labelledby="set-points-title">
      <h2 id="set-points-title">Set points and signals</h2>
      <p class="small">
        What the loop is meant to give, from its range, its signal ends and the controller's scaling; nothing here was
        measured. A fault level is a signal alone.
      </p>
      <PointsAndSignals record={record} points={setPointTable} hasCounts={hasCounts} hasValue={hasValue} />
      <Definitions
        keys={[
          "idealSignal",
          ...(hasCounts ? (["idealCounts"] as const) : []),
          ...(hasValue ? (["idealValue"] as const) : []),
          "percentOfSpan",
        ]}
      />
    </section>
  );
}

type PointsProps = {
  record: CalibrationRecord;
  points: NonNullable<CalibrationRecord["setPointTable"]>;
  hasCounts: boolean;
  hasValue: boolean;
};

function PointsAndSignals({ record: { instrument }, points, hasCounts, hasValue }: PointsProps) {
  const distanceDecimals = decimalsOf(points.map(({ distance }) => distance));
  const valueDecimals = decimalsOf(points.map(({ value }) => value));
  return (
    <section class="wide" aria-label="Table of set points and signals" tabIndex={0}>
      <table class="plain set-points">
        <thead>
          <tr>
            <th scope="col">Point</th>
            <th scope="col" class="number">
              Distance, {instrument.distanceUnit}
            </th>
            <th scope="col" class="number">
              Signal, {instrument.signalUnit}
            </th>
            {hasCounts && (
              <th scope="col" class="number">
                Counts
              </th>
            )}
            {hasValue && (
              <th scope="col" class="number">
                Controller{instrument.valueUnit && `, ${instrument.valueUnit}`}
              </th>
            )}
            <th scope="col" class="number">
              % of span
            </th>
          </tr>
        </thead>
        <tbody>
          {points.map(({ name, distance, signal, counts, value, percentSpan }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td class="number">{shown(distance, distanceDecimals)}</td>
              <td class="number">{writeFixed(signal, 3)}</td>
              {hasCounts && <td class="number">{counts === null ? "–" : writeFixed(counts, 0)}</td>}
              {hasValue && <td class="number">{shown(value, valueDecimals)}</td>}
              <td class="number">{percentSpan === null ? "–" : writeFixed(percentSpan, 2)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** As many decimals as the number of the column that needs most. */
function decimalsOf(column: readonly (number | null)[]): number {
  const written = column.map((value) => (value === null ? "" : writePlain(Number(value.toPrecision(6)))));
  return Math.max(0, ...written.map((text) => text.split(".")[1]?.length ?? 0));
}

function shown(value: number | null, decimals: number): string {
  return value === null ? "–" : writeFixed(value, decimals);
}
