import { type PhaseName, phaseWords } from "../record/phase-name.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import { axisDomain } from "./axis-domain.ts";
import { distanceText, percentText, sentenceCase, toleranceShareText, unsignedPercentText } from "./chart-words.ts";
import { distanceAxis } from "./distance-axis.ts";
import { createDrawing, type Drawing } from "./drawing/draw.ts";
import { directionLegend, legendRows } from "./legend.ts";
import { meanRows } from "./phase-rows.ts";
import { smallChart, smallLegendWidth } from "./small-chart.ts";
import { directionChartSpec } from "./specs/direction-chart-spec.ts";

/** A shorter axis would show the rounding of the computer; percent of span. */
const shortestAxis = 0.002;
const draw = createDrawing(directionChartSpec);

/** A test point that was read in both directions, and the greatest of them. */
type Pair = { point: number; x: number; up: number; down: number };
type Hysteresis = { pairs: readonly Pair[]; worst: Pair; percentSpan: number };

/** Rising against falling means of one phase; none where no test point was read in both directions. */
export async function directionChart(record: CalibrationRecord, name: PhaseName): Promise<Drawing | undefined> {
  const phase = record.phases[name];
  const found = phase === undefined ? undefined : hysteresisOf(phase);
  if (phase === undefined || found === undefined) return undefined;
  const { pairs, worst } = found;
  const words = wordsOf(record, name, phase, found);
  const axis = distanceAxis(record);
  const means = meanRows(name, phase.points);
  const [upper, lower] = [Math.max(worst.up, worst.down), Math.min(worst.up, worst.down)];
  const text = `${unsignedPercentText(record, found.percentSpan)} at ${distanceText(record, worst.point)}`;
  const svg = await draw({
    ...smallChart("direction", name, words),
    signals: {
      ...axis,
      yDomain: axisDomain(
        means.map(({ y }) => Number(y)),
        { below: 0.1, above: 0.3 },
        shortestAxis,
      ),
      yTitle: "mean error, % of span",
      labelAlign: labelAlign(worst.x, axis.xDomain),
    },
    data: {
      pairs,
      means,
      worst: [{ x: worst.x, upper, lower, text }],
      ...legendRows(directionLegend([name]), smallLegendWidth),
    },
  });
  return { svg, ...words };
}

function hysteresisOf({ points, hysteresis }: PhaseRecord): Hysteresis | undefined {
  const pairs = points.flatMap(({ point, reference, up, down }) =>
    up === null || down === null ? [] : [{ point, x: reference, up, down }],
  );
  const worst = pairs.find(({ point }) => point === hysteresis?.point);
  return hysteresis === null || worst === undefined ? undefined : { pairs, worst, percentSpan: hysteresis.percentSpan };
}

/** The label stays inside the plot wherever its point lies. */
function labelAlign(x: number, [low, high]: readonly [number, number]): "left" | "center" | "right" {
  const part = (x - low) / (high - low);
  if (part < 0.25) return "left";
  return part > 0.75 ? "right" : "center";
}

function wordsOf(
  record: CalibrationRecord,
  name: PhaseName,
  phase: PhaseRecord,
  { pairs, worst, percentSpan }: Hysteresis,
) {
  const share = toleranceShareText(record, phase, percentSpan, worst.x);
  const words = phaseWords[name];
  const most = `${unsignedPercentText(record, percentSpan)} of span, at ${distanceText(record, worst.point)}`;
  return {
    title: `${sentenceCase(words)}, rising and falling differ by at most ${most}${share}.`,
    caption:
      "Each mark is the mean error of one direction at one test point; triangles that point up: rising, down: falling. " +
      "The shaded area between the lines is the hysteresis; the bar marks where it is greatest.",
    description:
      `Mean errors of ${record.instrument.tag} at ${pairs.length} test points that were read in both directions, ` +
      `${words}. Greatest difference: ${most}, where the mean error is ${percentText(record, worst.up)} rising ` +
      `and ${percentText(record, worst.down)} falling.`,
  };
}
