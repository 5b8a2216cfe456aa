import { expect, test } from "vitest";
import { heldReadings } from "../../../src/analysis/readings/held-readings.ts";

const inputs = [0, 20, 40, 60, 80, 100];
const readings = (outputs: readonly number[], given: readonly number[] = inputs) =>
  outputs.map((output, index) => ({ index, point: given[index] as number, input: given[index] as number, output }));

test("the fourth reading shows what the third had shown: it is held", () => {
  expect(heldReadings(readings([0, 20, 40, 40, 80, 100]), 1, 0)).toEqual([3]);
});

test("two held readings in a row are both found, going up and coming down", () => {
  const outAndBack = [...inputs, ...inputs.toReversed().slice(1)];
  expect(heldReadings(readings([0, 20, 40, 40, 40, 100, 80, 60, 60, 20, 0], outAndBack), 1, 0)).toEqual([3, 4, 8]);
});

test("a reading again at the same place, a slow sensor and plain noise are not held", () => {
  expect(heldReadings(readings([0, 20, 20, 40, 60, 80], [0, 20, 20, 40, 60, 80]), 1, 0)).toEqual([]);
  expect(heldReadings(readings([0, 35, 35, 40, 60, 80, 100], [0, 20, 20, 40, 60, 80, 100]), 1, 0)).toEqual([]);
  expect(heldReadings(readings([0, 18, 36, 54, 72, 90]), 1, 0)).toEqual([]);
  expect(heldReadings(readings([0.2, 20.1, 39.9, 60.3, 79.8, 100.1]), 1, 0)).toEqual([]);
});

test("an error that does not matter is left alone, and so is what leaves no line", () => {
  expect(heldReadings(readings([0, 20, 40, 40, 80, 100]), 30, 0)).toEqual([]);
  expect(heldReadings(readings([0, 0, 0, 0, 0, 0]), 1, 0)).toEqual([]);
});
