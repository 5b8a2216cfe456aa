import { greatestOf, leastOf } from "../numeric/least-and-greatest.ts";
import { type PhaseName, phaseWords } from "../record/phase-name.ts";
import { spanOf } from "../record/range.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import { axisDomain } from "./axis-domain.ts";
import { distanceText, leftOutText, percentText, sentenceCase, toleranceShareText } from "./chart-words.ts";
import { distanceAxis } from "./distance-axis.ts";
import { createDrawing, type Drawing, type Row } from "./drawing/draw.ts";
import { directionLegend, legendRows } from "./legend.ts";
import { drawnReadings, meanRows, readingRows } from "./phase-rows.ts";
import { smallChart, smallLegendWidth } from "./small-chart.ts";
import { residualChartSpec } from "./specs/residual-chart-spec.ts";

/** Residuals below this are the rounding of the computer; percent of span. */
const shortestAxis = 0.002;
const draw = createDrawing(residualChartSpec);

/** The residuals of one phase from its fitted line; none where the phase has no line. */
export async function residualChart(record: CalibrationRecord, name: PhaseName): Promise<Drawing | undefined> {
  const phase = record.phases[name];
  const line = phase === undefined ? undefined : errorLine(record, phase);
  if (phase === undefined || line === undefined) return undefined;
  const fromLine = (row: Row): Row => ({ ...row, y: Number(row.y) - line(Number(row.x)) });
  const readings = readingRows(name, drawnReadings(phase)).map(fromLine);
  const words = wordsOf(record, name, phase, readings);
  const svg = await draw({
    ...smallChart("residual", name, words),
    signals: {
      ...distanceAxis(record),
      yDomain: axisDomain([0, ...readings.map(({ y }) => Number(y))], { below: 0.08, above: 0.08 }, shortestAxis),
      yTitle: "residual, % of span",
    },
    data: {
      readings,
      means: meanRows(name, phase.points).map(fromLine),
      ...legendRows(directionLegend([name]), smallLegendWidth),
    },
  });
  return { svg, ...words };
}

/** The least-squares line of error on reference; the residuals from it are those of the signal, in percent of span. */
function errorLine(record: CalibrationRecord, { zeroError, spanError }: PhaseRecord) {
  if (zeroError === null || spanError === null) return undefined;
  return (reference: number) =>
    zeroError.percentSpan +
    (spanError.percentSpan * (reference - record.instrument.rangeLower)) / spanOf(record.instrument);
}

function wordsOf(
  record: CalibrationRecord,
  name: PhaseName,
  phase: PhaseRecord,
  rows: readonly Row[],
): Omit<Drawing, "svg"> {
  const worst = rows.reduce((left, right) => (Math.abs(Number(right.y)) > Math.abs(Number(left.y)) ? right : left));
  const residuals = rows.map(({ y }) => Number(y));
  const words = sentenceCase(phaseWords[name]);
  const reach = `${percentText(record, Number(worst.y))} of span at ${distanceText(record, Number(worst.x))}, ${worst.shape}`;
  const share = toleranceShareText(record, phase, Number(worst.y), Number(worst.x));
  return {
    title: `${words}, the residuals from the fitted line reach ${reach}${share}.`,
    caption:
      "What is left of each error when the least-squares line of the errors is taken off. The lines join the means of " +
      "each direction. Scatter around zero is what a straight sensor leaves; a bow or a wave is curvature that no new " +
      `zero and span can cure.${leftOutText([phase], rows.length)}`,
    description:
      `Residuals of ${record.instrument.tag} from its fitted line, ${phaseWords[name]}, ${rows.length} readings, ` +
      `from ${percentText(record, leastOf(residuals))} to ${percentText(record, greatestOf(residuals))} of span; ` +
      `farthest from zero: ${reach}${share}.`,
  };
}
