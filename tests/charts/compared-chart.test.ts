import { expect, test } from "vitest";
import { comparedChart, seriesAfter } from "../../src/charts/compared-chart.ts";
import { frozen } from "./frozen.ts";
import { sampleRecord } from "./sample-record.ts";
import { svgTexts } from "./svg-texts.ts";

const row = (x: number, y: number, series: "asFound" | "sensor") =>
  frozen({ point: x, x, y, series, shape: "rising" as const });

test("before and after stand in the legend with the tolerance, and open marks stand beside filled ones", async () => {
  const { svg } = await comparedChart(
    sampleRecord(),
    {
      kind: "compared",
      name: "asFound",
      before: { rows: [row(200, 0.3, "asFound"), row(700, 0.6, "asFound")], text: "as it was" },
      after: { rows: [row(200, 0, "sensor"), row(700, 0.1, "sensor")], text: "as it could be" },
    },
    { title: "t", caption: "c", description: "d" },
  );
  for (const text of ["as it was", "as it could be", "tolerance"]) expect(svgTexts(svg)).toContain(text);
  expect(seriesAfter).toEqual({ asFound: "sensor", asLeft: "controller" });
});
