import { expect, test } from "vitest";
import { switchingFunction } from "../../../src/verdict/switching/switching-function.ts";

// Common practice of proximity switches: normally open is off without a target, and on with one.
test.each([
  ["NO", "approach", "on", "pass"],
  ["NO", "recede", "off", "pass"],
  ["NO", "approach", "off", "fail"],
  ["NC", "approach", "off", "pass"],
  ["NC", "recede", "off", "fail"],
] as const)("%s, %s, %s after it: %s", (stated, direction, state, statement) => {
  expect(switchingFunction({ function: stated }, [{ direction, state }])).toMatchObject({ statement });
});

test("what is not stated gets no statement, and trips that contradict each other show nothing", () => {
  expect(switchingFunction({}, [{ direction: "recede", state: "on" }])).toEqual({ seen: "NC", statement: null });
  expect(switchingFunction({ function: "NO" }, [{ direction: "recede" }])).toHaveProperty("notDetermined");
  const mixed = [
    { direction: "approach", state: "on" },
    { direction: "approach", state: "off" },
  ] as const;
  expect(switchingFunction({ function: "NO" }, mixed)).toHaveProperty("notDetermined");
});
