import { compiledChart } from "../drawing/compiled-chart.ts";
import { palette } from "../palette.ts";
import { chartFrame } from "./chart-frame.ts";
import type { Layer } from "./plot-layers.ts";

const yearChannel = {
  field: "year",
  type: "ordinal",
  // Room at the right for the words beside the last year.
  scale: { type: "point", padding: 0.8 },
  axis: { title: "year", labelAngle: 0, grid: false, domain: false, ticks: false },
} as const;

const percentChannel = {
  type: "quantitative" as const,
  scale: { domain: [0, 100] },
  axis: { title: "found in tolerance, %", domain: false, grid: true, tickCount: 5 },
};

const data = { name: "rates" };
const barEnd = (field: "low" | "high"): Layer => ({
  data,
  mark: { type: "tick", orient: "horizontal", size: 12, thickness: 1.5, color: palette.quiet },
  encoding: { x: yearChannel, y: { ...percentChannel, field } },
});

/** The rate of each year with its interval, and how many loops it rests on. */
export const rateChartSpec = compiledChart({
  ...chartFrame,
  // Years would otherwise have a step of their own, and the chart no size; each drawing sets its own width.
  width: 400,
  layer: [
    {
      data,
      mark: { type: "rule", strokeWidth: 1.5, color: palette.quiet },
      encoding: { x: yearChannel, y: { ...percentChannel, field: "low" }, y2: { field: "high" } },
    },
    barEnd("low"),
    barEnd("high"),
    {
      data,
      mark: { type: "point", filled: true, size: 90, opacity: 1, color: palette.ink },
      encoding: { x: yearChannel, y: { ...percentChannel, field: "rate" } },
    },
    {
      data,
      mark: { type: "text", align: "left", dx: 9, color: palette.ink },
      encoding: { x: yearChannel, y: { ...percentChannel, field: "rate" }, text: { field: "words" } },
    },
  ],
});
