import { expect, test } from "vitest";
import { pointError } from "../../../src/analysis/readings/point-errors.ts";
import { expectNear, rounding } from "../sample-loop.ts";

const line = Object.freeze({ rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 });

test("12.16 mA at 50 mm of 0 to 100 mm indicates 51 mm: 1 mm, 0.16 mA, 1 % of span too much", () => {
  const { indicated, errorDistance, errorOutput, errorPercentSpan } = pointError(line, 50, 12.16);
  expectNear(indicated, 51, rounding);
  expectNear(errorDistance, 1, rounding);
  expectNear(errorOutput, 0.16, rounding);
  expectNear(errorPercentSpan, 1, rounding);
});

test("too little is below zero", () => {
  expectNear(pointError(line, 50, 11.84).errorDistance, -1, rounding);
});

test("on a reverse-acting loop too much current is too little distance; both shares of span are of one size", () => {
  const reverse = Object.freeze({ rangeLower: 0, rangeUpper: 100, outputAtLower: 20, outputAtUpper: 4 });
  const { errorDistance, errorOutput, errorPercentSpan } = pointError(reverse, 50, 12.16);
  expectNear(errorDistance, -1, rounding);
  expectNear(errorOutput, 0.16, rounding);
  expectNear((100 * errorOutput) / -16, errorPercentSpan, rounding);
});

test("an ideal output has no error", () => {
  expect(pointError(line, 25, 8)).toEqual({ indicated: 25, errorDistance: 0, errorOutput: 0, errorPercentSpan: 0 });
});
