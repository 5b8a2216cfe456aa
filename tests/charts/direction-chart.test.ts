import { expect, test } from "vitest";
import { directionChart } from "../../src/charts/direction-chart.ts";
import { frozen } from "./frozen.ts";
import { expectGolden } from "./golden.ts";
import { sampleRecord } from "./sample-record.ts";
import { svgTexts } from "./svg-texts.ts";

test.each(["asFound", "asLeft"] as const)(
  "the direction chart %s is the golden, and the same bytes twice",
  async (name) => {
    const record = frozen(sampleRecord());
    const drawing = await directionChart(record, name);
    expect((await directionChart(record, name))?.svg).toBe(drawing?.svg);
    expectGolden(`direction-${name === "asFound" ? "as-found" : "as-left"}`, drawing?.svg ?? "");
  },
);

test("the greatest difference is labelled with its number and its place", async () => {
  const record = sampleRecord();
  const phase = record.phases.asFound;
  if (!phase?.hysteresis) throw new Error("the sample has hysteresis");
  phase.hysteresis = { percentSpan: 0.2251, point: 900, withinOneCycle: null };
  const drawing = await directionChart(record, "asFound");
  expect(svgTexts(drawing?.svg ?? "")).toContain("0.23 % at 900.0 mm");
  expect(drawing?.title).toBe(
    "As found, rising and falling differ by at most 0.23 % of span, at 900.0 mm: 45 % of the tolerance there.",
  );
});

test("a label at the end of the range turns inwards", async () => {
  for (const [point, anchor] of [
    [200, undefined],
    [700, "middle"],
    [1200, "end"],
  ] as const) {
    const record = sampleRecord();
    const phase = record.phases.asFound;
    if (!phase?.hysteresis) throw new Error("the sample has hysteresis");
    phase.hysteresis.point = point;
    const { svg = "" } = (await directionChart(record, "asFound")) ?? {};
    const label = /<text[^>]*>[\d.]+ % at [^<]*<\/text>/u.exec(svg)?.[0] ?? "";
    expect(/text-anchor="(\w+)"/u.exec(label)?.[1] ?? "start").toBe(anchor ?? "start");
  }
});

test("one direction only, or a phase that is not there: no picture", async () => {
  expect(await directionChart(sampleRecord({ directions: ["rising"] }), "asFound")).toBeUndefined();
  expect(await directionChart(sampleRecord({ phases: ["asFound"] }), "asLeft")).toBeUndefined();
});
