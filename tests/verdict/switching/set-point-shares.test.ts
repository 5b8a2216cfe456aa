import fc from "fast-check";
import { expect, test } from "vitest";
import { setPointShares } from "../../../src/verdict/switching/set-point-shares.ts";

const of = (error: number, analogError: number, uncertainty = 1, analogUncertainty = 2) =>
  setPointShares(error, uncertainty, { errorDistance: analogError, expandedUncertainty: analogUncertainty });

test("a sensor that indicates 20 too much switches 20 too early: −21 is a shift of −20 and a teach of −1", () => {
  expect(of(-21, 20)).toEqual({
    analogErrorDistance: 20,
    shift: -20,
    shiftUncertainty: 2,
    teach: -1,
    teachUncertainty: Math.sqrt(5),
    consistentWith: "shift",
  });
});

test("the analog value right and the switch off is a teach", () => {
  expect(of(-21, 0)).toMatchObject({ shift: 0, teach: -21, consistentWith: "teach" });
  expect(of(40, -3)).toMatchObject({ shift: 3, teach: 37, consistentWith: "teach" });
});

test("off by the same distance in the same sense of the error is no shift: both are named", () => {
  // A mount that moved gives opposite signs; +20 and +20 are a shift of −20 and a teach of +40.
  expect(of(20, 20)).toMatchObject({ shift: -20, teach: 40, consistentWith: "teach and shift" });
});

test("a part within its own uncertainty is no cause, and where both are nothing is told", () => {
  expect(of(-3, 1.9, 2, 2)).toMatchObject({ consistentWith: "neither for certain" });
  expect(of(-8, 3.9, 1, 4)).toMatchObject({ consistentWith: "neither for certain" });
  expect(of(-8, 3.9, 1, 3)).toMatchObject({ consistentWith: "teach and shift" });
});

test("a part below a quarter of the error is no cause, a quarter is one", () => {
  expect(of(40, -9.9)).toMatchObject({ consistentWith: "teach" });
  expect(of(40, -10)).toMatchObject({ consistentWith: "teach and shift" });
});

test("the parts add up to the error", () => {
  const distance = fc.double({ min: -100, max: 100, noNaN: true });
  fc.assert(
    fc.property(distance, distance, (error, analogError) => {
      const { shift, teach } = of(error, analogError);
      expect(Math.abs(shift + teach - error)).toBeLessThan(1e-13);
    }),
    { seed: 20260317 },
  );
});
