import { type PhaseName, phaseWords } from "../record/phase-name.ts";
import type { Row } from "./drawing/draw.ts";
import { textWidth } from "./drawing/text-width.ts";
import type { Series, Shape } from "./series-scales.ts";
import { chartTextSize } from "./specs/chart-frame.ts";
import { barWidth } from "./specs/plot-layers.ts";

/** One entry: a series with its line and marks, the meaning of one mark, an area, a bar of uncertainty, a limit. */
export type LegendItem =
  | { kind: "series"; text: string; series: Series; shapes: readonly Shape[] }
  | { kind: "shape"; text: string; shape: Shape; series?: Series }
  | { kind: "limit"; text: string; series?: Series }
  | { kind: "area" | "bar"; text: string };

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

type AlwaysDrawn = Record<"legendLines" | "legendMarks" | "legendTexts", Row[]>;
type SometimesDrawn = Record<"legendAreas" | "legendBars" | "legendLimits", Row[]>;

const sampleWidth = { series: 44, shape: 10, area: 24, bar: barWidth, limit: 24 } as const;
const barHeight = 14;
const textGap = 6;
const itemGap = 20;
const rowHeight = 21;
const aboveThePlot = 6;

/** Lays entries out in rows above the plot, from left to right, as many to a row as `width` pixels hold. */
export function legendRows(
  items: readonly LegendItem[],
  width: number,
  left = 0,
): AlwaysDrawn & Partial<SometimesDrawn> {
  const rows = brokenIntoRows(items, width);
  const drawn: AlwaysDrawn = { legendLines: [], legendMarks: [], legendTexts: [] };
  const others: SometimesDrawn = { legendAreas: [], legendBars: [], legendLimits: [] };
  rows.forEach((row, index) => {
    const y = -aboveThePlot - rowHeight * (rows.length - index - 0.5);
    let x = left;
    for (const item of row) {
      addSample({ ...drawn, ...others }, item, x, y);
      drawn.legendTexts.push({ x: x + sampleWidth[item.kind] + textGap, y, text: item.text });
      x += itemWidth(item) + itemGap;
    }
  });
  return { ...drawn, ...Object.fromEntries(Object.entries(others).filter(([, found]) => found.length > 0)) };
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

function addSample(drawn: AlwaysDrawn & SometimesDrawn, item: LegendItem, x: number, y: number): void {
  const width = sampleWidth[item.kind];
  switch (item.kind) {
    case "series":
      drawn.legendLines.push({ x, x2: x + width, y, series: item.series });
      item.shapes.forEach((shape, index) => {
        drawn.legendMarks.push({ x: x + (width * (index + 0.5)) / item.shapes.length, y, series: item.series, shape });
      });
      break;
    case "shape":
      drawn.legendMarks.push({ x: x + width / 2, y, series: item.series ?? "neutral", shape: item.shape });
      break;
    case "area":
      drawn.legendAreas.push({ x, x2: x + width, y: y - 6, y2: y + 6 });
      break;
    case "bar":
      drawn.legendBars.push(...barStrokes(x, y));
      break;
    case "limit":
      drawn.legendLimits.push({ x, x2: x + width, y, series: item.series ?? "neutral" });
  }
}

function barStrokes(x: number, y: number): Row[] {
  const [middle, right] = [x + barWidth / 2, x + barWidth];
  const [top, bottom] = [y - barHeight / 2, y + barHeight / 2];
  return [
    { x: middle, x2: middle, y: top, y2: bottom },
    { x, x2: right, y: top, y2: top },
    { x, x2: right, y: bottom, y2: bottom },
  ];
}

function itemWidth(item: LegendItem): number {
  return sampleWidth[item.kind] + textGap + textWidth({ fontSize: chartTextSize }, item.text);
}
