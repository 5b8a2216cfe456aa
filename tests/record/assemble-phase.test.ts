import { describe, expect, test } from "vitest";
import { isDetermined } from "../../src/analysis/figure.ts";
import type { Loop } from "../../src/analysis/loop.ts";
import type { Reading } from "../../src/model/calibration.ts";
import { assemblePhase } from "../../src/record/assemble-phase.ts";
import { type PhaseRecord, recordSchema } from "../../src/record/record-schema.ts";
import { expectNear, loop, reading, rounding, signalLoop } from "../analysis/sample-loop.ts";
import { frozen } from "../charts/frozen.ts";

const phaseSchema = recordSchema.shape.phases.shape.asFound;

/** Rows as a table gives them, from line 2 on; the text of a cell is the number as it is written here. */
function assembled(readings: readonly Reading[], of: Loop = loop, mark: "point" | "comma" = "point"): PhaseRecord {
  const rows = readings.map((row, index) => ({
    row,
    file: "readings.csv",
    line: index + 2,
    cells: Object.fromEntries(
      Object.entries(row).map(([name, value]) => [name, mark === "comma" ? `${value}`.replace(".", ",") : `${value}`]),
    ),
  }));
  const phase = assemblePhase(frozen(rows), of, () => mark);
  if (!isDetermined(phase)) throw new Error(phase.notDetermined);
  return phase;
}

test("one reading of 12.16 mA at 50 mm within ±1 mm passes", () => {
  const phase = assemblePhase(
    [
      {
        file: "readings.csv",
        line: 2,
        cells: { reference: "50", signal: "12.16" },
        row: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.16 },
      },
    ],
    {
      characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
      toleranceTerms: [{ basis: "distance", plus: 1, minus: 1 }],
      faultLevels: {},
      signalUnit: "mA",
    },
    () => "point",
  );
  expect(isDetermined(phase) && phase.verdict).toBe("pass");
});

test("what cannot be judged comes with its reason", () => {
  const rows = [{ file: "readings.csv", line: 2, cells: {}, row: reading(50, { counts: 1 }) }];
  expect(assemblePhase(rows, signalLoop, () => "point")).toHaveProperty("notDetermined");
});

describe("every figure that is null has its reason, and no other", () => {
  const ways = ["rising", "falling", "rising", "falling"] as const;
  const full = ways.flatMap((direction) =>
    [0, 50, 100].map((reference) => reading(reference, { direction, signal: 4, value: 0 })),
  );
  test.each<[string, readonly Reading[], readonly string[]]>([
    ["everything", full, []],
    [
      "one reading",
      [reading(50, { signal: 12 })],
      [
        "fit",
        "hysteresis",
        "hysteresis.withinOneCycle",
        "linearity",
        "loopError",
        "repeatability",
        "spanError",
        "verdicts.controller",
        "zeroError",
      ],
    ],
    [
      "a rejected reading alone",
      [reading(50, { signal: 12, rejected: "slipped" })],
      [
        "fit",
        "hysteresis",
        "hysteresis.withinOneCycle",
        "inaccuracy",
        "linearity",
        "loopError",
        "maximumMeasuredError",
        "repeatability",
        "spanError",
        "verdict",
        "verdicts.controller",
        "verdicts.sensor",
        "worst",
        "zeroError",
      ],
    ],
  ])("%s", (_, readings, names) => {
    const phase = assembled(readings);
    expect(Object.keys(phase.notDetermined).sort()).toEqual(names);
    for (const name of names) {
      if (name === "linearity") expect(Object.values(phase.linearity)).toEqual([null, null, null, null]);
      else
        expect(
          name
            .split(".")
            .reduce<unknown>((part, key) => (part as Record<string, unknown> | null)?.[key] ?? null, phase),
        ).toBeNull();
    }
    expect(phaseSchema.parse(phase)).toEqual(phase);
    expect(JSON.parse(JSON.stringify(phase))).toEqual(phase);
  });
});

test("rows are named by their line in the table", () => {
  const phase = assembled([
    reading(0, { signal: 4, value: 0.3 }),
    reading(50, { signal: 12.32, value: 5 }),
    reading(100, { signal: 20, rejected: "slipped" }),
  ]);
  expect(phase.readings.map(({ row }) => row)).toEqual([2, 3, 4]);
  expect(phase.loopError?.row).toBe(2);
  expect(phase.worst).toMatchObject({ of: "controller", row: 2 });
  expectNear(phase.worst?.partOfTolerance, 3, rounding);
});

test("readings used and left out are counted apart", () => {
  const phase = assembled([
    reading(0, { signal: 4 }),
    reading(50, { signal: 3.5 }),
    reading(50, { value: 5 }),
    reading(100, { signal: 20, rejected: "slipped" }),
  ]);
  expect(phase.counted).toEqual({ readings: 4, used: 2, leftOut: 2, points: 1, cycles: 1 });
  expect(phase.readings.map(({ leftOut }) => leftOut)).toEqual([
    undefined,
    "fault signal: at or below 3.6 mA",
    undefined,
    "rejected: slipped",
  ]);
});

test.each(["point", "comma"] as const)("decimals are the most that were typed, decimal %s", (mark) => {
  const phase = assembled([reading(0.5, { signal: 4.0125, value: 0.1 }), reading(100, { signal: 20.25 })], loop, mark);
  expect(phase.decimals).toEqual({ reference: 1, signal: 4, counts: 0, value: 1 });
});

test("what a reading does not have is absent, not null or empty", () => {
  const [only] = assembled([reading(50, { signal: 12 })], signalLoop).readings;
  expect(Object.keys(only!)).toEqual([
    ...["row", "cycle", "direction", "point", "reference", "signal"],
    ...["indicated", "errorDistance", "errorSignal", "errorPercentSpan", "shares"],
    ...["toleranceLow", "toleranceHigh", "verdict"],
  ]);
});

test("an error where the tolerance is zero is written as JSON can hold it", () => {
  const ofReading: Loop = frozen({
    ...signalLoop,
    toleranceTerms: [{ basis: "percent of reading", plus: 1, minus: 1 }],
  } as const);
  const phase = assembled([reading(0, { signal: 4.5 })], ofReading);
  expect(phase).toMatchObject({ verdict: "fail", worst: { partOfTolerance: null } });
  expect(phaseSchema.safeParse(phase).success).toBe(true);
});
