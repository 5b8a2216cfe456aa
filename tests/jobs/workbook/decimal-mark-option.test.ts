import { expect, test } from "vitest";
import { readDecimalMark } from "../../../src/jobs/workbook/decimal-mark-option.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";

test.each([
  ["comma", "comma"],
  [" Point", "point"],
  [undefined, undefined],
])("%j is %j", (read, mark) => {
  const problems = new ProblemList();
  expect(readDecimalMark(read, problems)).toBe(mark);
  expect(problems.all).toEqual([]);
});

test.each([",", "", "both"])("%j is told, with what is accepted", (read) => {
  const problems = new ProblemList();
  expect(readDecimalMark(read, problems)).toBeUndefined();
  expect(problems.all).toMatchObject([
    { code: "options/not-understood", read, values: { option: "--decimal-mark", accepted: "point, comma" } },
  ]);
});
