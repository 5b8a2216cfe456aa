import fc from "fast-check";
import { expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { meanAbsoluteError } from "../../../src/analysis/figures/mean-absolute-error.ts";
import { curveReading, expectNear } from "../sample-loop.ts";

const found = (errors: readonly number[], span: number) => {
  const figure = meanAbsoluteError(
    errors.map((error, place) => curveReading(place, error)),
    span,
  );
  if (!isDetermined(figure)) throw new Error(figure.notDetermined);
  return figure;
};

test("errors of −0.5 and 0.25 % of 200 mm: 0.375 % and 0.75 mm", () => {
  expect(found([-0.5, 0.25], 200)).toEqual({ percentSpan: 0.375, distance: 0.75 });
});

test("without a reading there is none", () => {
  expect(meanAbsoluteError([], 100)).toEqual({ notDetermined: "no usable reading" });
});

// By another road: |e| = 2·max(e, 0) − e, so that the mean of the sizes follows from two means with signs. The same
// figure of whole records is found by base R in tests/outside.
test("it is twice the mean of what lies above zero, less the mean of all", () => {
  const error = fc.double({ min: -100, max: 100, noNaN: true });
  const average = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  fc.assert(
    fc.property(
      fc.array(error, { minLength: 1, maxLength: 60 }),
      fc.integer({ min: 1, max: 50_000 }),
      (errors, span) => {
        const expected = 2 * average(errors.map((one) => Math.max(one, 0))) - average(errors);
        const { percentSpan, distance } = found(errors, span);
        // Sums of 60 numbers below 100, some roundings each.
        expectNear(percentSpan, expected, 1e-12);
        expectNear(distance, (span * expected) / 100, 1e-14 * span);
        expect(percentSpan).toBeLessThanOrEqual(Math.max(...errors.map(Math.abs)) * (1 + 1e-15));
        expect(percentSpan).toBeGreaterThanOrEqual(Math.abs(average(errors)) - 1e-13);
      },
    ),
    { seed: 20_261_126 },
  );
});
