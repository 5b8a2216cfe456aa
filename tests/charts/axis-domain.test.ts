import { expect, test } from "vitest";
import { axisDomain } from "../../src/charts/axis-domain.ts";

// Powers of two, so that every comparison is exact.
test("room is a part of the length between the least and the greatest value", () => {
  expect(axisDomain([-2, 6, 1], { below: 0.125, above: 0.25 })).toEqual([-3, 8]);
});

test("an axis is never shorter than the shortest", () => {
  expect(axisDomain([1, 1], { below: 0, above: 0 }, 0.5)).toEqual([0.75, 1.25]);
  expect(axisDomain([0, 2], { below: 0, above: 0 }, 0.5)).toEqual([0, 2]);
});

test.each([[[]], [[1, Number.NaN]], [[Number.POSITIVE_INFINITY, 0]], [[3, 3]]])("%j has no axis", (values) => {
  expect(() => axisDomain(values, { below: 0.1, above: 0.1 })).toThrow(RangeError);
});
