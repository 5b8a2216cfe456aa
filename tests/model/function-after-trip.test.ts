import { expect, test } from "vitest";
import { functionAfterTrip } from "../../src/model/function-after-trip.ts";

// Common practice of proximity switches: normally open is off without a target.
test.each([
  ["approach", "on", "NO"],
  ["recede", "off", "NO"],
  ["approach", "off", "NC"],
  ["recede", "on", "NC"],
] as const)("on %s the state %s is that of %s", (direction, state, expected) => {
  expect(functionAfterTrip({ direction, state })).toBe(expected);
});
