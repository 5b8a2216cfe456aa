import type { PhaseName } from "../record/phase-name.ts";
import { palette } from "./palette.ts";

/** What a series may be; "neutral" explains a shape in the legend. */
export type Series = PhaseName | "sensor" | "controller" | "neutral";
export type Shape = "rising" | "falling" | "sensor" | "controller" | "approach" | "recede";

const series: readonly Series[] = ["asFound", "asLeft", "sensor", "controller", "neutral"];
const dashed = [5, 3];
const solid = [1, 0];

const scaleOf = (range: readonly (string | readonly number[])[]) => ({
  domain: [...series],
  range: [...range] as never[],
});

/** Open marks and dashes: as found, controller. Filled marks and solid lines: as left, sensor. */
export const colorChannel = {
  field: "series",
  type: "nominal",
  legend: null,
  scale: scaleOf([palette.asFound, palette.asLeft, palette.sensor, palette.controller, palette.quiet]),
} as const;

/** A filled mark has a pale edge, so that marks that lie on each other can be counted. */
export const strokeChannel = {
  field: "series",
  type: "nominal",
  legend: null,
  scale: scaleOf([palette.asFound, palette.paper, palette.paper, palette.controller, palette.paper]),
} as const;

/** An open mark is half transparent, so that what it lies on can be seen. */
const open = "rgba(255,255,255,0.6)";

export const fillChannel = {
  field: "series",
  type: "nominal",
  legend: null,
  scale: scaleOf([open, palette.asLeft, palette.sensor, open, palette.quiet]),
} as const;

/** Area in square pixels: a filled mark loses its edge to the paper, so it is drawn larger. */
export const sizeChannel = {
  condition: [
    { test: "datum.series === 'asFound'", value: 38 },
    { test: "datum.series === 'controller'", value: 26 },
    { test: "datum.series === 'sensor'", value: 42 },
  ],
  value: 66,
};

export const dashChannel = {
  field: "series",
  type: "nominal",
  legend: null,
  scale: scaleOf([dashed, solid, solid, dashed, solid]),
} as const;

export const shapeChannel = {
  field: "shape",
  type: "nominal",
  legend: null,
  scale: {
    domain: ["rising", "falling", "sensor", "controller", "approach", "recede"] satisfies Shape[],
    range: ["triangle-up", "triangle-down", "circle", "diamond", "triangle-left", "triangle-right"],
  },
} as const;
