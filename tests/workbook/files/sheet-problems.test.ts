import { expect, test } from "vitest";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { placeText } from "../../../src/problems/sentence.ts";
import { tellSheet } from "../../../src/workbook/files/sheet-problems.ts";
import type { SheetText } from "../../../src/workbook/files/sheet-text.ts";

const rows = [
  { line: 1, cells: ["remark", "", "signal", ""] },
  { line: 2, cells: ["#N/A", "", "#N/A", ""] },
  { line: 3, cells: ["Err:502", "x", "4.01", ""] },
];
const none = new Set<number>();
const plain: SheetText = {
  name: "s",
  isHidden: false,
  rows,
  hiddenLines: none,
  hiddenColumns: none,
  merged: [],
  doubtful: [],
};

function told(more: Partial<SheetText>): readonly string[] {
  const problems = new ProblemList();
  const letters = ["A", "B", "C", "D"];
  tellSheet({ ...plain, ...more }, { table: "readings", file: "b.ods", sheet: { name: "s", letters } }, problems);
  return problems.all.map((problem) => `${problem.code} ${placeText(problem.place).replace("b.ods, sheet s, ", "")}`);
}

const errors = ["tables/cell-error cell A2 (remark)", "tables/cell-error cell A3 (remark)"];
const merged = (line: number, index: number, lastLine: number, lastIndex: number) => ({
  merged: [{ first: { line, index }, last: { line: lastLine, index: lastIndex } }],
});

test("an error is told where a text could stand; elsewhere it is no number, and told so", () => {
  expect(told({})).toEqual(errors);
});

test("merged cells are told where they hold something and cover another row or column with a name", () => {
  expect(told(merged(3, 0, 4, 0)).at(-1)).toBe("tables/cell-merged cell A3 (remark)");
  expect(told(merged(3, 0, 3, 2)).at(-1)).toBe("tables/cell-merged cell A3 (remark)");
  expect(told(merged(3, 2, 3, 3))).toEqual(errors);
  expect(told(merged(3, 3, 9, 3))).toEqual(errors);
});

test("what is hidden is told where something stands in it", () => {
  expect(told({ isHidden: true }).at(-1)).toBe("tables/hidden-sheet b.ods, sheet s");
  expect(told({ hiddenColumns: new Set([0, 1, 3]) }).slice(2)).toEqual(["tables/hidden-column cell A1 (remark)"]);
  expect(told({ hiddenLines: new Set([2, 3, 9]) }).slice(2)).toEqual(["tables/hidden-row row 2"]);
});
