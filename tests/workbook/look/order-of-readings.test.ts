import { expect, test } from "vitest";
import { orderOfReadings } from "../../../src/workbook/look/order-of-readings.ts";

const shown = (references: readonly number[]) =>
  orderOfReadings(references)
    .map(({ direction, cycle }) => `${direction === "rising" ? "r" : "f"}${cycle}`)
    .join(" ");

const up = [0, 25, 50, 75, 100];
const down = up.toReversed();

test("out and back, and again", () => {
  expect(shown([...up, ...down])).toBe("r1 r1 r1 r1 r1 f1 f1 f1 f1 f1");
  expect(shown([...up, ...down, ...up, ...down])).toBe("r1 r1 r1 r1 r1 f1 f1 f1 f1 f1 r2 r2 r2 r2 r2 f2 f2 f2 f2 f2");
});

test("the far end read once belongs to the way out", () => {
  expect(shown([...up, ...down.slice(1)])).toBe("r1 r1 r1 r1 r1 f1 f1 f1 f1");
});

test("the same way again and again begins anew at each jump back", () => {
  expect(shown([...up, ...up, ...up])).toBe("r1 r1 r1 r1 r1 r2 r2 r2 r2 r2 r3 r3 r3 r3 r3");
  expect(shown([...down, ...down])).toBe("f1 f1 f1 f1 f1 f2 f2 f2 f2 f2");
});

test("readings that repeat at one place go the way of the next step", () => {
  expect(shown([0, 0, 0, 50, 50, 100, 100])).toBe("r1 r1 r1 r1 r1 r1 f1");
  expect(shown([50])).toBe("r1");
  expect(shown([])).toBe("");
});

test("back first, then out", () => {
  expect(shown([...down, ...up])).toBe("f1 f1 f1 f1 f1 r1 r1 r1 r1 r1");
});
