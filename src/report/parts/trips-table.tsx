import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeFixed } from "../../units/write-number.ts";
import type { SwitchedPhaseRecord } from "../texts/switching-texts.ts";
import type { TrippedPhase } from "./switching.tsx";

type TripsProps = { record: CalibrationRecord; number: number; output: string; tripped: readonly TrippedPhase[] };

type TripDirection = SwitchedPhaseRecord["trips"][number]["direction"];
const directions: readonly TripDirection[] = ["approach", "recede"];

/** Every trip as it was recorded, a row a cycle. */
export function TripsTable({ record, number, output, tripped }: TripsProps) {
  const unit = record.instrument.distanceUnit;
  return (
    <section class="wide" aria-label={`Trips of switched output ${number}`} tabIndex={0}>
      <table class="plain trips">
        <caption>
          Trips of {output}, {unit}
        </caption>
        <thead>
          <tr>
            <th scope="col">Cycle</th>
            {tripped.flatMap(({ name, title }) =>
              directions.map((direction) => (
                <th key={`${name} ${direction}`} scope="col" class="number">
                  {title}, {direction}
                </th>
              )),
            )}
          </tr>
        </thead>
        <tbody>
          {cyclesOf(tripped).map((cycle) => (
            <tr key={cycle}>
              <th scope="row">{cycle ?? "not stated"}</th>
              {tripped.flatMap(({ name, phase }) =>
                directions.map((direction) => (
                  <td key={`${name} ${direction}`} class="number">
                    {distancesOf(phase, direction, cycle)}
                  </td>
                )),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function cyclesOf(tripped: readonly TrippedPhase[]): readonly (number | undefined)[] {
  const cycles = new Set(tripped.flatMap(({ phase }) => phase.trips.map(({ cycle }) => cycle)));
  return [...cycles].toSorted((left, right) => (left ?? 0) - (right ?? 0));
}

/** In the order of the table; of a run with several, only the first counts. */
function distancesOf(
  { trips, decimals }: SwitchedPhaseRecord,
  direction: TripDirection,
  cycle: number | undefined,
): string {
  return trips
    .filter((trip) => trip.direction === direction && trip.cycle === cycle)
    .map(({ reference, isCounted }) => `${writeFixed(reference, decimals)}${isCounted ? "" : " (not counted)"}`)
    .join("; ");
}
