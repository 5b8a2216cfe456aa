import fc from "fast-check";
import { expect, test } from "vitest";
import { writeWithUncertainty } from "../../src/units/round-to-uncertainty.ts";

// JCGM 100:2008, 7.2.6: 10,057 62 Ω with u = 27 mΩ is given as 10,058 Ω with 27 mΩ.
test("the example of the GUM: 10.05762 with 0.027 is 10.058 with 0.027", () => {
  expect(writeWithUncertainty(10.05762, 0.027)).toEqual({ value: "10.058", uncertainty: "0.027" });
});

test.each([
  [-0.17120379, 0.0028776, "−0.1712", "0.0029"],
  [12.3456, 0.0996, "12.35", "0.10"],
  [1234.5, 12.3, "1235", "12"],
  [123456, 1234, "123500", "1200"],
  [123456, 996, "123500", "1000"],
  [0.04, 3.2, "0.0", "3.2"],
])("%d with %d is %s with %s", (value, uncertainty, writtenValue, writtenUncertainty) => {
  expect(writeWithUncertainty(value, uncertainty)).toEqual({ value: writtenValue, uncertainty: writtenUncertainty });
});

// Published results: JCGM 100:2008, H.1.7 (length, mm, 32 nm) and H.2 (table H.4: R, X and Z with their u).
test.each([
  [50.000838, 0.000032, "50.000838", "0.000032"],
  [127.732, 0.071, "127.732", "0.071"],
  [219.847, 0.295, "219.85", "0.30"],
  [254.26, 0.236, "254.26", "0.24"],
])("%d with %d is published as %s with %s, to two digits", (value, uncertainty, writtenValue, writtenUncertainty) => {
  expect(writeWithUncertainty(value, uncertainty)).toEqual({ value: writtenValue, uncertainty: writtenUncertainty });
});

// By hand: a half goes away from zero, in value and uncertainty, before and behind the point.
test.each([
  [0.125, 0.25, "0.13", "0.25"],
  [-0.125, 0.25, "−0.13", "0.25"],
  [1.005, 0.145, "1.01", "0.15"],
  [-1.005, 0.145, "−1.01", "0.15"],
  [-12.5, 14.5, "−13", "15"],
  [12350, 1250, "12400", "1300"],
  [-12350, 1250, "−12400", "1300"],
  [-50, 1000, "−100", "1000"],
  [-49, 1000, "0", "1000"],
  [8.5, 9.95, "9", "10"],
])("the halves of %d with %d: %s with %s", (value, uncertainty, writtenValue, writtenUncertainty) => {
  expect(writeWithUncertainty(value, uncertainty)).toEqual({ value: writtenValue, uncertainty: writtenUncertainty });
});

test("a half of the last place goes away from zero on both sides, what is just short of it does not", () => {
  const written = (text: string, uncertainty: string) => writeWithUncertainty(Number(text), Number(uncertainty)).value;
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 99_999 }),
      fc.integer({ min: 10, max: 99 }),
      fc.integer({ min: -9, max: 9 }),
      (steps, digits, place) => {
        const uncertainty = `${digits}e${place}`;
        const up = written(`${steps + 1}e${place}`, uncertainty);
        expect(written(`${steps}.5e${place}`, uncertainty)).toBe(up);
        expect(written(`-${steps}.5e${place}`, uncertainty)).toBe(`−${up}`);
        expect(written(`-${steps}.4999e${place}`, uncertainty)).toBe(written(`-${steps}e${place}`, uncertainty));
      },
    ),
    { seed: 20_261_126 },
  );
});

test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("an uncertainty of %d is refused", (uncertainty) => {
  expect(() => writeWithUncertainty(1, uncertainty)).toThrow(RangeError);
});
