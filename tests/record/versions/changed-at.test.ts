import { expect, test } from "vitest";
import { changedAt, isJsonObject, type JsonObject } from "../../../src/record/versions/changed-at.ts";

const marked = (found: JsonObject) => ({ ...found, seen: true });

test("a field of each object of a list is called otherwise", () => {
  const change = ({ b, ...rest }: JsonObject) => ({ ...rest, c: b });
  expect(changedAt({ a: [{ b: 1 }, { b: 2 }] }, "a[]", change)).toEqual({ a: [{ c: 1 }, { c: 2 }] });
});

test.each([
  ["", { a: 1 }, { a: 1, seen: true }],
  ["a", { a: {}, b: {} }, { a: { seen: true }, b: {} }],
  ["*", { a: {}, b: {} }, { a: { seen: true }, b: { seen: true } }],
  ["*.l[]", { a: { l: [{}] }, b: { l: [] } }, { a: { l: [{ seen: true }] }, b: { l: [] } }],
  ["l[][]", { l: [[{}], []] }, { l: [[{ seen: true }], []] }],
])("%j is the path of what is changed", (path, value, expected) => {
  const before = structuredClone(value);
  expect(changedAt(value, path, marked)).toEqual(expected);
  expect(value).toEqual(before);
});

test.each([
  ["", null],
  ["", [{}]],
  ["a", { a: 7 }],
  ["a.b", { a: null }],
  ["a[]", { a: { b: 1 } }],
  ["a[]", { a: ["text", null, 3] }],
  ["toString", {}],
])("at %j of %j there is nothing to change", (path, value) => {
  expect(changedAt(value, path, marked)).toEqual(value);
});

test("fields stay in their order, one called __proto__ too", () => {
  const odd: unknown = JSON.parse('{"z":{},"__proto__":{},"a":1}');
  expect(JSON.stringify(changedAt(odd, "z", marked))).toBe('{"z":{"seen":true},"__proto__":{},"a":1}');
});

test("a list is no object with fields", () => {
  expect([{}, [], null, "a"].map(isJsonObject)).toEqual([true, false, false, false]);
});
