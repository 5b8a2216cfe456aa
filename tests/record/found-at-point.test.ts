import { expect, test } from "vitest";
import { foundAtPoint } from "../../src/record/found-at-point.ts";

const readings = [
  { point: 250, direction: "rising", signal: 4.5 },
  { point: 250, direction: "rising", signal: 4.7, leftOut: "a fault level" },
  { point: 250, direction: "rising", signal: 4.6 },
  { point: 250, direction: "falling", signal: 4.9 },
  { point: 500, direction: "rising", signal: 9 },
] as const;

test("the mean is that of the readings of one direction at one point, without what is left out", () => {
  const found = foundAtPoint(readings, { point: 250, direction: "rising", quantity: "signal" });
  expect(found?.count).toBe(2);
  // (4.5 + 4.6) / 2, to the last digits of a double.
  expect(Math.abs((found?.mean ?? 0) - 4.55)).toBeLessThan(1e-14);
});

test("what was not read there is not found", () => {
  expect(foundAtPoint(readings, { point: 500, direction: "falling", quantity: "signal" })).toBeUndefined();
  expect(foundAtPoint(readings, { point: 250, direction: "rising", quantity: "counts" })).toBeUndefined();
});
