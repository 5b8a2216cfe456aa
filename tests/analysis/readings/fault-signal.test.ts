import { expect, test } from "vitest";
import { faultSide, milliampFaultLevels } from "../../../src/analysis/readings/fault-signal.ts";

// NAMUR NE 43: failure information at 3.6 mA and below, at 21.0 mA and above; 3.8 to 20.5 mA is measurement.
test("3.55 mA reports a fault on the low side", () => {
  expect(faultSide(3.55, milliampFaultLevels)).toBe("low");
});

test.each([
  [3.6, "low"],
  [3.600001, "none"],
  [3.8, "none"],
  [20.5, "none"],
  [20.999999, "none"],
  [21, "high"],
  [Number.POSITIVE_INFINITY, "high"],
] as const)("%d mA: %s", (signal, side) => {
  expect(faultSide(signal, milliampFaultLevels)).toBe(side);
});

test("a side without a level never reports a fault", () => {
  expect(faultSide(-5, {})).toBe("none");
  expect(faultSide(-5, { high: 10.5 })).toBe("none");
  expect(faultSide(10.5, { high: 10.5 })).toBe("high");
  expect(faultSide(99, { low: 0.5 })).toBe("none");
});
