import { assembleRecord } from "../../src/assembly/assemble-record.ts";
import type { Reading, Trip } from "../../src/model/calibration.ts";
import type { CalibrationRows, TableRow } from "../../src/model/calibration-case.ts";
import type { Instrument, Output } from "../../src/model/instrument.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import type { SwitchedPhaseRecord } from "../../src/record/switching-schema.ts";
import { frozen } from "../charts/frozen.ts";

/** What may differ from the usual invented output: 0 to 200 mm, set to 100 ± 0.5 mm, four cycles around it. */
export type SwitchingChanges = {
  instrument?: Partial<Instrument>;
  output?: Partial<Output>;
  trips?: readonly Partial<Trip>[];
  /** Error of every reading, distance. */
  analogError?: number;
  readings?: Partial<Reading>;
};

/** Operating 99.9 to 100.5, mean 100.15; release 103.9 to 104.4, mean 104.1. */
export const fourCycles: readonly Partial<Trip>[] = frozen(
  [100.2, 99.9, 100.5, 100].flatMap((reference, index) => [
    { direction: "approach" as const, cycle: index + 1, reference },
    { direction: "recede" as const, cycle: index + 1, reference: [104.1, 104.4, 103.9, 104][index] ?? 0 },
  ]),
);

const row = <Row>(line: number, of: Row, cells: Readonly<Record<string, string>> = {}): TableRow<Row> => ({
  row: of,
  file: "table.csv",
  line,
  cells,
});

/** The rows of a loop of 0 to 200 mm on 4 to 20 mA with one output, and a standard of U = 0.2 mm. */
export function switchingRows(changes: SwitchingChanges = {}): CalibrationRows {
  const { instrument, output, trips = fourCycles, analogError = 0, readings } = changes;
  return frozen({
    calibration: row(2, { calibration: "C-1", tag: "LT-1", performedOn: "2026-03-04", alignmentAngle: 0 }),
    instrument: row(2, {
      tag: "LT-1",
      rangeLower: 0,
      rangeUpper: 200,
      distanceUnit: "mm",
      signalLower: 4,
      signalUpper: 20,
      signalUnit: "mA",
      tolerance: 50,
      toleranceBasis: "distance",
      ...instrument,
    }),
    standards: [
      row(2, {
        standard: "GB-1",
        certificate: "EX-1",
        calibratedOn: "2026-01-14",
        dueOn: "2027-01-14",
        expandedUncertainty: 0.2,
        uncertaintyUnit: "mm",
        coverageFactor: 2,
        resolution: 0.1,
        driftPerYear: 0,
      }),
    ],
    outputs: [row(2, { tag: "LT-1", output: "Q1", setPoint: 100, setPointTolerance: 0.5, ...output })],
    readings: [0, 50, 150, 200].map((reference, index) => {
      const signal = 4 + (16 * (reference + analogError)) / 200;
      const typed = { reference: reference.toFixed(1), signal: signal.toFixed(3) };
      const phase = "as_found" as const;
      return row(
        index + 2,
        { calibration: "C-1", phase, direction: "falling" as const, reference, signal, ...readings },
        typed,
      );
    }),
    trips: trips.map((trip, index) => {
      const whole = {
        calibration: "C-1",
        phase: "as_found",
        output: "Q1",
        direction: "approach",
        reference: 100,
        ...trip,
      };
      return row(index + 2, whole as Trip, { reference: whole.reference.toFixed(1) });
    }),
    loopChecks: [],
    controllerLimits: [],
    candidates: [],
    files: [],
  } as const);
}

export function switchingRecord(changes: SwitchingChanges = {}): CalibrationRecord {
  return assembleRecord(switchingRows(changes), { softwareVersion: "0.1.0", digests: new Map(), warnings: [] });
}

/** The output as found. */
export function switchedPhase(changes: SwitchingChanges = {}): SwitchedPhaseRecord {
  const phase = switchingRecord(changes).switching?.[0]?.phases.asFound;
  if (phase === undefined) throw new RangeError("switchedPhase: the output was not tripped as found");
  return phase;
}
