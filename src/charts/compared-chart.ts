import type { PhaseName } from "../record/phase-name.ts";
import { spanOf } from "../record/range.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import { axisDomain } from "./axis-domain.ts";
import { distanceAxis } from "./distance-axis.ts";
import { createDrawing, type Drawing, type Row } from "./drawing/draw.ts";
import { type LegendItem, legendRows } from "./legend.ts";
import { toleranceRows } from "./phase-rows.ts";
import { type DrawnSeries, meansOf } from "./series-means.ts";
import type { Series } from "./series-scales.ts";
import { smallChart, smallLegendWidth } from "./small-chart.ts";
import { stageChartSpec } from "./specs/stage-chart-spec.ts";

const draw = createDrawing(stageChartSpec);
/** A shorter axis would show the rounding of the computer; percent of span. */
const shortestAxis = 0.002;

/** The errors of one phase before and after something is taken off them, and what the two are called. */
export type Compared = {
  kind: string;
  name: PhaseName;
  before: { rows: readonly DrawnSeries[]; text: string };
  after: { rows: readonly DrawnSeries[]; text: string };
};

/** What is drawn beside a phase: open marks and dashes beside filled ones, and the other way round. */
export const seriesAfter: Readonly<Record<PhaseName, Series>> = { asFound: "sensor", asLeft: "controller" };

/** Two sets of errors of one phase against each other, with the tolerance. */
export async function comparedChart(
  record: CalibrationRecord,
  { kind, name, before, after }: Compared,
  words: Omit<Drawing, "svg">,
): Promise<Drawing> {
  const phase = record.phases[name];
  const tolerance = toleranceRows(phase === undefined ? [] : [phase], 100 / spanOf(record.instrument));
  const limits = tolerance.flatMap(({ low, high }) => [Number(low), Number(high)]);
  const readings: readonly Row[] = [...after.rows, ...before.rows];
  const heights = readings.map(({ y }) => Number(y));
  const svg = await draw({
    ...smallChart(kind, name, words),
    signals: {
      ...distanceAxis(record),
      yDomain: axisDomain([0, ...heights, ...limits], { below: 0.08, above: 0.08 }, shortestAxis),
      yTitle: "error, % of span",
    },
    data: {
      readings,
      means: [...meansOf(before.rows), ...meansOf(after.rows)],
      tolerance,
      ...legendRows(legendOf(name, before.text, after.text), smallLegendWidth),
    },
  });
  return { svg, ...words };
}

function legendOf(name: PhaseName, before: string, after: string): readonly LegendItem[] {
  return [
    { kind: "series", text: before, series: name, shapes: ["rising", "falling"] },
    { kind: "series", text: after, series: seriesAfter[name], shapes: ["rising", "falling"] },
    { kind: "area", text: "tolerance" },
  ];
}
