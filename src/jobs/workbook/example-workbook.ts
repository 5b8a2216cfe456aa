import type { TableName } from "../../model/table-names.ts";

/** A row of a table by column; everything in it is invented. */
export type ExampleRow = Readonly<Record<string, string>>;

const range = { lower: 300, upper: 2300 } as const;

const instrument: ExampleRow = {
  tag: "LT-101",
  description: "level of an invented bin",
  principle: "ultrasonic",
  range_lower: String(range.lower),
  range_upper: String(range.upper),
  distance_unit: "mm",
  signal_lower: "4",
  signal_upper: "20",
  signal_unit: "mA",
  tolerance: "0.5",
  tolerance_basis: "percent of span",
};

const standards: readonly ExampleRow[] = [
  ["RAIL-1", "distance", "X-1234", "0.2", "mm"],
  ["METER-1", "current", "X-1235", "0.002", "mA"],
].map(([standard = "", quantity = "", certificate = "", uncertainty = "", unit = ""]) => ({
  ...{ standard, quantity, certificate, calibrated_on: "2026-01-15", due_on: "2027-01-15" },
  ...{ expanded_uncertainty: uncertainty, uncertainty_unit: unit, coverage_factor: "2" },
}));

const calibration: ExampleRow = {
  calibration: "C-0001",
  tag: "LT-101",
  performed_on: "2026-03-04",
  performed_by: "Ines Example",
  standards: "RAIL-1; METER-1",
  adjustment: "re-teach",
  adjustment_note: "both ends taught anew",
};

const phases = ["as_found", "as_left"] as const;
const points = [300, 800, 1300, 1800, 2300] as const;

/** What wobbles from reading to reading: tenths of a millimetre at the rail, microamperes at the meter. */
const wobble = [2, -1, 3, 0, -2, 1, -3, 2, -1, 0, 3, -2, 1] as const;

/** Off by 0.9 % of span as found, and right as left. */
const shiftPercent = { as_found: 0.9, as_left: 0 } as const;

function readings(): readonly ExampleRow[] {
  return phases.flatMap((phase, later) =>
    [1, 2, 3].flatMap((cycle) =>
      (["rising", "falling"] as const).flatMap((direction) =>
        (direction === "rising" ? points : points.toReversed()).map((point, place): ExampleRow => {
          const step = 10 * cycle + 5 * later + place + (direction === "falling" ? 5 : 0);
          const reference = point + (wobble[(3 * step) % wobble.length] ?? 0) / 10;
          const part = (reference - range.lower) / (range.upper - range.lower) + shiftPercent[phase] / 100;
          const signal = 4 + 16 * part + (wobble[(5 * step + 2) % wobble.length] ?? 0) / 1000;
          return {
            ...{ calibration: "C-0001", phase, cycle: String(cycle), direction, point: String(point) },
            reference: reference.toFixed(1),
            signal: signal.toFixed(3),
          };
        }),
      ),
    ),
  );
}

function trips(): readonly ExampleRow[] {
  return phases.flatMap((phase) =>
    [1, 2, 3].flatMap((cycle) =>
      (["approach", "recede"] as const).map((direction, place): ExampleRow => {
        const off = phase === "as_found" ? 18 : 1;
        const reference = 400 - off + 9 * place + (wobble[cycle + place] ?? 0) / 10;
        const common = { calibration: "C-0001", phase, output: "Q1", direction, cycle: String(cycle) };
        return { ...common, reference: reference.toFixed(1) };
      }),
    ),
  );
}

/** A filled workbook of one invented loop, in which nothing is wrong; its first rows are the examples of the README. */
export const exampleTables: Readonly<Record<TableName, readonly ExampleRow[]>> = Object.freeze({
  instruments: [instrument],
  outputs: [
    { tag: "LT-101", output: "Q1", set_point: "400", set_point_tolerance: "10", polarity: "PNP", function: "NO" },
  ],
  standards,
  calibrations: [calibration],
  readings: readings(),
  trips: trips(),
  loop_checks: [{ calibration: "C-0001", item: "supply at full output", result: "pass", measured: "23.8", unit: "V" }],
  controller_limits: [
    {
      ...{ tag: "LT-101", limit: "high alarm", value: "1500", acts: "above", delay: "2", dead_band: "20" },
      ...{ final_action: "horn in the control room", kind: "alarm" },
    },
  ],
  candidates: [
    { candidate: "candidate A", principle: "radar", range_lower: "0.2", range_upper: "8", distance_unit: "m" },
  ],
});

/** One row a table for the README, which agree with each other though they stand alone. */
export const firstRows: Readonly<Record<TableName, ExampleRow>> = Object.freeze({
  ...(Object.fromEntries(Object.entries(exampleTables).map(([table, [row = {}]]) => [table, row])) as Record<
    TableName,
    ExampleRow
  >),
  calibrations: {
    ...{ calibration: "C-0001", tag: "LT-101", performed_on: "2026-03-04", performed_by: "Ines Example" },
    ...{ standards: "RAIL-1", adjustment: "none" },
  },
});
