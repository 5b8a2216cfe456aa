import type { Config } from "vega-lite";
import { fontFamily, palette } from "../palette.ts";

export const chartTextSize = 13;

/** How every chart looks. Labels are never cut: text that does not fit makes the plot smaller instead. */
const chartConfig: Config = {
  aria: false,
  background: "transparent",
  font: fontFamily,
  view: { stroke: palette.grid },
  axis: {
    domainColor: palette.quiet,
    tickColor: palette.quiet,
    tickSize: 4,
    gridColor: palette.grid,
    labelColor: palette.ink,
    labelFontSize: chartTextSize,
    labelFontWeight: 400,
    labelPadding: 4,
    labelLimit: 0,
    labelOverlap: "greedy",
    labelSeparation: 8,
    labelFlush: false,
    titleColor: palette.ink,
    titleFontSize: chartTextSize,
    titleFontWeight: 400,
    titlePadding: 8,
    titleLimit: 0,
  },
  text: { fontSize: chartTextSize, fontWeight: 400, color: palette.ink, limit: 0 },
};

/** The part that every specification begins with: axes, titles and legend together fill the size that is asked for. */
export const chartFrame = {
  config: chartConfig,
  autosize: { type: "fit", contains: "padding" },
  padding: 3,
} as const;
