import { expect, test } from "vitest";
import { textWidth } from "../../src/charts/drawing/text-width.ts";
import { directionLegend, legendRows } from "../../src/charts/legend.ts";

const items = [...directionLegend(["asFound", "asLeft"]), { kind: "area", text: "tolerance" } as const];

test("entries of one row do not touch, and no row is wider than its room", () => {
  for (const width of [150, 258, 740]) {
    const { legendTexts } = legendRows(items, width);
    const heights = new Set(legendTexts.map(({ y }) => y));
    for (const height of heights) {
      const row = legendTexts.filter(({ y }) => y === height);
      const ends = row.map(({ x, text }) => Number(x) + textWidth({ fontSize: 13 }, text));
      expect(Math.max(...ends)).toBeLessThanOrEqual(width);
      row.slice(1).forEach(({ x }, index) => {
        expect(Number(x) - (ends[index] ?? Number.NaN)).toBeGreaterThan(20);
      });
    }
  }
});

test("every row lies above the plot, in the order of the entries", () => {
  const { legendTexts } = legendRows(items, 258);
  expect(legendTexts.map(({ text }) => text)).toEqual(["as found", "as left", "rising", "falling", "tolerance"]);
  const heights = legendTexts.map(({ y }) => Number(y));
  expect(heights).toEqual(heights.toSorted((left, right) => left - right));
  expect(Math.max(...heights)).toBeLessThan(-13);
});

test("a series shows its line and each of its marks, and an area is only there where an entry asks for it", () => {
  const { legendLines, legendMarks, legendAreas } = legendRows(directionLegend(["asLeft"]), 740);
  expect(legendLines).toHaveLength(1);
  expect(legendMarks.map(({ series, shape }) => [series, shape])).toEqual([
    ["asLeft", "rising"],
    ["asLeft", "falling"],
    ["neutral", "rising"],
    ["neutral", "falling"],
  ]);
  expect(legendAreas).toBeUndefined();
  expect(legendRows(items, 740).legendAreas).toHaveLength(1);
});

test("a bar of uncertainty stands upright with two caps, a limit lies, and neither is there unasked", () => {
  const { legendBars = [], legendLimits = [] } = legendRows(
    [
      { kind: "bar", text: "± U" },
      { kind: "limit", text: "acceptance limit" },
    ],
    740,
  );
  const isUpright = legendBars.map(({ x, x2, y, y2 }) => x === x2 && y !== y2);
  expect(isUpright).toEqual([true, false, false]);
  expect(legendLimits).toHaveLength(1);
  expect(Object.keys(legendRows(items, 740))).not.toContain("legendBars");
  expect(Object.keys(legendRows(items, 740))).not.toContain("legendLimits");
});
