import { expect, test } from "vitest";
import {
  drifts,
  hasGrowingSpread,
  isBowed,
  isOff,
  isSignificant,
  lineErrorAt,
  stageCorrelation,
  stageEvidence,
} from "../../../../src/verdict/causes/evidence/stage-evidence.ts";
import { nothingWrong, planted } from "../planted.ts";

const sensor = (fault: Parameters<typeof planted>[0]) => planted(fault).stages[0]!;

test("a shift of 2 % is off, nothing is not", () => {
  expect(isOff(sensor({ seen: (part) => part + 0.02 }), [0.25, 0.25])).toBe(true);
  expect(isOff(sensor({}), [0.25, 0.25])).toBe(false);
  expect(isOff(sensor({ seen: (part) => part + 0.002 }), [0.25, 0.25]), "below what matters").toBe(false);
});

test("4.17 uncertainties on 60 degrees of freedom are reached by noise once in ten thousand", () => {
  // Student's t, 0.99995 quantile with 60 degrees of freedom: 4.169 (SciPy 1.17.1).
  expect(isSignificant(4.16, 1, 60)).toBe(false);
  expect(isSignificant(4.18, 1, 60)).toBe(true);
});

test("a bow widens the uncertainty of the line, so that it is no shift", () => {
  const bowed = sensor({ seen: (part) => part + 0.04 * part * (1 - part) });
  expect(isBowed(bowed.bow!)).toBe(true);
  expect(lineErrorAt(bowed, 0).standardUncertainty).toBeGreaterThan(0.25);
  expect(isOff(bowed, [0.25, 0.25])).toBe(false);
  expect(isBowed(sensor({}).bow!)).toBe(false);
});

test("a signal that stands still does not follow, whatever its noise; it has no line then", () => {
  const dead = sensor({ signal: () => 0.02 });
  expect(dead.correlation).toBe(0);
  expect(dead.line).toBeUndefined();
  expect(() => lineErrorAt(dead, 0)).toThrow(TypeError);
  expect(stageCorrelation({ stage: "sensor", input: "reference", output: "signal" }, [])).toBe(0);
});

test("flagged readings are in neither line nor shape", () => {
  const { readings, loop } = planted({});
  const ends = { stage: "sensor", input: "reference", output: "signal" } as const;
  const context = { loop, leastScatter: 0, sharedUncertainty: 0, mattering: 0.25 };
  const flagged = { indexes: new Set([0, 1, 2]), plateaus: [] };
  expect(stageEvidence(ends, readings, flagged, context).line?.used).toHaveLength(readings.length - 3);
});

test("scatter that grows tenfold counts, even scatter does not", () => {
  expect(hasGrowingSpread(sensor({ noise: (noise, { part }) => noise * (1 + 40 * part * part) }), 0.25)).toBe(true);
  expect(hasGrowingSpread(sensor({}), 0.25)).toBe(false);
});

test("a drift that is sure but does not matter, or is below a step of the display, is none", () => {
  const stage = planted(nothingWrong).stages[0]!;
  const small = { rate: 0, total: 0.2, totalStandardUncertainty: 0.001, degreesOfFreedom: 40 };
  expect(drifts({ ...stage, drift: small }, 0.25)).toBe(false);
  expect(drifts({ ...stage, drift: small }, 0.15)).toBe(true);
  expect(drifts({ ...stage, drift: small, resolution: 1 }, 0.15)).toBe(false);
});
