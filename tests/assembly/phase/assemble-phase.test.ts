import { describe, expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import type { Loop } from "../../../src/analysis/readings/loop.ts";
import { assemblePhase } from "../../../src/assembly/phase/assemble-phase.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import { decisionRules } from "../../../src/model/instrument-words.ts";
import { type PhaseRecord, recordSchema } from "../../../src/record/record-schema.ts";
import type { DecisionRule } from "../../../src/verdict/decision/decision-rule.ts";
import { emptyAnalysis } from "../../analysis/sample-analysis.ts";
import { meter, rail } from "../../analysis/sample-basis.ts";
import { expectNear, loop, reading, rounding, signalLoop } from "../../analysis/sample-loop.ts";
import { frozen } from "../../charts/frozen.ts";
import { type PhaseChanges, phaseContext, phaseOf, tableRows } from "../../record/phase-of.ts";

const phaseSchema = recordSchema.shape.phases.shape.asFound;

/** With simple acceptance and without a standard; the readings are those of the loop 0 to 100 mm, ±1 mm. */
const assembled = (readings: readonly Reading[], of: Loop = loop, changes: PhaseChanges = {}): PhaseRecord =>
  phaseOf(readings, { ...changes, loop: of });

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
      loop: {
        characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
        toleranceTerms: [{ basis: "distance", plus: 1, minus: 1 }],
        faultLevels: {},
        signalUnit: "mA",
      },
      instrument: {
        tag: "LT-1",
        rangeLower: 0,
        rangeUpper: 100,
        distanceUnit: "mm",
        signalLower: 4,
        signalUpper: 20,
        signalUnit: "mA",
        tolerance: 1,
        toleranceBasis: "distance",
      },
      calibration: { calibration: "C-1", tag: "LT-1" },
      standards: [],
      rule: { name: "simple acceptance", guardFactor: 0 },
      markOf: () => "point",
    },
  );
  expect(isDetermined(phase) && phase.verdict).toBe("pass");
});

test("what cannot be judged comes with its reason", () => {
  const context = phaseContext({ loop: signalLoop });
  expect(assemblePhase(tableRows([reading(50, { counts: 1 })]), context)).toHaveProperty("notDetermined");
});

describe("every figure that is null has its reason, and no other", () => {
  const ways = ["rising", "falling", "rising", "falling"] as const;
  const full = ways.flatMap((direction, run) =>
    [0, 50, 100].map((reference) => reading(reference, { direction, signal: 4 + run / 100, value: 0 })),
  );
  test.each<[string, readonly Reading[], readonly string[]]>([
    [
      "everything but standards and scatter",
      full,
      ["spanError.combinedStandardUncertainty", "uncertainLine", "zeroError.combinedStandardUncertainty"],
    ],
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
        "uncertainLine",
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
        "linearity",
        "loopError",
        ...Object.keys(emptyAnalysis.figures),
        "spanError",
        "uncertainLine",
        "verdict",
        "verdicts.controller",
        "verdicts.sensor",
        "worst",
        "zeroError",
      ],
    ],
  ])("%s", (_, readings, names) => {
    const phase = assembled(readings);
    expect(Object.keys(phase.notDetermined).sort()).toEqual([...names].sort());
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
  const phase = assembled([reading(0.5, { signal: 4.0125, value: 0.1 }), reading(100, { signal: 20.25 })], loop, {
    mark,
  });
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

describe("the uncertainty of a phase", () => {
  const standards = [rail, meter];
  const ways = ["rising", "falling", "rising", "falling"] as const;
  /** Every point misses by `off` mm and the second cycle by 0.02 mm more. */
  const readings = (off: number, ofValue = off) =>
    ways.flatMap((direction, index) =>
      [0, 25, 50, 75, 100].map((reference) => {
        const shown = reference + off + (index > 1 ? 0.02 : 0);
        return reading(reference, { direction, signal: 4 + 0.16 * shown, value: 0.1 * (shown - off + ofValue) });
      }),
    );
  const rule = (name: DecisionRule["name"]): DecisionRule => ({ name, guardFactor: 1 });

  test("nothing is missing where standards, scatter and both directions are there", () => {
    const phase = assembled(readings(0.2), loop, { standards, rule: rule("guard band") });
    expect(phase.notDetermined).toEqual({});
    expect(phase.points.flatMap(({ budget }) => budget.missing)).toEqual([]);
    expect(phase.uncertainLine).toMatchObject({ method: "errors in both", isStraight: true });
    expect(phase.zeroError!.combinedStandardUncertainty!).toBeGreaterThan(phase.zeroError!.standardUncertainty!);
    expect(phaseSchema.parse(phase)).toEqual(phase);
    expect(JSON.parse(JSON.stringify(phase))).toEqual(phase);
  });

  test.each([
    [0.2, "pass", "pass", "pass"],
    [0.9, "pass", "fail", "conditional pass"],
    [1.1, "fail", "fail", "conditional fail"],
    [1.9, "fail", "fail", "fail"],
  ] as const)(
    "an error of %d mm: %s by simple acceptance, %s by guard band, %s by a non-binary guard band",
    (off, simple, guard, words) => {
      const verdictBy = (name: DecisionRule["name"]) =>
        assembled(readings(off), loop, { standards, rule: rule(name) }).verdict;
      expect(verdictBy("simple acceptance")).toBe(simple);
      expect(verdictBy("guard band")).toBe(guard);
      expect(verdictBy("non-binary guard band")).toBe(words);
    },
  );

  test("what cannot be decided is the verdict of the phase", () => {
    const poor = [{ ...rail, expandedUncertainty: 3 }, meter];
    const phase = assembled(readings(0.2), loop, { standards: poor, rule: rule("guard band") });
    expect(phase).toMatchObject({ verdict: "cannot be decided", verdicts: { sensor: "cannot be decided" } });
    expect(phase.points[0]).toMatchObject({ acceptanceLow: null, acceptanceHigh: null });
    expect(phase.readings.every(({ verdict }) => verdict === "pass")).toBe(true);
    expect(phaseSchema.parse(phase)).toEqual(phase);
  });

  test("under a guard band the means decide: a single reading outside is marked and fails nothing", () => {
    const scattered = [0.2, -0.2, 1.05, -1.05, 0.1, -0.1].map((error, cycle) =>
      reading(50, { cycle: cycle + 1, signal: 12 + 0.16 * error }),
    );
    const guarded = assembled(scattered, signalLoop, { standards, rule: { name: "guard band", guardFactor: 0.1 } });
    expect(guarded.readings.map(({ verdict }) => verdict)).toEqual(["pass", "pass", "fail", "fail", "pass", "pass"]);
    expect(guarded.verdict).toBe("pass");
    expect(assembled(scattered, signalLoop, { standards }).verdict).toBe("fail");
  });

  test("a fault signal inside the range fails under every rule, though every point passes", () => {
    const faulty = [...readings(0), reading(50, { signal: 3.5 })];
    for (const name of decisionRules) {
      const phase = assembled(faulty, loop, { standards, rule: rule(name) });
      expect(phase.points.map(({ statement }) => statement)).toEqual(Array(5).fill("pass"));
      expect(phase).toMatchObject({ verdict: "fail", verdicts: { sensor: "fail", controller: "pass" } });
    }
  });

  test("the controller has points of its own, and the worst of all points is named", () => {
    const phase = assembled(readings(0.2, 0.95), loop, { standards, rule: rule("non-binary guard band") });
    expect(phase.verdicts).toEqual({ sensor: "pass", controller: "conditional pass" });
    expect(phase.verdict).toBe("conditional pass");
    expect(phase.endPoints).toHaveLength(5);
    expect(phase.worstPoint?.of).toBe("controller");
    const worst = phase.endPoints![phase.worstPoint!.index]!;
    for (const point of [...phase.points, ...phase.endPoints!])
      expect(point.specificRisk).toBeLessThanOrEqual(worst.specificRisk);
  });

  test("where the controller's value is all that was read, its verdict is that of the points, under every rule", () => {
    for (const name of decisionRules) {
      const [good, bad] = [0.01, 0.3].map((off) =>
        assembled(
          [0, 50, 100].map((reference) => reading(reference, { value: 0.1 * reference + off })),
          loop,
          {
            standards,
            rule: rule(name),
          },
        ),
      );
      expect(good).toMatchObject({
        judged: "value",
        verdict: "pass",
        verdicts: { sensor: "pass", controller: "pass" },
      });
      expect(bad?.verdicts).toEqual({ sensor: "fail", controller: "fail" });
      expect(good).not.toHaveProperty("endPoints");
    }
  });

  test("all readings left out: no points and no verdict under any rule, and nothing throws", () => {
    const rejected = readings(0).map((row) => ({ ...row, rejected: "slipped" }));
    for (const name of decisionRules) {
      const phase = assembled(rejected, loop, { standards, rule: rule(name) });
      expect(phase).toMatchObject({ points: [], worstPoint: null, verdict: null, uncertainLine: null });
      expect(phaseSchema.parse(phase)).toEqual(phase);
    }
  });

  test("no tolerance at 0, by percent of reading: no rule throws, and each verdict can be written", () => {
    const toleranceTerms = [{ basis: "percent of reading", plus: 1, minus: 1 }] as const;
    for (const name of decisionRules) {
      const phase = assembled(readings(0), { ...loop, toleranceTerms }, { standards, rule: rule(name) });
      expect(phase.points[0]).toMatchObject({ toleranceLow: 0, toleranceHigh: 0, testUncertaintyRatio: 0 });
      expect(JSON.parse(JSON.stringify(phase))).toEqual(phase);
      expect(phaseSchema.parse(phase)).toEqual(phase);
    }
  });

  test("a sensor that stands still, with and without scatter, gives a record: fail, no line, finite numbers", () => {
    for (const scatter of [0, 0.003]) {
      const still = readings(0).map((row, index) => ({ ...row, signal: 12 + scatter * (index % 3), value: 5 }));
      const phase = assembled(still, loop, { standards, rule: rule("guard band") });
      expect(phase).toMatchObject({ verdict: "fail", uncertainLine: null });
      expect(phaseSchema.parse(phase)).toEqual(phase);
      expect(JSON.parse(JSON.stringify(phase))).toEqual(phase);
    }
  });
});

test("references typed in inches count with half a step of an inch in the budget, and are shown as they are", () => {
  const rows = tableRows([0, 1, 2, 3].map((inches) => reading(25.4 * inches, { signal: 4 + 0.16 * 25.4 * inches })));
  const typed = rows.map((row, inches) => ({ ...row, cells: { ...row.cells, reference: `${inches} in` } }));
  const phase = assemblePhase(typed, phaseContext());
  if (!isDetermined(phase)) throw new Error(phase.notDetermined);
  const line = phase.points[0]?.budget.lines.find(
    ({ source }) => source === "reference distance: step of the readings",
  );
  expect(line?.value).toBe(12.7);
  expect(phase.decimals.reference).toBe(1);
});

test("the shares tell the wiring from the input card where the signal was read at the card", () => {
  const phase = assembled([reading(50, { signal: 12.16, signalAtCard: 12.08, counts: 13910, value: 5.1 })]);
  expect(phase.readings[0]?.signalAtCard).toBe(12.08);
  const shares = phase.loopError?.shares ?? {};
  expect(Object.keys(shares)).toEqual(["sensor", "wiring", "inputCard", "scaling"]);
  // 0.08 mA of 16 mA over 100 mm; a rounding or two of numbers near 50.
  expectNear(shares.wiring, -0.5, rounding);
  expectNear(
    (shares.sensor ?? 0) + (shares.wiring ?? 0) + (shares.inputCard ?? 0) + (shares.scaling ?? 0),
    1,
    rounding,
  );
});
