import { expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { linearity } from "../../../src/analysis/figures/linearity.ts";
import { expectNear } from "../sample-loop.ts";

const at = (reference: number, mean: number, point = reference) =>
  Object.freeze({ point, reference, up: mean, down: null, mean });

test("the squares 0, 1, 4, 9 depart by 1, 2, 1.5 and 1 from the four lines", () => {
  const found = linearity([
    { point: 0, reference: 0, up: 0, down: null, mean: 0 },
    { point: 1, reference: 1, up: 1, down: null, mean: 1 },
    { point: 2, reference: 2, up: 4, down: null, mean: 4 },
    { point: 3, reference: 3, up: 9, down: null, mean: 9 },
  ]);
  expect(found).toEqual({ independent: 1, terminal: 2, zeroBased: 1.5, leastSquares: 1 });
});

test("zero-based is held at the first test point, not at the last", () => {
  // Through (0, 0): the points (1, 3) and (3, 0) allow |3·3 − 0·1|/(1 + 3) = 2.25; through (3, 0) it would be 1.8.
  expect(linearity([at(0, 0), at(1, 3), at(2, 0), at(3, 0)])).toMatchObject({ zeroBased: 2.25, terminal: 3 });
});

test("the order in which the test points come does not matter", () => {
  const found = linearity([at(3, 9), at(0, 0), at(2, 4), at(1, 1)]);
  expect(found).toEqual({ independent: 1, terminal: 2, zeroBased: 1.5, leastSquares: 1 });
});

test("a straight error curve departs by nothing but rounding", () => {
  const found = linearity([at(0, 0.1), at(10, 0.4), at(20, 0.7), at(30, 1)]);
  if (!isDetermined(found)) throw new Error(found.notDetermined);
  for (const figure of Object.values(found)) expectNear(figure, 0, 1e-15); // a few roundings of numbers below 1
});

test.each([0, 1, 2])("%d test points are too few", (count) => {
  const curve = [at(0, 0), at(50, 1)].slice(0, count);
  expect(linearity(curve)).toEqual({ notDetermined: "fewer than three test points" });
});

test("test points at one reference, or at two, have no linearity; they are not a fault", () => {
  const reason = { notDetermined: "the test points lie at fewer than three reference distances" };
  expect(linearity([at(5, 0, 0), at(5, 1, 50), at(5, 2, 100)])).toEqual(reason);
  expect(linearity([at(5, 0, 0), at(50, 1, 50), at(5, 2, 100)])).toEqual(reason);
  expect(linearity([at(0, 0, 0), at(0, 1, 50), at(0, 2, 100)])).toEqual(reason);
});

test("references that differ by the rounding of a mean are one distance", () => {
  const rounded = 0.1 + 0.2; // 0.30000000000000004
  expect(linearity([at(0.3, 0, 0), at(rounded, 1, 50), at(1, 2, 100)])).toHaveProperty("notDetermined");
  expect(linearity([at(0.3, 0, 0), at(0.3000001, 1, 50), at(1, 2, 100)])).toHaveProperty("independent");
});
