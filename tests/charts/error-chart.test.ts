import { expect, test } from "vitest";
import { errorChart } from "../../src/charts/error-chart.ts";
import { frozen } from "./frozen.ts";
import { expectGolden } from "./golden.ts";
import { sampleRecord } from "./sample-record.ts";
import { svgTexts } from "./svg-texts.ts";

test.each(["wide", "narrow"] as const)("the %s error chart is the golden, and the same bytes twice", async (size) => {
  const record = frozen(sampleRecord({ leftOut: 1 }));
  const { svg } = await errorChart(record, size);
  expect((await errorChart(record, size)).svg).toBe(svg);
  expectGolden(`error-${size}`, svg);
});

test("a tolerance that grows with the distance is the golden", async () => {
  const record = frozen(
    sampleRecord({ isPercentOfReading: true, distanceUnit: "m", rangeLower: 0.05, rangeUpper: 0.45 }),
  );
  expectGolden("error-percent-of-reading", (await errorChart(record, "wide")).svg);
});

test("the right axis is the left one in distance", async () => {
  const { svg } = await errorChart(sampleRecord(), "wide");
  const texts = svgTexts(svg);
  expect(texts).toEqual(expect.arrayContaining(["error, % of span", "error, mm", "reference distance, mm"]));
  // Span 1000 mm: 0.2 % of span is 2 mm, and both labels stand at one height.
  const heightOf = (text: string) =>
    new RegExp(`translate\\([^,]*,([\\d.]+)\\)[^>]*>${text.replace("+", "\\+")}</text>`, "u").exec(svg)?.[1];
  expect(heightOf("+0.2")).toBeDefined();
  expect(heightOf("+2")).toBe(heightOf("+0.2"));
});

test.each([
  [{}, "As found, 22 of 66 readings lie outside the tolerance; as left, none does."],
  [{ scale: 60 }, /^As found, all 66 readings lie outside the tolerance; as left, 6\d do\.$/u],
  [{ phases: ["asLeft"] as const }, "As left, none of 66 readings lies outside the tolerance."],
  [{ scale: 0.1, phases: ["asFound"] as const }, "As found, none of 66 readings lies outside the tolerance."],
])("%j: the title counts what the picture shows", async (options, title) => {
  expect((await errorChart(sampleRecord(options), "wide")).title).toMatch(title);
});

test("counts differ: both totals are said", async () => {
  const record = sampleRecord();
  record.phases.asLeft?.readings.splice(0, 6);
  expect((await errorChart(record, "wide")).title).toBe(
    "As found, 22 of 66 readings lie outside the tolerance; as left, none of 60 does.",
  );
});

test("the words say how many readings are not drawn, and name the worst with number and unit", async () => {
  const { caption, description } = await errorChart(sampleRecord({ leftOut: 1 }), "wide");
  expect(caption).toContain("2 readings that are left out of the figures are not drawn");
  expect(description).toMatch(/farthest from zero: \+0\.\d\d % at \d+\.\d mm, (rising|falling)/u);
});

test("a hostile tag is text in the description", async () => {
  const tag = `LT"><script>alert(1)</script>`;
  const { svg } = await errorChart(sampleRecord({ tag }), "wide");
  expect(svg).not.toContain("<script");
  expect(svg).toContain("LT&quot;&gt;&lt;script&gt;");
});

test("a record without a reading to draw has no error chart", async () => {
  const record = sampleRecord({ phases: ["asFound"] });
  for (const reading of record.phases.asFound?.readings ?? []) reading.leftOut = "target moved";
  await expect(errorChart(record, "wide")).rejects.toThrow(RangeError);
});
