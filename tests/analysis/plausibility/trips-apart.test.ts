import { expect, test } from "vitest";
import { tripsApart } from "../../../src/analysis/plausibility/trips-apart.ts";
import { expectNear, rounding } from "../sample-loop.ts";

const context = { setPoint: 20, span: 80, step: 0.01 };
const ways = (approach: readonly number[], recede: readonly number[] = []) =>
  tripsApart(
    [
      ...approach.map((reference) => ({ direction: "approach" as const, reference })),
      ...recede.map((reference) => ({ direction: "recede" as const, reference })),
    ],
    context,
  );

test("trips that agree are not apart, and neither is an output that is set wrong as a whole", () => {
  expect(ways([19.4, 19.5, 19.3], [20.2, 20.3, 20.3])).toEqual([]);
  expect(ways([29.4, 29.5, 29.3], [30.2, 30.3, 30.3])).toEqual([]);
  expect(ways([19.4], [20.2])).toEqual([]);
});

test.each([
  [[19.4, 91.4, 19.3], 1, 19.35],
  [[1.94, 19.45, 19.3], 0, 19.375],
  [[19.4, 19.5, 19.3, 13.9], 3, 19.4],
])("the trip of %j that lies far from the others is told with where they lie", (approach, index, expected) => {
  const [found, ...more] = ways(approach, [20.2, 20.3, 20.3]);
  expect(more).toEqual([]);
  expect(found?.index).toBe(index);
  expectNear(found?.expected, expected, rounding);
});

test("of two that do not agree the one farther from the set point is told", () => {
  expect(ways([19.4, 91.4], [20.2]).map(({ index }) => index)).toEqual([1]);
});

test("a single trip is held against the set point and the other direction", () => {
  expect(ways([91.4], [20.2, 20.3]).map(({ index }) => index)).toEqual([0]);
  expect(ways([91.4]).map(({ index }) => index)).toEqual([0]);
});
