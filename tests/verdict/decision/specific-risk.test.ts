import { expect, test } from "vitest";
import { riskOfDirections, riskUncertainty, specificRisk } from "../../../src/verdict/decision/specific-risk.ts";

const limits = Object.freeze({ low: -2, high: 2 });

test("an error on its limit is outside with probability 0.5, and with 6.2e-16 beyond the other limit", () => {
  expect(Math.abs(specificRisk(2, limits, 0.5) - 0.5)).toBeLessThan(1e-15);
});

test("far inside, the risk is the small tail itself and not what is left of 1", () => {
  // Φ(−8) = 6.22096057427178e-16 (mpmath), twice; 1 − [Φ(8) − Φ(−8)] would give 1.3e-15 or 1.2e-15 at best.
  expect(Math.abs(specificRisk(0, limits, 0.25) / (2 * 6.22096057427178e-16) - 1)).toBeLessThan(1e-13);
  // Φ(−12) = 1.776482112077679e-33 (mpmath).
  expect(Math.abs(specificRisk(-1, { low: -2, high: 1e9 }, 1 / 12) / 1.776482112077679e-33 - 1)).toBeLessThan(1e-12);
});

test("both sides count, and limits need not be symmetric", () => {
  // Φ(−1) + Φ(−3) = 0.158655253931457 + 0.001349898031630 (mpmath).
  expect(Math.abs(specificRisk(1, { low: -2, high: 2 }, 1) - 0.160005151963087)).toBeLessThan(1e-14);
  expect(Math.abs(specificRisk(0, { low: -3, high: 1 }, 1) - 0.160005151963087)).toBeLessThan(1e-14);
  expect(specificRisk(-1, { low: -2, high: 2 }, 1)).toBe(specificRisk(1, { low: -2, high: 2 }, 1));
});

test("an uncertainty far above the tolerance leaves nothing but risk, an error far outside is out for certain", () => {
  // T = 1 and U = 5, so u = 2.5: 1 − [Φ(0.4) − Φ(−0.4)] = 0.68915651677935 (scipy).
  expect(Math.abs(specificRisk(0, { low: -1, high: 1 }, 2.5) - 0.68915651677935)).toBeLessThan(1e-13);
  expect(specificRisk(100, limits, 0.5)).toBe(1);
});

test("what is no error, limit or uncertainty is refused", () => {
  for (const uncertainty of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => specificRisk(0, limits, uncertainty)).toThrow(RangeError);
  expect(() => specificRisk(Number.NaN, limits, 1)).toThrow(RangeError);
  expect(() => specificRisk(0, { low: 2, high: -2 }, 1)).toThrow(RangeError);
});

test("few degrees of freedom widen, a rectangle narrows nothing", () => {
  expect(riskUncertainty({ combinedUncertainty: 2, coverageFactor: 2.87 })).toBe(2.87);
  expect(riskUncertainty({ combinedUncertainty: 2, coverageFactor: 1.65 })).toBe(2);
});

test("±U leaves outside what U says, whatever k is: 4.55 %", () => {
  const budget = { combinedUncertainty: 0.4, coverageFactor: 3.31 };
  const [risk] = [specificRisk(0, { low: -0.4 * 3.31, high: 0.4 * 3.31 }, riskUncertainty(budget))];
  expect(Math.abs(risk - 0.0455)).toBeLessThan(1e-5);
});

test("of two directions: more than either, no more than both; of one that shares all the greater", () => {
  const budget = { combinedUncertainty: 0.5, coverageFactor: 2 };
  const both = (common: number) =>
    riskOfDirections(
      [
        { error: 1.5, budget, common },
        { error: 1.2, budget, common },
      ],
      limits,
    );
  const [greater, lesser] = [specificRisk(1.5, limits, 0.5), specificRisk(1.2, limits, 0.5)];
  expect(Math.abs(both(0) - (1 - (1 - greater) * (1 - lesser)))).toBeLessThan(1e-12);
  expect(both(0.3)).toBeLessThan(both(0));
  expect(both(0.3)).toBeGreaterThan(greater);
  expect(Math.abs(both(0.5) - greater)).toBeLessThan(3e-4);
  expect(() => riskOfDirections([], limits)).toThrow(RangeError);
});
