import { describe, expect, test } from "vitest";
import { expectNear } from "../analysis/sample-loop.ts";
import quantiles from "../published/gum-table-g2/quantiles.json" with { type: "json" };
import { fourCycles, switchedPhase } from "../record/sample-switching.ts";

/** Some roundings of numbers near 100. */
const rounding = 1e-12;

/** Worked by hand in tests/analysis/switching/switch-budget.test.ts: u² = 0.1² + 0.05²/3 + 0.07/4, 7 degrees of freedom. */
const expandedUncertainty = Number(quantiles["7|0.9545"]) * Math.sqrt(0.01 + 0.0025 / 3 + 0.0175);

describe("four cycles around 100 ± 0.5 mm", () => {
  const phase = switchedPhase();

  test("pass under simple acceptance: 100.5, the farthest approach, lies on the limit", () => {
    expect(phase.statement).toBe("pass");
    expect(phase.setPoint?.decision).toMatchObject({ toleranceLow: -0.5, toleranceHigh: 0.5, statement: "pass" });
  });

  test("have a set-point error of 0.15 ± 0.41 mm", () => {
    expectNear(phase.setPoint?.error, 0.15, rounding);
    expectNear(phase.setPoint?.expandedUncertainty, expandedUncertainty, 1e-9);
    expect(phase.setPoint?.direction).toBe("approach");
  });

  test("have the figures that were worked by hand", () => {
    expectNear(phase.operating?.mean, 100.15, rounding);
    expectNear(phase.release?.mean, 104.1, rounding);
    expectNear(phase.differential?.distance, 3.95, rounding);
    expectNear(phase.repeat?.percent, 60 / 100.15, rounding);
    expect(phase.chatter).toEqual({ runs: [], statement: "pass" });
  });

  test("keep every trip with its line", () => {
    expect(phase.trips).toHaveLength(8);
    expect(phase.trips[3]).toEqual({ row: 5, direction: "recede", cycle: 2, reference: 104.4, isCounted: true });
    expect(phase.decimals).toBe(1);
  });

  test("need no explanation", () => {
    expect(phase.shares).toBeNull();
    expect(phase.notDetermined).toEqual({ shares: "the set point is where it should be" });
  });
});

test("the record's rule decides: with a guard band of U the mean of 0.15 is accepted up to 0.5 − U = 0.09 only", () => {
  const phase = switchedPhase({ instrument: { decisionRule: "guard band" } });
  expect(phase.statement).toBe("fail");
  expectNear(phase.setPoint?.decision?.acceptanceHigh, 0.5 - expandedUncertainty, 1e-9);
});

test("the direction that matters is judged: on recede the error is 4.1", () => {
  const phase = switchedPhase({ output: { criticalDirection: "recede" } });
  expect(phase.setPoint?.direction).toBe("recede");
  expectNear(phase.setPoint?.error, 4.1, rounding);
  expect(phase.statement).toBe("fail");
});

test("a limit of the outputs table fails what the standard would pass", () => {
  expect(switchedPhase({ output: { differentialMax: 3.9 } })).toMatchObject({
    differential: { statement: "fail", limitPercent: 3.9, limitFrom: "outputs table" },
    statement: "fail",
  });
  expect(switchedPhase({ output: { repeatMax: 0.5 } }).statement).toBe("fail");
});

test("a run that changes twice fails; its second change, 3 mm off, is not held against the set point", () => {
  const trips = [...fourCycles, { direction: "approach", cycle: 4, reference: 103 } as const];
  const phase = switchedPhase({ trips });
  expect(phase.chatter).toEqual({ runs: [{ direction: "approach", cycle: 4, transitions: 2 }], statement: "fail" });
  expect([phase.statement, phase.setPoint?.decision?.statement]).toEqual(["fail", "pass"]);
  expect(phase.trips.map(({ isCounted }) => isCounted).lastIndexOf(false)).toBe(8);
});

describe("a set point that is off is compared with the analog value", () => {
  const fiveShort = fourCycles.map((trip) => ({ ...trip, reference: (trip.reference ?? 0) - 5 }));

  test("which is right: the teach has drifted", () => {
    const { shares, statement } = switchedPhase({ trips: fiveShort });
    expect(statement).toBe("fail");
    expect(shares).toMatchObject({ consistentWith: "teach" });
    expectNear(shares?.teach, -4.85, 1e-9);
  });

  test("which indicates 5 mm too much: mount, datum or air", () => {
    const { shares } = switchedPhase({ trips: fiveShort, analogError: 5 });
    expect(shares).toMatchObject({ consistentWith: "shift" });
    expectNear(shares?.analogErrorDistance, 5, 1e-9);
    expectNear(shares?.shift, -5, 1e-9);
    expectNear(shares?.teach, 0.15, 1e-9);
  });

  test("which indicates 5 mm too little: both", () => {
    expect(switchedPhase({ trips: fiveShort, analogError: -5 }).shares).toMatchObject({
      consistentWith: "teach and shift",
    });
  });

  test.each([
    [
      "no reading was taken in that phase",
      { readings: { phase: "as_left" as const } },
      "no readings were taken in this phase",
    ],
    [
      "the set point lies beyond the test points",
      { output: { setPoint: 300 } },
      "the set point lies outside the test points",
    ],
  ])("or it is said why not: %s", (_, changes, reason) => {
    const phase = switchedPhase({ trips: fiveShort, ...changes });
    expect(phase.shares).toBeNull();
    expect(phase.notDetermined.shares).toBe(reason);
  });

  test("or only the controller was read", () => {
    const readings = { signal: undefined, value: 50 };
    const instrument = { valueLower: 0, valueUpper: 200, valueUnit: "mm" };
    expect(switchedPhase({ trips: fiveShort, instrument, readings }).notDetermined.shares).toBe(
      "only what the controller showed was read of the analog value",
    );
  });

  test("where there is no tolerance, if it is off by more than U", () => {
    const output = { setPointTolerance: undefined };
    const near = switchedPhase({ output });
    expect([near.setPoint?.decision, near.shares]).toEqual([null, null]);
    expect(near.notDetermined["setPoint.decision"]).toBe("no set_point_tolerance is stated");
    expect(switchedPhase({ output, trips: fiveShort }).shares?.consistentWith).toBe("teach");
  });
});

test("without a tolerance of its set point an output passes nothing, and fails by what can be judged", () => {
  const output = { setPointTolerance: undefined };
  expect(switchedPhase({ output }).statement).toBe("cannot be decided");
  const short = [1, 2, 3].map((cycle) => ({ direction: "approach" as const, cycle, reference: 95 }));
  expect(switchedPhase({ output, trips: short }).statement).toBe("cannot be decided");
  expect(switchedPhase({ output, trips: [{ direction: "approach", reference: 100 }] }).statement).toBe(
    "cannot be decided",
  );
  expect(switchedPhase({ output: { ...output, differentialMax: 0.001 } }).statement).toBe("fail");
  expect(switchedPhase({ output: {} }).statement).toBe("pass");
});

test("states that contradict each other pass nothing; the later ones of a run that chatters contradict none", () => {
  const open = fourCycles.map((trip) => ({ ...trip, state: trip.direction === "approach" ? "on" : "off" }) as const);
  expect(switchedPhase({ trips: open }).statement).toBe("pass");
  const turned = [...open.slice(0, -1), { ...open.at(-1), state: "on" as const }];
  const doubtful = switchedPhase({ trips: turned });
  expect([doubtful.statement, doubtful.notDetermined.function]).toEqual([
    "cannot be decided",
    "the states after the trips contradict each other",
  ]);
  const chattering = switchedPhase({ trips: [...open, { ...open.at(-1), state: "on" as const }] });
  expect([chattering.statement, chattering.notDetermined.function]).toEqual(["fail", undefined]);
});

test("one recede and nothing else: what cannot be had is null with its reason, and nothing is judged", () => {
  const phase = switchedPhase({ trips: [{ direction: "recede", reference: 104 }] });
  expect(phase).toMatchObject({
    operating: null,
    differential: null,
    repeat: null,
    chatter: null,
    setPoint: null,
    shares: null,
    statement: null,
  });
  expect(phase.notDetermined).toMatchObject({
    operating: "no trip on approach was recorded",
    setPoint: "no trip on approach was recorded",
    chatter: "not every trip names its cycle",
    "release.standardDeviation": "one trip on recede only",
    statement: "nothing could be judged",
  });
});

describe("trips the other way than the one that counts", () => {
  const recede = fourCycles.filter(({ direction }) => direction === "recede");

  test("are no pass of the output: its set point was not measured", () => {
    const phase = switchedPhase({ trips: recede });
    expect(phase).toMatchObject({ chatter: { statement: "pass" }, setPoint: null, statement: null });
    expect(phase.notDetermined.statement).toBe(
      "the set point was not measured on approach, the direction in which it counts",
    );
  });

  test("are a fail where what they show fails", () => {
    const twice = [...recede, { direction: "recede", cycle: 4, reference: 106 } as const];
    expect(switchedPhase({ trips: twice })).toMatchObject({ setPoint: null, statement: "fail" });
  });
});
