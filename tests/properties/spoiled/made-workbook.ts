import type { Draw } from "./draw.ts";

export type Cells = Readonly<Record<string, string>>;
export type Tables = Readonly<Record<string, readonly Cells[]>>;

/** A good workbook as rows of cells with decimal points, and what its readings were made with. */
export type MadeWorkbook = { tables: Tables; loop: MadeLoop };

export type MadeLoop = {
  lower: number;
  upper: number;
  unit: string;
  signal: readonly [number, number];
  signalUnit: "mA" | "V";
  /** Percent of span. */
  tolerance: number;
  scatter: number;
  hasPoint: boolean;
  outputs: readonly ("signal" | "value" | "counts")[];
  cycles: number;
  points: number;
  phases: readonly string[];
  decimals: Readonly<Record<string, number>>;
};

const ranges = [
  [200, 2000, "mm", 1],
  [500, 3000, "mm", 1],
  [0, 100, "mm", 2],
  [10, 90, "in", 2],
  [0.5, 8, "m", 4],
  [20, 200, "cm", 2],
  [1, 30, "ft", 3],
  [-50, 50, "mm", 2],
] as const;

const signals = [
  [4, 20, "mA"],
  [20, 4, "mA"],
  [0, 10, "V"],
  [1, 5, "V"],
  [10, 0, "V"],
] as const;

/** One loop, one calibration: readings as found and mostly as left, a switched output, standards of both kinds. */
export function madeWorkbook(draw: Draw): MadeWorkbook {
  const [lower, upper, unit, referenceDecimals] = draw.pick(ranges);
  const [atLower, atUpper, signalUnit] = draw.pick(signals);
  const tolerance = draw.pick([0.25, 0.5, 1]);
  const loop: MadeLoop = {
    ...{ lower, upper, unit, signal: [atLower, atUpper], signalUnit, tolerance },
    scatter: tolerance * draw.pick([0.03, 0.08, 0.15]),
    hasPoint: draw.chance(0.75),
    outputs: draw.pick([["signal"], ["signal", "value"], ["signal", "value"], ["signal", "counts", "value"]] as const),
    cycles: draw.pick([1, 2, 3, 3]),
    points: draw.pick([5, 5, 6, 9, 11]),
    phases: draw.chance(0.7) ? ["as_found", "as_left"] : ["as_found"],
    decimals: { reference: referenceDecimals, signal: 3, value: draw.pick([1, 2]), counts: 0 },
  };
  return {
    loop,
    tables: {
      instruments: [instrumentOf(loop)],
      outputs: [outputOf(loop)],
      standards: standardsOf(loop),
      calibrations: [
        {
          ...{ calibration: "C-1", tag: "LT-1", performed_on: "2026-03-04", performed_by: "Jo Example" },
          standards: "REF-1; METER-1",
          adjustment: loop.phases.length === 2 ? "re-teach" : "none",
        },
      ],
      readings: loop.phases.flatMap((phase) => readingsOf(loop, phase, draw)),
      trips: loop.phases.flatMap((phase) => tripsOf(loop, phase, draw)),
    },
  };
}

export function at({ lower, upper }: MadeLoop, percent: number): number {
  return lower + ((upper - lower) * percent) / 100;
}

function shown(value: number, decimals: number): string {
  return value.toFixed(decimals);
}

function instrumentOf(loop: MadeLoop): Cells {
  const { lower, upper, unit, signal, signalUnit, tolerance, outputs } = loop;
  return {
    ...{ tag: "LT-1", principle: "radar", range_lower: String(lower), range_upper: String(upper), distance_unit: unit },
    ...{ signal_lower: String(signal[0]), signal_upper: String(signal[1]), signal_unit: signalUnit },
    ...{ tolerance: String(tolerance), tolerance_basis: "percent of span" },
    ...(outputs.some((one) => one === "counts") && { counts_lower: "0", counts_upper: "27648" }),
    ...(outputs.some((one) => one === "value") && { value_lower: "0", value_upper: "100", value_unit: "%" }),
  };
}

function outputOf(loop: MadeLoop): Cells {
  const decimals = loop.decimals.reference ?? 0;
  const tolerance = shown(at(loop, 2) - at(loop, 0), decimals + 1);
  return { tag: "LT-1", output: "Q1", set_point: shown(at(loop, 30), decimals), set_point_tolerance: tolerance };
}

function standardsOf({ lower, upper, unit, signalUnit }: MadeLoop): readonly Cells[] {
  const dates = { calibrated_on: "2025-06-01", due_on: "2027-06-01" };
  const small = (upper - lower) / 20_000;
  return [
    {
      standard: "REF-1",
      quantity: "distance",
      certificate: "K-7",
      ...dates,
      expanded_uncertainty: shown(small, 5),
      uncertainty_unit: unit,
    },
    {
      standard: "METER-1",
      quantity: signalUnit === "mA" ? "current" : "voltage",
      certificate: "K-8",
      ...dates,
      expanded_uncertainty: "0.002",
      uncertainty_unit: signalUnit,
    },
  ];
}

function readingsOf(loop: MadeLoop, phase: string, draw: Draw): readonly Cells[] {
  const { cycles, points, tolerance, scatter, decimals, hasPoint, outputs, signal } = loop;
  const isFound = phase === "as_found";
  const [zero, span] = [0, 1].map(() => draw.normal() * tolerance * (isFound ? 0.5 : 0.1)) as [number, number];
  const ways = Array.from({ length: cycles }, (_, cycle) =>
    ["rising", "falling"].flatMap((direction) => {
      const order = Array.from({ length: points }, (__, place) => (100 * place) / (points - 1));
      return (direction === "rising" ? order : order.toReversed()).map((percent) => ({
        cycle: cycle + 1,
        direction,
        percent,
      }));
    }),
  ).flat();
  const wander = draw.pick([0, 0.05, 0.2]);
  return ways.map(({ cycle, direction, percent }) => {
    const reference = Number(shown(at(loop, percent + draw.normal() * wander), decimals.reference ?? 0));
    const given = (100 * (reference - loop.lower)) / (loop.upper - loop.lower);
    const made = given + zero + (span * given) / 100 + draw.normal() * scatter;
    return {
      ...{ calibration: "C-1", phase, cycle: String(cycle), direction },
      ...(hasPoint && { point: String(Number(at(loop, percent).toPrecision(10))) }),
      reference: shown(reference, decimals.reference ?? 0),
      signal: shown(signal[0] + ((signal[1] - signal[0]) * made) / 100, 3),
      ...(outputs.some((one) => one === "counts") && { counts: shown(276.48 * made, 0) }),
      ...(outputs.some((one) => one === "value") && { value: shown(made, decimals.value ?? 1) }),
    };
  });
}

function tripsOf(loop: MadeLoop, phase: string, draw: Draw): readonly Cells[] {
  const off = draw.normal() * 0.2;
  const written = (percent: number) => shown(at(loop, percent), (loop.decimals.reference ?? 0) + 1);
  return [1, 2, 3].flatMap((cycle) => {
    const common = { calibration: "C-1", phase, output: "Q1" };
    return [
      { ...common, direction: "approach", cycle: String(cycle), reference: written(30 + off + draw.normal() * 0.02) },
      { ...common, direction: "recede", cycle: String(cycle), reference: written(31 + off + draw.normal() * 0.02) },
    ];
  });
}
