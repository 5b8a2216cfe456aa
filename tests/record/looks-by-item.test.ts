import { expect, test } from "vitest";
import { lastLooks, looksByItem } from "../../src/record/looks-by-item.ts";

const look = (item: string, result: "pass" | "fail" | "not applicable" | "not looked at") => ({ item, result });

test("the looks at an item stand together, in the order of the table", () => {
  const rows = [look("shield", "fail"), look("burden", "pass"), look("shield", "pass")];
  expect(looksByItem(rows)).toEqual([[rows[0], rows[2]], [rows[1]]]);
  expect(lastLooks(rows)).toEqual([rows[2], rows[1]]);
});

test("a row that nobody answered is no look, and takes nothing back", () => {
  const rows = [look("shield", "fail"), look("shield", "not looked at"), look("duct", "not looked at")];
  expect(lastLooks(rows)).toEqual([rows[0]]);
  expect(lastLooks([])).toEqual([]);
});
