import { expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { zeroAndSpanError } from "../../../src/analysis/figures/zero-and-span-error.ts";
import { curveReading, expectNear } from "../sample-loop.ts";

test("errors of 1 at 0 and 3 at 100: zero error 1, span error 2; two readings tell no uncertainty", () => {
  const found = zeroAndSpanError(
    [
      { point: 0, reference: 0, error: 1, direction: "rising", cycle: 1 },
      { point: 100, reference: 100, error: 3, direction: "rising", cycle: 1 },
    ],
    0,
    100,
  );
  expect(found).toEqual({
    zeroError: { percentSpan: 1, standardUncertainty: null },
    spanError: { percentSpan: 2, standardUncertainty: null },
  });
});

test("the line is read at the ends of the range, wherever the readings lie", () => {
  const found = zeroAndSpanError([curveReading(20, 1), curveReading(60, 2)], 0, 100);
  if (!isDetermined(found)) throw new Error(found.notDetermined);
  expectNear(found.zeroError.percentSpan, 0.5, 1e-15); // a rounding of numbers near 1, as in the next line
  expectNear(found.spanError.percentSpan, 2.5, 1e-15);
});

test("three readings 0, 3, 0 at 0, 50, 100: by hand 1 and 0, with s = √6, u(zero) = √5, u(span) = √12", () => {
  // Residuals −1, 2, −1: s² = 6 on one degree of freedom; Sxx = 5000; u²(zero) = 6(1/3 + 2500/5000) = 5;
  // u²(span) = 100² · 6/5000 = 12. Tolerance: a few roundings of numbers below 10.
  const found = zeroAndSpanError([curveReading(0, 0), curveReading(50, 3), curveReading(100, 0)], 0, 100);
  if (!isDetermined(found)) throw new Error(found.notDetermined);
  expectNear(found.zeroError.percentSpan, 1, 1e-14);
  expectNear(found.spanError.percentSpan, 0, 1e-14);
  expectNear(found.zeroError.standardUncertainty, Math.sqrt(5), 1e-14);
  expectNear(found.spanError.standardUncertainty, Math.sqrt(12), 1e-14);
});

test("its uncertainty is that of the line at the lower range end, which need not be 0", () => {
  // As above at x = 50, the mean reference: u² = 6/3. Tolerance: a few roundings.
  const found = zeroAndSpanError([curveReading(0, 0), curveReading(50, 3), curveReading(100, 0)], 50, 100);
  expectNear(isDetermined(found) ? found.zeroError.standardUncertainty : null, Math.sqrt(2), 1e-14);
});

test("one reference distance tells no line, and no reading tells nothing", () => {
  const reason = { notDetermined: "fewer than two reference distances" };
  expect(zeroAndSpanError([curveReading(5, 1), curveReading(5, 2)], 0, 100)).toEqual(reason);
  expect(zeroAndSpanError([], 0, 100)).toEqual({ notDetermined: "no usable reading" });
});
