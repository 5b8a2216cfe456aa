import { expect, test } from "vitest";
import { overTheYears } from "../../../src/assembly/years/over-the-years.ts";
import { driftColumns, historyColumns } from "../../../src/report/columns/history-columns.tsx";
import { leadingPlaceOf } from "../../../src/report/texts/history-texts.ts";
import { steadyYears } from "../../assembly/sample-years.ts";

const years = overTheYears(steadyYears, { intervalMonths: 12 })!;

test("a page shows the change since the record before too, which a terminal has no room for", () => {
  const change = historyColumns("mm").filter(({ name }) => name === undefined);
  expect(change.map(({ heading }) => heading)).toEqual(["Change since the record before ± U", "Change a year"]);
  expect(change.map(({ text }) => text?.(years.records[0]!))).toEqual(["–", ""]);
  expect(change.map(({ text }) => text?.(years.records[1]!))).toEqual([
    expect.stringMatching(/^[+−]\d.* ± \d/u),
    expect.stringMatching(/^[+−].* a year$/u),
  ]);
});

test("one place speaks for the loop", () => {
  const [, speaks] = driftColumns("mm", leadingPlaceOf(years));
  expect(years.places.map((place) => speaks?.text?.(place)).filter((words) => words !== "")).toEqual([
    "speaks for the loop",
  ]);
});
