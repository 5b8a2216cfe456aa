import { expect, test } from "vitest";
import { readPath } from "../../src/charts/drawing/svg-path.ts";
import { errorChart } from "../../src/charts/error-chart.ts";
import { palette } from "../../src/charts/palette.ts";
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

const guarded = {
  decisionRule: "guard band",
  isPercentOfReading: true,
  standardPercent: 0.15,
  points: 6,
} as const;

test("acceptance limits that begin where U leaves room for them are the golden", async () => {
  expectGolden("error-guard-band", (await errorChart(frozen(sampleRecord(guarded)), "wide")).svg);
});

test("the legend and the caption speak of acceptance limits where some are drawn, of ± U always", async () => {
  const plain = await errorChart(sampleRecord(), "narrow");
  expect(svgTexts(plain.svg)).toContain("± U");
  expect(svgTexts(plain.svg)).not.toContain("acceptance limit");
  expect(plain.caption).toContain("as found to the left, as left to the right.");
  expect(plain.caption).not.toContain("acceptance");
  const partly = await errorChart(sampleRecord(guarded), "narrow");
  expect(svgTexts(partly.svg)).toContain("acceptance limit, as found");
  expect(svgTexts(partly.svg)).toContain("acceptance limit, as left");
  expect(partly.caption).toContain("a mean error between them passes. Where none are drawn, U is so large");
  const one = await errorChart(sampleRecord({ ...guarded, phases: ["asLeft"] }), "narrow");
  expect(svgTexts(one.svg)).toContain("acceptance limit");
  expect(one.caption).toContain("Lines without marks, dashed as left, are the acceptance limits");
  expect(partly.caption).toContain("Lines without marks, dotted as found and dashed as left, are");
  const none = await errorChart(sampleRecord({ decisionRule: "guard band", standardPercent: 0.6 }), "narrow");
  expect(svgTexts(none.svg)).not.toContain("acceptance limit");
  expect(none.caption).toMatch(/No acceptance limits are drawn: U is so large that no error could pass\.$/u);
});

test("the acceptance limits of as found are dotted, those of as left are dashes, in the legend too", async () => {
  const { svg } = await errorChart(sampleRecord(guarded), "wide");
  const dashesOf = (colour: string) =>
    new Set(
      [...svg.matchAll(/<(?:path|line)[^>]*stroke-width="1\.75"[^>]*>/gu)]
        .map(([tag]) => tag)
        .filter((tag) => tag.includes(`stroke="${colour}"`))
        .map((tag) => /stroke-dasharray="([^"]*)"/u.exec(tag)?.[1]),
    );
  expect(dashesOf(palette.asFound)).toEqual(new Set(["0,5"]));
  expect(dashesOf(palette.asLeft)).toEqual(new Set(["5,5"]));
});

test("a record of one phase is not told on which side the other would be", async () => {
  expect((await errorChart(sampleRecord({ phases: ["asLeft"] }), "wide")).caption).not.toContain("to the left");
});

test("the description gives the worst mean error with its uncertainty", async () => {
  const record = sampleRecord();
  const { description } = await errorChart(record, "wide");
  const { points = [], worstPoint } = record.phases.asFound ?? {};
  const worst = points[worstPoint?.index ?? -1];
  const [, error, uncertainty] = /U: as found \+([\d.]+) ± ([\d.]+) % of span at/u.exec(description) ?? [];
  // Span 1000 mm; printed with three decimals: half of the last one, and a rounding of the halves.
  expect(Math.abs(Number(error) - (worst?.errorDistance ?? 0) / 10)).toBeLessThan(0.000501);
  expect(Math.abs(Number(uncertainty) - (worst?.expandedUncertainty ?? 0) / 10)).toBeLessThan(0.000501);
});

test("the axis holds every bar: U of 3 % of span is drawn to its ends", async () => {
  const record = sampleRecord({ standardPercent: 3, phases: ["asFound"] });
  const { svg } = await errorChart(record, "wide");
  const height = (text: string) => Number(new RegExp(` y="([\\d.]+)"[^>]*>${text}</text>`, "u").exec(svg)?.[1]);
  // The labels of the axis give its scale, the vertical strokes in the colour of the phase give the bars.
  const perPercent = (height("\\+2") - height("−2")) / 4;
  const bars = /<path stroke="#b34a0c" stroke-width="1.5" opacity="0.75" d="([^"]*)"/u.exec(svg)?.[1] ?? "";
  const strokes = readPath(bars).subpaths.map(({ steps }) => steps.map(({ y }) => y));
  const lengths = strokes.map(([from = 0, to = 0]) => (to - from) / perPercent);
  const expected = (record.phases.asFound?.points ?? []).map(({ expandedUncertainty }) => expandedUncertainty / 5);
  expect(lengths).toHaveLength(11);
  // Pixels are written with two decimals and labels stand within half of one: 2 % of 6 % of span.
  expect(Math.max(...lengths.map((length, index) => Math.abs(length - (expected[index] ?? 0))))).toBeLessThan(0.12);
  expect(Math.min(...strokes.flat())).toBeGreaterThan(0);
});

test("the right axis is the left one in distance", async () => {
  const { svg } = await errorChart(sampleRecord(), "wide");
  const texts = svgTexts(svg);
  expect(texts).toEqual(expect.arrayContaining(["error, % of span", "error, mm", "reference distance, mm"]));
  // Span 1000 mm: 0.2 % of span is 2 mm, and both labels stand at one height.
  const heightOf = (text: string) =>
    new RegExp(` y="([\\d.]+)"[^>]*>${text.replace("+", "\\+")}</text>`, "u").exec(svg)?.[1];
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
