import { expect, test } from "vitest";
import { residualChart } from "../../src/charts/residual-chart.ts";
import { frozen } from "./frozen.ts";
import { expectGolden } from "./golden.ts";
import { sampleRecord } from "./sample-record.ts";

test("the residual chart is the golden, and the same bytes twice", async () => {
  const record = frozen(sampleRecord());
  const drawing = await residualChart(record, "asFound");
  expect((await residualChart(record, "asFound"))?.svg).toBe(drawing?.svg);
  expectGolden("residual-as-found", drawing?.svg ?? "");
});

test("the worst residual is the one of the fit of the signal, in percent of span", async () => {
  const record = sampleRecord();
  const phase = record.phases.asFound;
  if (!phase?.fit) throw new Error("the sample has a fit");
  const { slope, intercept } = phase.fit;
  // Another road: signal minus the line of the signal, over the 16 mA of the signal span.
  const residuals = phase.readings.map(
    ({ signal = 0, reference }) => (100 * (signal - slope * reference - intercept)) / 16,
  );
  const worst = Math.max(...residuals.map(Math.abs));
  const title = (await residualChart(record, "asFound"))?.title ?? "";
  // Printed with two decimals: half of the last one.
  expect(Math.abs(Math.abs(Number(/[−+]([\d.]+) %/u.exec(title)?.[1])) - worst)).toBeLessThanOrEqual(0.005);
});

test("errors on a line leave rounding, which is drawn as nothing", async () => {
  const record = sampleRecord({ phases: ["asLeft"] });
  const phase = record.phases.asLeft;
  if (phase === undefined) throw new Error("the sample has a phase as left");
  const none = { standardUncertainty: null, combinedStandardUncertainty: null };
  phase.zeroError = { percentSpan: 0.1, ...none };
  phase.spanError = { percentSpan: 0.3, ...none };
  for (const reading of phase.readings) reading.errorPercentSpan = 0.1 + (0.3 * (reading.reference - 200)) / 1000;
  const points = phase.points.splice(0);
  await expect(residualChart(record, "asLeft")).rejects.toThrow("means");
  phase.points = points.slice(0, 1).map((point) => ({ ...point, reference: 200, up: 0.1, down: 0.1, mean: 0.1 }));
  const drawing = await residualChart(record, "asLeft");
  expect(drawing?.title).toMatch(/reach 0\.00 % of span/u);
  expect(drawing?.svg).toContain(">−0.0010</text>");
});

test("a phase that is not there, or has no line, has no residual chart", async () => {
  const record = sampleRecord({ phases: ["asFound"] });
  expect(await residualChart(record, "asLeft")).toBeUndefined();
  if (record.phases.asFound) record.phases.asFound.zeroError = null;
  expect(await residualChart(record, "asFound")).toBeUndefined();
});
