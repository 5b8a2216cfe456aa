import { expect, test } from "vitest";
import { idealOutput, indicatedDistance, outputSpanOf } from "../../../src/analysis/readings/ideal-characteristic.ts";
import { expectNear } from "../sample-loop.ts";

const pressure = Object.freeze({ rangeLower: 150, rangeUpper: 400, outputAtLower: 4, outputAtUpper: 20 });
const reverse = Object.freeze({ rangeLower: 50, rangeUpper: 250, outputAtLower: 20, outputAtUpper: 4 });

test("10.6 mA of 4 to 20 mA over 150 to 400 stands for 253.125, and back", () => {
  expectNear(indicatedDistance(pressure, 10.6), 253.125, 1e-13); // four roundings of numbers near 250
  expectNear(idealOutput(pressure, 253.125), 10.6, 1e-14); // three roundings of numbers near 10
});

test("the ends of the range give the ends of the output, to the last bit", () => {
  expect([150, 400].map((reference) => idealOutput(pressure, reference))).toEqual([4, 20]);
  expect([4, 20].map((output) => indicatedDistance(pressure, output))).toEqual([150, 400]);
});

test("an output that falls over the range is a line like any other", () => {
  expect(idealOutput(reverse, 100)).toBe(16);
  expect(indicatedDistance(reverse, 16)).toBe(100);
  expect(indicatedDistance(reverse, 3.2)).toBe(260);
});

test("the line goes on beyond the range", () => {
  expectNear(idealOutput(pressure, 100), 0.8, 1e-15); // a rounding of the 3.2 that is taken off
  expect(idealOutput(reverse, 25)).toBe(22);
});

test("the span of the output is -16 mA for a reverse-acting loop", () => {
  expect(outputSpanOf({ rangeLower: 0, rangeUpper: 1, outputAtLower: 20, outputAtUpper: 4 })).toBe(-16);
});
