import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeFixed } from "../../units/write-number.ts";
import { plainNumber } from "../number-style.ts";
import { Definitions } from "./definitions.tsx";

/** What belongs together along the loop: distance, signal, counts, controller value, percent of span. */
export function SetPointTable({ record }: { record: CalibrationRecord }) {
  const { setPointTable, instrument } = record;
  if (setPointTable === undefined) return null;
  const hasCounts = setPointTable.some(({ counts }) => counts !== null);
  const hasValue = setPointTable.some(({ value }) => value !== null);
  return (
    <section aria-labelledby="set-points-title">
      <h2 id="set-points-title">Set points and signals</h2>
      <p class="small">
        What the loop is meant to give, from its range, its signal ends and the controller's scaling; nothing here was
        measured. A fault level is a signal alone.
      </p>
      <section class="wide" aria-label="Table of set points and signals" tabIndex={0}>
        <table class="plain set-points">
          <thead>
            <tr>
              <th scope="col">Point</th>
              <th scope="col">Distance, {instrument.distanceUnit}</th>
              <th scope="col">Signal, {instrument.signalUnit}</th>
              {hasCounts && <th scope="col">Counts</th>}
              {hasValue && <th scope="col">Controller{instrument.valueUnit && `, ${instrument.valueUnit}`}</th>}
              <th scope="col">% of span</th>
            </tr>
          </thead>
          <tbody>
            {setPointTable.map(({ name, distance, signal, counts, value, percentSpan }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td class="number">{shown(distance)}</td>
                <td class="number">{writeFixed(signal, 3)}</td>
                {hasCounts && <td class="number">{counts === null ? "–" : writeFixed(counts, 0)}</td>}
                {hasValue && <td class="number">{shown(value)}</td>}
                <td class="number">{percentSpan === null ? "–" : writeFixed(percentSpan, 2)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
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

function shown(value: number | null): string {
  return value === null ? "–" : plainNumber(Number(value.toPrecision(6)));
}
