import { expect, test } from "vitest";
import { columnName } from "../../src/model/column-name.ts";

test.each([
  ["tag", "tag"],
  ["rangeLower", "range_lower"],
  ["signalAtCard", "signal_at_card"],
])("%s in the code is %s in a table", (key, name) => {
  expect(columnName(key)).toBe(name);
});
