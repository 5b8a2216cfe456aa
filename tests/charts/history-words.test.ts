import { expect, test } from "vitest";
import type { YearRecord } from "../../src/assembly/years/over-the-years.ts";
import { overTheYears } from "../../src/assembly/years/over-the-years.ts";
import { historyWords } from "../../src/charts/history-words.ts";
import { steadyYears, yearRecord } from "../assembly/sample-years.ts";
import { frozen } from "./frozen.ts";

const wordsOf = (records: readonly YearRecord[]) => {
  const found = overTheYears(records)!;
  const history = frozen({ tag: "LT-1", distanceUnit: "mm", overTheYears: found });
  return historyWords(history, found.places[found.leading ?? -1]!, records.length);
};

test("the description says what is drawn, of how many results, within which tolerance", () => {
  expect(wordsOf(steadyYears).description).toMatch(
    /^Error of LT-1 over time, 5 results at 500 mm, tolerance from −5 to 5 mm\. Last record 2024-03-04\. At 500 mm the error drifts/u,
  );
});

test("the caption tells of the line and of the cross only where they are drawn", () => {
  expect(wordsOf(steadyYears).caption).toMatch(
    /fitted to the records since .* The cross is where they meet a limit\.$/u,
  );
  expect(wordsOf(steadyYears.slice(0, 2)).caption).not.toMatch(/cross|dotted/u);
});

test("a forecast beyond the limit already, and one that never comes, are told so", () => {
  const drifting = [0, 2, 4.4, 4.6].map((error, index) => yearRecord(`202${index}-01-01`, [error, 0, 0]));
  expect(wordsOf(drifting).title).toMatch(/reaches beyond the upper limit already\.$/u);
  const still = [0.1, 0.1, 0.1].map((error, index) => yearRecord(`202${index}-01-01`, [error, 0, 0]));
  expect(wordsOf(still).title).toMatch(/meets no limit, not within 20 years\.$/u);
});
