import { expect, test } from "vitest";
import { reteachChart } from "../../src/charts/reteach-chart.ts";
import { demoRecord } from "../report/demo-records.ts";
import { frozen } from "./frozen.ts";
import { expectGolden } from "./golden.ts";
import { sampleRecord } from "./sample-record.ts";

test("the re-teach chart is the golden, and the same bytes twice", async () => {
  const record = frozen(sampleRecord({ phases: ["asFound"] }));
  const drawing = await reteachChart(record);
  expect((await reteachChart(record))?.svg).toBe(drawing?.svg);
  expectGolden("reteach", drawing?.svg ?? "");
});

test("the title says the result: from what to what, and where it is not enough", async () => {
  const record = demoRecord("ZT-407");
  const { now, best } = record.reteach?.asLeft?.sensor ?? {};
  const percent = (value = Number.NaN) => `${value > 0 ? "+" : ""}${value.toFixed(2)} %`;
  expect((await reteachChart(record))?.title).toBe(
    `As left, the best two constants would bring the worst reading from ${percent(now?.errorPercentSpan)} to ` +
      `${percent(best?.worst.errorPercentSpan)} of span, which is not enough.`,
  );
});

test("where the controller is the worst part, its errors are drawn", async () => {
  const record = structuredClone(demoRecord("LT-702"));
  record.phases = { asFound: record.phases.asFound };
  expect((await reteachChart(record))?.title).toMatch(
    /^As found, the best two constants would bring the worst mean error of the controller from −2\.01 % to −0\.02 %/u,
  );
});

test("no correction, no picture", async () => {
  const record = structuredClone(sampleRecord({ phases: ["asFound"] }));
  expect(await reteachChart({ ...record, reteach: undefined })).toBeUndefined();
  if (record.reteach?.asFound?.sensor) record.reteach.asFound.sensor.best = null;
  expect(await reteachChart(record)).toBeUndefined();
});
