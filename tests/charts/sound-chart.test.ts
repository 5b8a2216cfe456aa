import { expect, test } from "vitest";
import { soundChart } from "../../src/charts/sound-chart.ts";
import { demoRecord } from "../report/demo-records.ts";
import { frozen } from "./frozen.ts";
import { expectGolden } from "./golden.ts";

test("the sound chart is the golden, and the same bytes twice", async () => {
  const record = frozen(demoRecord("LT-318"));
  const drawing = await soundChart(record);
  expect((await soundChart(record))?.svg).toBe(drawing?.svg);
  expectGolden("sound", drawing?.svg ?? "");
});

test("the title says what is left without the air", async () => {
  expect((await soundChart(demoRecord("LT-318")))?.title).toBe(
    "As found, the worst error is +3.12 % of span; without what the air makes, +0.20 %.",
  );
});

test("a sensor that corrects itself, or no ultrasonic one, has no picture", async () => {
  expect(await soundChart(demoRecord("LT-310"))).toBeUndefined();
  expect(await soundChart(demoRecord("ZT-201"))).toBeUndefined();
});
