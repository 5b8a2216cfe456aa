import { expect, test } from "vitest";
import { rateChart } from "../../src/charts/rate-chart.ts";
import { clopperPearson } from "../../src/numeric/clopper-pearson.ts";
import { frozen } from "./frozen.ts";
import { expectGolden } from "./golden.ts";
import { svgTexts } from "./svg-texts.ts";

const year = (name: number, inTolerance: number, of: number) => ({
  year: name,
  inTolerance,
  of,
  interval: clopperPearson(inTolerance, of),
});
const years = frozen([year(2023, 9, 12), year(2024, 13, 13), year(2026, 0, 2)]);

test("the chart of rates is the golden, and the same bytes twice", async () => {
  const drawing = await rateChart(years);
  expect((await rateChart(years))?.svg).toBe(drawing?.svg);
  expectGolden("rates", drawing?.svg ?? "");
});

test("each year has its rate in words, and the title says the last", async () => {
  const drawing = await rateChart(years);
  expect(drawing?.title).toBe("In 2026, 0 of 2 were found in tolerance");
  for (const words of ["2023", "9 of 12", "13 of 13", "0 of 2"]) expect(svgTexts(drawing?.svg ?? "")).toContain(words);
});

test("without a year there is no chart", async () => {
  expect(await rateChart([])).toBeUndefined();
});
