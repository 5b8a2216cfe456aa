import type { TopLevelSpec } from "vega-lite";
import { expect, test } from "vitest";
import { compiledChart } from "../../../src/charts/drawing/compiled-chart.ts";
import { createDrawing, type DrawingData } from "../../../src/charts/drawing/draw.ts";
import { chartFrame } from "../../../src/charts/specs/chart-frame.ts";
import { svgByVega } from "../oracle/svg-by-vega.ts";

const rows = Array.from({ length: 23 }, (_, index) => ({
  x: 3 + ((index * 7) % 23),
  y: ((index * 5) % 11) - 4,
  name: `row ${"abcdefg"[index % 7]}`,
  day: `202${index % 5}-0${1 + (index % 9)}-11`,
  kind: index % 3 === 0 ? "one" : "other",
}));

const x = { field: "x", type: "quantitative" } as const;
const y = { field: "y", type: "quantitative" } as const;
const name = { field: "name", type: "nominal" } as const;

/** What our charts do not have now, and may have tomorrow; `isWalked` where the walker knows it. */
const specifications: Readonly<Record<string, { isWalked: boolean; rest: object }>> = {
  "nice domains": {
    isWalked: true,
    rest: { mark: "point", encoding: { x: scaled(x, [0.3, 27.4]), y: scaled(y, [-9, 9.2]) } },
  },
  "a signal's domain with zero": {
    isWalked: true,
    rest: { mark: "line", encoding: { x: scaled(x, [4, 30], { zero: true, nice: false }), y: scaled(y, [-5, 9]) } },
  },
  "bars over bands": {
    isWalked: false,
    rest: {
      mark: "bar",
      encoding: { x: { ...name, scale: { domain: [..."abcdefg"].map((one) => `row ${one}`) } }, y: scaled(y, [-5, 9]) },
    },
  },
  "axes on the other sides": {
    isWalked: true,
    rest: {
      mark: { type: "tick", thickness: 2 },
      encoding: {
        x: { ...scaled(x, [0, 30]), axis: { orient: "top" } },
        y: { ...scaled(y, [-5, 9]), axis: { orient: "right" } },
      },
    },
  },
  "labels turned and hidden in halves": {
    isWalked: true,
    rest: {
      mark: "line",
      encoding: {
        x: { ...scaled(x, [0, 30]), axis: { labelAngle: -35, labelOverlap: "parity", tickCount: 60 } },
        y: { ...scaled(y, [-5, 9]), axis: { tickCount: 90, format: ".3f" } },
      },
    },
  },
  "lines in steps, rounded bars": {
    isWalked: true,
    rest: {
      layer: [
        {
          mark: { type: "line", interpolate: "step", clip: true },
          encoding: { x: scaled(x, [0, 20]), y: scaled(y, [-5, 9]) },
        },
        {
          mark: { type: "line", interpolate: "monotone", clip: true },
          encoding: { x: scaled(x, [0, 20]), y: scaled(y, [-5, 9]) },
        },
        {
          mark: { type: "rect", cornerRadius: 3 },
          encoding: { x: scaled(x, [0, 20]), x2: { value: 8 }, y: scaled(y, [-5, 9]), y2: { value: 20 } },
        },
      ],
    },
  },
  "lines by group": {
    isWalked: true,
    rest: {
      mark: "line",
      encoding: { x: scaled(x, [0, 30]), y: scaled(y, [-5, 9]), detail: { field: "kind", type: "nominal" } },
    },
  },
  "a domain of the data": { isWalked: false, rest: { mark: "point", encoding: { x, y } } },
  "a legend of vega's": {
    isWalked: false,
    rest: {
      mark: "point",
      encoding: { x: scaled(x, [0, 30]), y: scaled(y, [-5, 9]), color: { field: "kind", type: "nominal" } },
    },
  },
  "means of groups": {
    isWalked: false,
    rest: { mark: "bar", encoding: { x: name, y: { aggregate: "mean", field: "y" } } },
  },
};

function scaled(channel: typeof x | typeof y, domain: readonly number[], more: object = { nice: true, zero: false }) {
  return { ...channel, scale: { domain, ...more } };
}

test.each(Object.entries(specifications))("%s: drawn as vega writes it", async (_, { isWalked, rest }) => {
  const specification = { ...chartFrame, width: 300, height: 200, data: { name: "rows" }, ...rest } as TopLevelSpec;
  const chart = compiledChart(specification);
  expect(chart.source !== undefined).toBe(isWalked);
  for (const width of [200, 431, 900]) {
    const drawing: DrawingData = {
      ...{ idPrefix: "a", className: "chart", title: "A", description: "B" },
      ...{ size: { width, height: 240 }, signals: {}, data: { rows } },
    };
    if (chart.runtime === undefined) throw new Error("a chart from source has vega's dataflow");
    expect(await createDrawing(chart)(drawing)).toBe(await svgByVega(chart.runtime, drawing));
  }
});
