import { expect, test } from "vitest";
import { stageChart } from "../../src/charts/stage-chart.ts";
import { frozen } from "./frozen.ts";
import { expectGolden } from "./golden.ts";
import { sampleRecord } from "./sample-record.ts";
import { svgTexts } from "./svg-texts.ts";

test("the stage chart is the golden, and the same bytes twice", async () => {
  const record = frozen(sampleRecord({ hasController: true }));
  const drawing = await stageChart(record, "asFound");
  expect((await stageChart(record, "asFound"))?.svg).toBe(drawing?.svg);
  expectGolden("stage-as-found", drawing?.svg ?? "");
});

test("the title names the worst error of either stage", async () => {
  const record = sampleRecord({ hasController: true });
  for (const reading of record.phases.asLeft?.readings ?? []) {
    reading.errorPercentSpan = 0.1;
    reading.loopErrorDistance = -2;
  }
  const worst = record.phases.asLeft?.readings[5];
  if (worst !== undefined) Object.assign(worst, { errorPercentSpan: -0.3, loopErrorDistance: 7.5 });
  // Span 1000 mm: 7.5 mm is 0.75 % of span.
  expect((await stageChart(record, "asLeft"))?.title).toBe(
    "As left, the error reaches −0.30 % of span in the sensor and +0.75 % in the controller.",
  );
});

test("where counts are judged, the first stage is the sensor with the input card", async () => {
  const record = sampleRecord({ hasController: true });
  if (record.phases.asFound) record.phases.asFound.judged = "counts";
  expect(svgTexts((await stageChart(record, "asFound"))?.svg ?? "")).toContain("sensor and input card");
});

test("one stage only, or a phase that is not there: no picture", async () => {
  expect(await stageChart(sampleRecord(), "asFound")).toBeUndefined();
  const record = sampleRecord({ hasController: true, phases: ["asFound"] });
  expect(await stageChart(record, "asLeft")).toBeUndefined();
  if (record.phases.asFound) record.phases.asFound.judged = "value";
  expect(await stageChart(record, "asFound")).toBeUndefined();
});
