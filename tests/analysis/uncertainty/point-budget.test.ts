import { describe, expect, test } from "vitest";
import {
  airContribution,
  alignmentContribution,
  type BudgetBasis,
  type BudgetPoint,
  outputContributions,
  pointBudget,
  referenceContributions,
} from "../../../src/analysis/uncertainty/point-budget.ts";
import { basis, meter, rail, thermometer } from "../sample-basis.ts";
import { expectNear } from "../sample-loop.ts";

/** A few roundings of numbers up to 10. */
const rounding = 1e-14;

const point: BudgetPoint = Object.freeze({ reference: 1000, readings: 9, isReadBothWays: true });
const root3 = Math.sqrt(3);

const sourcesOf = (of: BudgetBasis, at: BudgetPoint = point) =>
  pointBudget(of, at).budget.lines.map(({ source }) => source);
const uncertaintyOf = (source: string, of: BudgetBasis, at: BudgetPoint = point) =>
  pointBudget(of, at).budget.lines.find((line) => line.source === source)?.standardUncertainty;

test("typed steps of 0.1 mm and 0.001 mA and a scatter of 0.3 mm over nine readings: 0.108 mm", () => {
  const { budget } = pointBudget(
    {
      standards: [],
      performedOn: "2026-03-04",
      distanceUnit: "mm",
      signalUnit: "mA",
      principle: "laser",
      isTemperatureCompensated: false,
      airTemperatureCelsius: 20,
      alignmentAngleDegrees: 0,
      judged: "signal",
      distancePerOutput: 100,
      steps: { reference: 0.1, output: 0.001 },
      repeatability: { pooledStdDev: 0.3, degreesOfFreedom: 20 },
      hysteresis: { width: 0.4 },
    },
    { reference: 1000, readings: 9, isReadBothWays: true },
  );
  // 0.05²/3 + 0.05²/3 + 0.1² = 0.035/3.
  expectNear(budget.combinedUncertainty, Math.sqrt(0.035 / 3), 1e-16);
  expectNear(budget.combinedUncertainty, 0.10801234497346433, 1e-16);
});

test("every standard that is stated, and nothing is missing", () => {
  const found = pointBudget({ ...basis, standards: [rail, meter] }, point);
  expect(found.missing).toEqual([]);
  expect(found.budget.lines.map(({ source }) => source)).toEqual([
    "GB-1: certificate",
    "GB-1: drift since the certificate",
    "GB-1: resolution",
    "MM-1: certificate",
    "MM-1: drift since the certificate",
    "MM-1: resolution",
    "repeatability, mean of 9",
  ]);
  // Certificates 0.1 and 0.1; resolutions 0.05/√3 twice; 49 days of drift, 0.05 and 0.1 mm a year; 0.3/√9.
  const drift = 49 / 365.25 / root3;
  const expected = Math.hypot(0.1, 0.1, 0.05 / root3, 0.05 / root3, 0.05 * drift, 0.1 * drift, 0.1);
  expectNear(found.budget.combinedUncertainty, expected, rounding);
});

describe("the judged output", () => {
  test("counts and a displayed value enter with half a step, whatever meter there is", () => {
    for (const judged of ["counts", "value"] as const) {
      const of = { ...basis, judged, standards: [meter], distancePerOutput: 0.5, steps: { reference: 0.1, output: 1 } };
      const name = judged === "counts" ? "resolution of the counts" : "resolution of the displayed value";
      expectNear(uncertaintyOf(name, of), 0.25 / root3, rounding);
      expect(sourcesOf(of)).not.toContain("MM-1: certificate");
    }
  });

  test("the resolution of counts: 1 count of 0.1 mm", () => {
    const { own } = outputContributions({
      standards: [],
      performedOn: "2026-03-04",
      distanceUnit: "mm",
      signalUnit: "mA",
      principle: "laser",
      isTemperatureCompensated: false,
      airTemperatureCelsius: 20,
      alignmentAngleDegrees: 0,
      judged: "counts",
      distancePerOutput: 0.1,
      steps: { reference: 0.1, output: 1 },
      repeatability: { pooledStdDev: 0.3, degreesOfFreedom: 20 },
      hysteresis: { width: 0.4 },
    });
    expect(own[0]?.source).toBe("resolution of the counts");
  });

  test("a voltage wants a meter of voltage", () => {
    const volts = { ...basis, signalUnit: "V", standards: [meter] } as const;
    expect(pointBudget(volts, point).missing).toContain("signal meter: no standard with an uncertainty in V is named");
    const millivolts = { ...meter, uncertaintyUnit: "mV" } as const;
    expectNear(uncertaintyOf("MM-1: certificate", { ...volts, standards: [millivolts] }), 0.1, rounding);
  });
});

test("the reference without a standard is good to half the step that was typed", () => {
  const { own, shared, missing } = referenceContributions({
    standards: [],
    performedOn: "2026-03-04",
    distanceUnit: "mm",
    signalUnit: "mA",
    principle: "laser",
    isTemperatureCompensated: false,
    airTemperatureCelsius: 20,
    alignmentAngleDegrees: 0,
    judged: "signal",
    distancePerOutput: 100,
    steps: { reference: 0.1, output: 0.001 },
    repeatability: { pooledStdDev: 0.3, degreesOfFreedom: 20 },
    hysteresis: { width: 0.4 },
  });
  expect(own[0]?.source).toBe("reference distance: step of the readings");
  expect([shared.length, missing.length]).toEqual([0, 1]);
});

describe("repeatability", () => {
  test("falls with the root of the number of readings in the mean and keeps its degrees of freedom", () => {
    for (const readings of [1, 2, 9]) {
      const source = `repeatability, mean of ${readings}`;
      const { lines } = pointBudget(basis, { ...point, readings }).budget;
      const line = lines.find((found) => found.source === source);
      expectNear(line?.standardUncertainty, 0.3 / Math.sqrt(readings), rounding);
      expect(line?.degreesOfFreedom).toBe(20);
    }
  });

  test("readings that do not scatter leave a budget without that line", () => {
    const still = { ...basis, repeatability: { pooledStdDev: 0, degreesOfFreedom: 20 } };
    expect(sourcesOf(still)).toEqual([
      "reference distance: step of the readings",
      "signal meter: step of the readings",
    ]);
    expect(pointBudget(still, point).budget.effectiveDegreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
  });

  test("one cycle gives none, and it is said", () => {
    const once = { ...basis, repeatability: { notDetermined: "one cycle only" } };
    expect(pointBudget(once, point).missing).toContain("repeatability: one cycle only");
  });
});

describe("hysteresis", () => {
  const oneWay = { ...point, isReadBothWays: false };

  test("enters where one direction was read, with half its width, and not where both were", () => {
    const source = "hysteresis, one direction read";
    expectNear(uncertaintyOf(source, basis, oneWay), 0.2 / root3, rounding);
    expect(sourcesOf(basis)).not.toContain(source);
  });

  test("that is not known is said where it would enter, and only there", () => {
    const unknown = { ...basis, hysteresis: { notDetermined: "no test point was read in both directions" } };
    const words = "hysteresis: no test point was read in both directions";
    expect(pointBudget(unknown, oneWay).missing).toContain(words);
    expect(pointBudget(unknown, point).missing).not.toContain(words);
  });
});

describe("alignment", () => {
  test("of 2° at 1000 mm is 1000·(1 − cos 2°) = 0.609 mm, rectangular; on the other side of zero the same", () => {
    const tilted = { ...basis, alignmentAngleDegrees: 2 };
    for (const reference of [1000, -1000]) {
      const found = uncertaintyOf("reference alignment", tilted, { ...point, reference });
      // 1 − cos loses digits that the half-angle form keeps: 1e-16 of 1, times 1000.
      expectNear(found, (1000 * (1 - Math.cos((2 * Math.PI) / 180))) / root3, 1e-12);
      expectNear(found, 0.60917298090427 / root3, rounding); // by 40 digits of bc
    }
  });

  test("of 60° at 100 mm is 50 mm, for whatever has a place and an angle", () => {
    const [line] = alignmentContribution({ alignmentAngleDegrees: 60, distanceUnit: "mm" }, { reference: 100 }).own;
    expectNear(line?.value, 50, 1e-13); // two roundings of 50
  });

  test("of 0° is no line; one that is not stated is said", () => {
    expect(sourcesOf(basis)).not.toContain("reference alignment");
    const { missing } = pointBudget({ ...basis, alignmentAngleDegrees: undefined }, point);
    expect(missing).toContain("reference alignment: no alignment_angle is stated");
  });
});

describe("air temperature", () => {
  const ultrasonic = { ...basis, principle: "ultrasonic", standards: [thermometer] } as const;

  test("0.3 K (k = 2) at 20 °C and 1000 mm: 0.15 · 1000 / (2 · 293.15) = 0.256 mm, since c goes as the root of T", () => {
    expectNear(uncertaintyOf("TH-1: certificate", ultrasonic), (0.15 * 1000) / (2 * 293.15), rounding);
    expectNear(uncertaintyOf("TH-1: resolution", ultrasonic), (0.05 * 1000) / (2 * 293.15) / root3, rounding);
  });

  test("takes part for an ultrasonic sensor that does not correct for it alone", () => {
    for (const other of [
      { principle: "radar" },
      { isTemperatureCompensated: true },
      { principle: undefined },
    ] as const) {
      expect(sourcesOf({ ...ultrasonic, ...other })).not.toContain("TH-1: certificate");
    }
  });

  test("of a laser is nothing", () => {
    const laser = { principle: "laser", isTemperatureCompensated: false, airTemperatureCelsius: undefined } as const;
    const found = airContribution({ ...laser, standards: [], performedOn: undefined }, { reference: 1000 });
    expect(found).toEqual({ shared: [], own: [], missing: [] });
  });

  test("without a reading of it, or without a thermometer, is missing", () => {
    const unread = pointBudget({ ...ultrasonic, airTemperatureCelsius: undefined }, point);
    expect(unread.missing).toContain("air temperature: not stated");
    const { budget, missing } = pointBudget({ ...ultrasonic, standards: [] }, point);
    expect(missing).toContain("air temperature: no standard with an uncertainty in °C is named");
    expect(budget.lines.some(({ source }) => source.startsWith("air temperature"))).toBe(false);
  });

  test("a thermometer is known by its unit, also where its quantity is not named", () => {
    const unnamed = { ...ultrasonic, standards: [{ ...thermometer, quantity: undefined }] };
    expect(sourcesOf(unnamed)).toContain("TH-1: certificate");
  });
});

test("no standard at all: a budget of typed steps and scatter, with every gap in words", () => {
  const bare: BudgetBasis = {
    ...basis,
    performedOn: undefined,
    airTemperatureCelsius: undefined,
    alignmentAngleDegrees: undefined,
    principle: "ultrasonic",
    repeatability: { notDetermined: "one cycle only" },
    hysteresis: { notDetermined: "no test point was read in both directions" },
  };
  const { budget, missing } = pointBudget(bare, { ...point, isReadBothWays: false });
  expectNear(budget.combinedUncertainty, Math.hypot(0.05, 0.05) / root3, rounding);
  expect(missing).toEqual([
    "reference distance: no standard with an uncertainty in mm is named",
    "signal meter: no standard with an uncertainty in mA is named",
    "repeatability: one cycle only",
    "hysteresis: no test point was read in both directions",
    "reference alignment: no alignment_angle is stated",
    "air temperature: not stated",
  ]);
});

test("steps of 0 without any standard are a caller's mistake", () => {
  const nothing = { ...basis, steps: { reference: 0, output: 0 }, repeatability: { notDetermined: "one cycle only" } };
  expect(() => pointBudget(nothing, point)).toThrow(RangeError);
});
