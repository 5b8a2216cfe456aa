import { expect, test } from "vitest";
import { acceptedBelow } from "../../../src/verdict/recommendation/accepted-below.ts";

test("an error of 8 in a tolerance of 10 is accepted with U up to 2, and up to 4 where half of U is the guard band", () => {
  expect(acceptedBelow({ errorDistance: -8, tolerance: 10 }, { name: "guard band", guardFactor: 1 })).toBe(2);
  expect(acceptedBelow({ errorDistance: 8, tolerance: 10 }, { name: "non-binary guard band", guardFactor: 0.5 })).toBe(
    4,
  );
});

test("no U accepts an error outside, and a rule without a guard band of r·U names none", () => {
  expect(acceptedBelow({ errorDistance: 10, tolerance: 10 }, { name: "guard band", guardFactor: 1 })).toBeUndefined();
  expect(acceptedBelow({ errorDistance: 8, tolerance: 10 }, { name: "guard band", guardFactor: 0 })).toBeUndefined();
  expect(
    acceptedBelow({ errorDistance: 8, tolerance: 10 }, { name: "simple acceptance", guardFactor: 1 }),
  ).toBeUndefined();
});
