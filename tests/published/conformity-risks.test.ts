import { expect, test } from "vitest";
import { normalQuantile } from "../../src/numeric/normal-distribution.ts";
import { decidePoint } from "../../src/verdict/decision/decision-rule.ts";
import { globalFalseAccept, spreadOf } from "../../src/verdict/decision/global-false-accept.ts";
import { specificRisk } from "../../src/verdict/decision/specific-risk.ts";
import { judgedOnce } from "../verdict/decision/sample-risk.ts";
import { correctDigits, readColumns, readExpected } from "./read-data.ts";

type GuardBand = {
  readonly rule: string;
  readonly guardFactor: number;
  readonly stated: number;
  readonly exact: number;
};
const guardBands = readExpected<readonly GuardBand[]>("ilac-g8-guard-bands");

test("the five guard bands were read", () => expect(guardBands).toHaveLength(5));

test.each(guardBands)("ILAC-G8, $rule: risk of a pass on its acceptance limit", ({ guardFactor, stated, exact }) => {
  // Far from the lower limit, as the table means it: T is 50 U.
  const limits = { low: -50, high: 50 };
  const rule = { name: "guard band", guardFactor } as const;
  const { acceptance } = decidePoint({ error: 0, limits, expandedUncertainty: 1, rule, magnitude: 100 });
  const risk = specificRisk(acceptance!.high, limits, 0.5);
  // 50 − 0.83 and back again costs 7e-15 of the distance, which counts up to 40 times in the tail.
  expect(correctDigits(risk, exact)).toBeGreaterThan(12);
  expect(risk).toBeLessThanOrEqual(stated);
  expect(decidePoint({ error: acceptance!.high, limits, expandedUncertainty: 1, rule, magnitude: 100 }).statement).toBe(
    "pass",
  );
});

test("false accept and false reject at every row of the grid, to its 8 decimals (independent quadrature)", () => {
  const grid = readColumns("false-accept-grid");
  const ratios = grid.TUR!;
  expect(ratios).toHaveLength(102);
  for (const [index, testUncertaintyRatio] of ratios.entries()) {
    const guardMultiplier = unroundedMultiplier(grid.guard_multiplier_A_over_T![index]!, testUncertaintyRatio);
    const inToleranceProbability = grid.prior_in_tolerance![index]!;
    const spread = 1 / normalQuantile((1 + inToleranceProbability) / 2);
    const risk = globalFalseAccept(judgedOnce(testUncertaintyRatio, guardMultiplier), spread);
    expect(Math.abs(risk.falseAccept - grid.PFA![index]!), `row ${index + 1}`).toBeLessThan(0.51e-8);
    expect(Math.abs(risk.falseReject - grid.PFR![index]!), `row ${index + 1}`).toBeLessThan(0.51e-8);
  }
});

/** The multiplier that six decimals stand for: 1, 1 − 1/TUR, or 1 − M/TUR with M of the managed guard band, here not cut off at 0. */
function unroundedMultiplier(printed: number, ratio: number): number {
  const meant = [1, 1 - 1 / ratio, 1 - (1.04 - Math.exp(0.38 * Math.log(ratio) - 0.54)) / ratio];
  const nearest = meant.find((multiplier) => Math.abs(multiplier - printed) < 0.51e-6);
  if (nearest === undefined) throw new Error(`multiplier ${printed} at ${ratio} stands for none of the three`);
  return nearest;
}

test.each([
  [4, 0.95, 0.00858266, 0.01553651],
  [2, 0.95, 0.01337341, 0.0417753],
  [1, 0.95, 0.01801156, 0.12957158],
  [4, 0.85, 0.01727749, 0.02382553],
])("ratio %d, %d in tolerance, no guard band: false accept %d, false reject %d (mpmath)", (...row) => {
  const [testUncertaintyRatio, inToleranceProbability, falseAccept, falseReject] = row;
  const spread = 1 / normalQuantile((1 + inToleranceProbability) / 2);
  const risk = globalFalseAccept(judgedOnce(testUncertaintyRatio, 1), spread);
  expect(Math.abs(risk.falseAccept - falseAccept)).toBeLessThan(0.51e-8);
  expect(Math.abs(risk.falseReject - falseReject)).toBeLessThan(0.51e-8);
});

test("ratio 4, 95 % found in tolerance: 0.770 % falsely accepted, for σ² = σ(found)² − u² (quadrature, scipy)", () => {
  const loops = judgedOnce(4, 1);
  const spread = spreadOf(loops, 0.95);
  expect(Math.abs(spread - Math.sqrt(normalQuantile(0.975) ** -2 - 1 / 64))).toBeLessThan(1e-9);
  expect(Math.abs(globalFalseAccept(loops, spread).falseAccept - 0.007705)).toBeLessThan(0.51e-6);
});

test("resistors of 1500 Ω ± 0.2 Ω, σ 0.12 Ω, u 0.04 Ω: the risks of three guard bands (inputs JCGM 106:2012, 9.5, from memory; results by another quadrature)", () => {
  const risksAt = (guardBand: number) => globalFalseAccept(judgedOnce(0.2 / 0.08, 1 - guardBand / 0.2), 0.12 / 0.2);
  for (const [guardBand, consumer, producer] of [
    [0, 0.0189422, 0.0372078],
    [0.04, 0.00433407, 0.114657],
    [0.08, 0.000468634, 0.24767],
  ] as const) {
    expect(Math.abs(risksAt(guardBand).falseAccept / consumer - 1)).toBeLessThan(5e-6);
    expect(Math.abs(risksAt(guardBand).falseReject / producer - 1)).toBeLessThan(5e-6);
  }
});
