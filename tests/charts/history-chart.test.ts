import { expect, test } from "vitest";
import type { YearRecord } from "../../src/assembly/years/over-the-years.ts";
import { overTheYears } from "../../src/assembly/years/over-the-years.ts";
import { historyChart } from "../../src/charts/history-chart.ts";
import { steadyYears, yearPhase, yearRecord } from "../assembly/sample-years.ts";
import { frozen } from "./frozen.ts";
import { expectGolden } from "./golden.ts";
import { svgTexts } from "./svg-texts.ts";

const history = (records: readonly YearRecord[]) =>
  frozen({ tag: "LT-1", distanceUnit: "mm", overTheYears: overTheYears(records)! });

test("the history of a loop is the golden in both widths, and the same bytes twice", async () => {
  for (const size of ["wide", "narrow"] as const) {
    const drawing = await historyChart(history(steadyYears), size);
    expect((await historyChart(history(steadyYears), size))?.svg).toBe(drawing?.svg);
    expectGolden(`history-${size}`, drawing?.svg ?? "");
  }
});

test("title, caption and cross say how it drifts and when its forecast meets the limit", async () => {
  const drawing = await historyChart(history(steadyYears), "wide");
  expect(drawing?.title).toBe(
    "At 500 mm the error drifts by +0.48 mm a year; the forecast meets the upper limit on 2029-01-08.",
  );
  expect(svgTexts(drawing?.svg ?? "")).toEqual(expect.arrayContaining(["2029-01-08", "re-teach", "fitted line"]));
  expect(drawing?.caption).toContain("The cross is where they meet a limit.");
});

test("without a line there is no band and no cross, and the title says why", async () => {
  const drawing = await historyChart(history(steadyYears.slice(0, 2)), "wide");
  expect(drawing?.title).toBe("At 500 mm: not enough: two records since the last adjustment.");
  expect(svgTexts(drawing?.svg ?? "")).not.toContain("95 % prediction band");
  expect(drawing?.caption).not.toMatch(/cross|dotted/u);
});

test("adjustments close together keep their lines, and their words only where there is room", async () => {
  const adjusted = (day: string) =>
    yearRecord(day, [1, 1, 1], { adjustment: "re-teach", asLeft: yearPhase([0, 0, 0]) });
  const near = history([adjusted("2020-01-01"), adjusted("2020-01-20"), adjusted("2026-01-01")]);
  const texts = svgTexts((await historyChart(near, "narrow"))?.svg ?? "");
  expect(texts.filter((text) => text === "re-teach")).toHaveLength(2);
});

test("where no test point was judged there is no picture", async () => {
  expect(await historyChart(history([yearRecord("2024-01-01", [])]), "wide")).toBeUndefined();
});
