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

test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("an uncertainty of %d is refused", (uncertainty) => {
  expect(() => writeWithUncertainty(1, uncertainty)).toThrow(RangeError);
});
