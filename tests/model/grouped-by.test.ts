import { expect, test } from "vitest";
import { groupedBy } from "../../src/model/grouped-by.ts";

test("items of one key stand together, in the order in which they came", () => {
  const groups = groupedBy(Object.freeze(["b1", "a1", "b2"]), (text) => text[0]);
  expect([...groups]).toEqual([
    ["b", ["b1", "b2"]],
    ["a", ["a1"]],
  ]);
});
