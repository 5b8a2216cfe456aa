import { expect, test } from "vitest";
import { ProblemList } from "../../src/problems/problem-list.ts";

test("problems are kept in the order in which they were found, with the catalogue's severity", () => {
  const problems = new ProblemList();
  expect(problems.hasStop).toBe(false);
  problems.add("tables/file-unknown", { file: "notes.csv" }, { values: { nearest: "", tables: "readings" } });
  expect(problems.hasStop).toBe(false);
  problems.add("tables/quote", { file: "readings.csv", line: 3 });
  expect(problems.hasStop).toBe(true);
  expect(problems.all).toEqual([
    {
      code: "tables/file-unknown",
      severity: "warn",
      place: { file: "notes.csv" },
      values: { nearest: "", tables: "readings" },
    },
    { code: "tables/quote", severity: "stop", place: { file: "readings.csv", line: 3 }, values: {} },
  ]);
});

test("what was read and what it belongs to are kept where they are given", () => {
  const problems = new ProblemList();
  problems.add("tables/cell-not-date", { file: "a.csv" }, { read: "03/04", belongsTo: { calibration: "C-1" } });
  expect(problems.all[0]).toMatchObject({ read: "03/04", belongsTo: { calibration: "C-1" } });
});
