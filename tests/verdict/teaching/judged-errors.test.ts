import { expect, test } from "vitest";
import { judgedErrors } from "../../../src/verdict/teaching/judged-errors.ts";
import { frozen } from "../../charts/frozen.ts";
import { judgedError } from "../sample-errors.ts";

const readings = frozen([
  judgedError(50, 0.5),
  judgedError(50.2, 0.7, { point: 50 }),
  judgedError(50, -0.5, { direction: "falling" }),
  judgedError(80, 0.1),
]);
const points = frozen([{ point: 50, tolerance: { low: -2, high: 3 }, expandedUncertainty: 0.4 }]);

test("simple acceptance judges each reading with its own limits and the uncertainty of its test point", () => {
  const found = judgedErrors(readings, points, { name: "simple acceptance", guardFactor: 0 });
  expect(found.map(({ indicated }) => indicated)).toEqual([50.5, 50.900000000000006, 49.5]);
  expect(found[0]).toMatchObject({ tolerance: { low: -1, high: 1 }, expandedUncertainty: 0.4 });
});

test("the other rules judge the mean of each direction with the limits of the test point; a point without is left out", () => {
  const found = judgedErrors(readings, points, { name: "guard band", guardFactor: 1 });
  expect(found).toHaveLength(2);
  expect(found[0]).toMatchObject({ direction: "rising", tolerance: { low: -2, high: 3 }, expandedUncertainty: 0.4 });
  expect(Math.abs((found[0]?.indicated ?? 0) - 50.7)).toBeLessThan(1e-13); // a rounding of numbers near 50
  expect(Math.abs((found[0]?.reference ?? 0) - 50.1)).toBeLessThan(1e-13);
  expect(found[1]).toMatchObject({ direction: "falling", indicated: 49.5 });
});

test("the example of the docblock: two readings of one direction are one mean", () => {
  const pair = [judgedError(50, 0.4), judgedError(50, 0.6)];
  expect(judgedErrors(pair, points, { name: "guard band", guardFactor: 1 })).toHaveLength(1);
});
