import { expect, test } from "vitest";
import { fellowsOf, type Item } from "../../../src/analysis/plausibility/fellow-readings.ts";

/** A reading a direction at each of five points, with 0.2 % of hysteresis and an error that grows by 0.1 % a quarter. */
const items = (["rising", "falling"] as const).flatMap((direction, way) =>
  [0, 25, 50, 75, 100].map((point, place): Item => {
    return { index: 5 * way + place, point, direction, input: point, error: 0.1 * place + 0.2 * way };
  }),
);

const near = (expected: readonly number[]) => expected.map((one) => expect.closeTo(one, 12));

test("between its neighbours, and beyond them at an end, a reading is held against both directions and its own", () => {
  const fellows = fellowsOf(items);
  expect(fellows(items[2] as Item)).toEqual({ repeats: near([0.4]), others: near([0.3, 0.2, 0.3]) });
  expect(fellows(items[0] as Item)).toEqual({ repeats: near([0.2]), others: near([0.1, 0, 0.1]) });
});

test("a wild reading moves neither the line through all nor what its own direction says two points away", () => {
  const wild = items.map((item) => (item.index === 3 ? { ...item, error: 9 } : item));
  const { others } = fellowsOf(wild)(wild[1] as Item);
  expect(others.slice(0, 2)).toEqual(near([0.2, 0.1]));
  expect(others[2]).toBeLessThan(0.5);
});

test("where its own direction lacks a point, the next one of that direction stands in", () => {
  const without = items.filter(({ index }) => index !== 3);
  expect(fellowsOf(without)(without[2] as Item).others[1]).toBeCloseTo(0.2, 12);
});
