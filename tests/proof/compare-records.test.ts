import { describe, expect, test } from "vitest";
import { compareRecords } from "../../src/proof/compare-records.ts";

const value = (place: string, expected: string | null, found: string | null) => ({
  place,
  expected,
  found,
  kind: "value",
});

test("a figure that is 0.1 and should be 0.2 is told with its path and both values", () => {
  expect(compareRecords({ zeroError: { percentSpan: 0.1 } }, { zeroError: { percentSpan: 0.2 } })).toEqual([
    value("zeroError.percentSpan", "0.1", "0.2"),
  ]);
});

test("equal data have no difference, whatever they are", () => {
  for (const same of [null, 0, -0, "", [], {}, { a: [1, { b: null }] }]) {
    expect(compareRecords(same, structuredClone(same))).toEqual([]);
  }
  expect(compareRecords(0, -0)).toEqual([]);
});

describe("what differs is told", () => {
  test.each([
    ["a key less and a key more", { a: 1, b: 2 }, { a: 1, c: 2 }, [value("b", "2", null), value("c", null, "2")]],
    ["a row more", { rows: [1] }, { rows: [1, { a: 2 }] }, [value("rows[1]", null, '{"a":2}')]],
    ["a row less", [[1], [2]], [[1]], [value("[1]", "[2]", null)]],
    ["a number for a text", { a: "1" }, { a: 1 }, [value("a", '"1"', "1")]],
    ["a list for an object", { a: [] }, { a: {} }, [value("a", "[]", "{}")]],
    ["null for an object", { a: {} }, { a: null }, [value("a", "{}", "null")]],
    ["the whole", 1, 2, [value("", "1", "2")]],
    ["what every object inherits", {}, { constructor: 1 }, [value("constructor", null, "1")]],
  ])("%s", (_, expected, found, differences) => {
    expect(compareRecords(expected, found)).toEqual(differences);
  });

  test("the same keys in another order are one difference beside those of the values", () => {
    expect(compareRecords({ a: { b: 1, c: 2 } }, { a: { c: 3, b: 1 } })).toEqual([
      { place: "a", expected: "b, c", found: "c, b", kind: "order" },
      value("a.c", "2", "3"),
    ]);
  });
});

describe("the last digits", () => {
  // 2^-52, the step of doubles above 1, and 1 in 10^12 of it: both sides of the limit.
  test.each([
    [1, 1 + Number.EPSILON, "last digits"],
    [1000, 1000 + 0.9e-9, "last digits"],
    [1000, 1000 + 1.1e-9, "value"],
    [0, 1e-300, "value"],
    [-0.3, 0.3, "value"],
    [0.1 + 0.2, 0.3, "last digits"],
  ])("%d and %d differ by %s", (expected, found, kind) => {
    expect(compareRecords(expected, found)[0]?.kind).toBe(kind);
    expect(compareRecords(found, expected)[0]?.kind).toBe(kind);
  });
});
