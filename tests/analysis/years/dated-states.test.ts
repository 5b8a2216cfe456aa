import { describe, expect, test } from "vitest";
import {
  type DatedRecord,
  isAdjusted,
  leftState,
  statesSinceAdjustment,
} from "../../../src/analysis/years/dated-states.ts";

const record = (day: number, adjustment: string | null, asFound: string | null, asLeft: string | null) =>
  Object.freeze({ day, adjustment, asFound, asLeft }) satisfies DatedRecord<string>;
const phases = (records: readonly DatedRecord<string>[]) => statesSinceAdjustment(records).map(({ phase }) => phase);

describe("a record was adjusted", () => {
  test.each(["re-teach", "re-scale", "repair", "replace"])(
    "by a %s, whether or not it was read again",
    (adjustment) => {
      expect(isAdjusted(record(0, adjustment, "a", null))).toBe(true);
      expect(isAdjusted(record(0, adjustment, "a", "b"))).toBe(true);
    },
  );

  test("where nothing is said and it was read once more, but not where it says none", () => {
    expect(isAdjusted(record(0, null, "a", "b"))).toBe(true);
    expect(isAdjusted(record(0, null, "a", null))).toBe(false);
    expect(isAdjusted(record(0, "none", "a", "b"))).toBe(false);
  });
});

test("a loop is left as it was left, and where nobody adjusted it as it was found", () => {
  expect(leftState(record(0, "re-teach", "a", "b"))).toBe("b");
  expect(leftState(record(0, "re-teach", "a", null))).toBeNull();
  expect(leftState(record(0, "none", "a", null))).toBe("a");
  expect(leftState(record(0, "none", "a", "b"))).toBe("a");
  expect(leftState(record(0, "none", null, "b"))).toBe("b");
});

describe("the states since the last adjustment", () => {
  test("begin with its as-left, then go on as found each time", () => {
    const records = [
      record(0, "none", "a", null),
      record(1, "re-teach", "b", "c"),
      record(2, "none", "d", null),
      record(3, "none", "e", "f"),
    ];
    expect(phases(records)).toEqual(["c", "d", "e"]);
    expect(statesSinceAdjustment(records).map(({ day }) => day)).toEqual([1, 2, 3]);
  });

  test("are all of them where there was no adjustment", () => {
    expect(phases([record(0, "none", "a", null), record(1, null, "b", null)])).toEqual(["a", "b"]);
  });

  test("are those after it where it was not read again, and none where it was the last thing done", () => {
    expect(phases([record(0, "repair", "a", null), record(1, "none", "b", null)])).toEqual(["b"]);
    expect(phases([record(0, "none", "a", null), record(1, "replace", "b", null)])).toEqual([]);
    expect(phases([])).toEqual([]);
  });
});
