import { chartTextSize } from "./chart-frame.ts";
import type { Row } from "./draw.ts";
import { type PhaseName, phaseWords } from "./phase-rows.ts";
import type { Series, Shape } from "./series-scales.ts";
import { textWidth } from "./text-width.ts";

/** One entry: a series with its line and marks, the meaning of one mark, or an area. */
export type LegendItem =
  | { kind: "series"; text: string; series: Series; shapes: readonly Shape[] }
  | { kind: "shape"; text: string; shape: Shape }
  | { kind: "area"; text: string };

/** Phases, and what their two marks mean. */
export function directionLegend(series: readonly PhaseName[]): readonly LegendItem[] {
  return [
    ...series.map(
      (name): LegendItem => ({ kind: "series", text: phaseWords[name], series: name, shapes: ["rising", "falling"] }),
    ),
    { kind: "shape", text: "rising", shape: "rising" },
    { kind: "shape", text: "falling", shape: "falling" },
  ];
}

type LegendRows = { legendLines: Row[]; legendMarks: Row[]; legendTexts: Row[]; legendAreas: Row[] };
type DrawnLegend = Omit<LegendRows, "legendAreas"> & { legendAreas?: Row[] };

const sampleWidth = { series: 44, shape: 10, area: 24 } as const;
const textGap = 6;
const itemGap = 20;
const rowHeight = 21;
const aboveThePlot = 6;

/** Lays entries out in rows above the plot, from left to right, as many to a row as `width` pixels hold. */
export function legendRows(items: readonly LegendItem[], width: number, left = 0): DrawnLegend {
  const rows = brokenIntoRows(items, width);
  const drawn: LegendRows = { legendLines: [], legendMarks: [], legendTexts: [], legendAreas: [] };
  rows.forEach((row, index) => {
    const y = -aboveThePlot - rowHeight * (rows.length - index - 0.5);
    let x = left;
    for (const item of row) {
      addSample(drawn, item, x, y);
      drawn.legendTexts.push({ x: x + sampleWidth[item.kind] + textGap, y, text: item.text });
      x += itemWidth(item) + itemGap;
    }
  });
  const { legendAreas, ...others } = drawn;
  return legendAreas.length === 0 ? others : drawn;
}

function brokenIntoRows(items: readonly LegendItem[], width: number): LegendItem[][] {
  const rows: LegendItem[][] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const item of items) {
    if (used + itemWidth(item) > width) {
      rows.push([]);
      used = 0;
    }
    rows.at(-1)?.push(item);
    used += itemWidth(item) + itemGap;
  }
  return rows;
}

function addSample(drawn: LegendRows, item: LegendItem, x: number, y: number): void {
  const width = sampleWidth[item.kind];
  switch (item.kind) {
    case "series":
      drawn.legendLines.push({ x, x2: x + width, y, series: item.series });
      item.shapes.forEach((shape, index) => {
        drawn.legendMarks.push({ x: x + (width * (index + 0.5)) / item.shapes.length, y, series: item.series, shape });
      });
      break;
    case "shape":
      drawn.legendMarks.push({ x: x + width / 2, y, series: "neutral", shape: item.shape });
      break;
    case "area":
      drawn.legendAreas.push({ x, x2: x + width, y: y - 6, y2: y + 6 });
  }
}

function itemWidth(item: LegendItem): number {
  return sampleWidth[item.kind] + textGap + textWidth({ fontSize: chartTextSize }, item.text);
}
