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

test("what a computer rounds is no error, and a millionth of a micrometre is one", () => {
  // 10 to 90 in, 5 to 1 V: 4.60 V is 18 in, which comes out as 17.999999999999996.
  const inches = Object.freeze({ rangeLower: 10, rangeUpper: 90, outputAtLower: 5, outputAtUpper: 1 });
  const references = Array.from({ length: 21 }, (_, step) => 10 + 4 * step);
  for (const reference of references) {
    const { errorDistance, errorOutput } = pointError(
      inches,
      reference,
      Number((5 - (reference - 10) / 20).toFixed(2)),
    );
    expect([errorDistance, errorOutput]).toEqual([0, 0]);
  }
  expect(pointError(line, 50 - 1e-12, 12).errorDistance).toBeGreaterThan(0);
});
