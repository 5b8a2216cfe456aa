import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeFixed } from "../../units/write-number.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import type { SwitchedPhaseRecord, TrippedPhase } from "../texts/switching-texts.ts";

type TripsProps = { record: CalibrationRecord; number: number; output: string; tripped: readonly TrippedPhase[] };

type TripDirection = SwitchedPhaseRecord["trips"][number]["direction"];
const directions: readonly TripDirection[] = ["approach", "recede"];

/** Every trip as it was recorded, a row a cycle. */
export function TripsTable({ record, number, output, tripped }: TripsProps) {
  const columns: readonly Column<number | undefined>[] = [
    { heading: "Cycle", isRowHeader: true, text: (cycle) => (cycle === undefined ? "not stated" : String(cycle)) },
    ...tripped.flatMap(({ title, phase }) =>
      directions.map(
        (direction): Column<number | undefined> => ({
          ...{ heading: `${title}, ${direction}`, kind: "number" },
          text: (cycle) => distancesOf(phase, direction, cycle),
        }),
      ),
    ),
  ];
  return (
    <DataTable
      label={`Trips of switched output ${number}`}
      caption={`Trips of ${output}, ${record.instrument.distanceUnit}`}
      kind="plain trips"
      columns={columns}
      rows={cyclesOf(tripped)}
    />
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
