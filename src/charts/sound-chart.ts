import { phaseWords } from "../record/phase-name.ts";
import { spanOf } from "../record/range.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import { writeSigned } from "../units/write-number.ts";
import { percentText, sentenceCase, toleranceText } from "./chart-words.ts";
import { comparedChart, seriesAfter } from "./compared-chart.ts";
import type { Drawing } from "./drawing/draw.ts";
import { drawnReadings } from "./phase-rows.ts";
import type { DrawnSeries } from "./series-means.ts";

/** The errors of the first phase that the air explains, with and without what it makes; none where it explains none. */
export async function soundChart(record: CalibrationRecord): Promise<Drawing | undefined> {
  const { explained = [], air, taught } = record.sound ?? {};
  const [found] = explained;
  const phase = found && record.phases[found.phase];
  if (found === undefined || phase === undefined || drawnReadings(phase).length === 0 || !air || !taught)
    return undefined;
  const percentPerDistance = 100 / spanOf(record.instrument);
  const part = taught.speed / air.speed - 1;
  const rows = (series: DrawnSeries["series"], share: number) =>
    drawnReadings(phase).map(({ point, reference, direction, errorDistance }) => ({
      point,
      x: reference,
      y: (errorDistance - share * reference) * percentPerDistance,
      series,
      shape: direction,
    }));
  const percent = (distance: number) => percentText(record, distance * percentPerDistance);
  const words = phaseWords[found.phase];
  const change = `${percent(found.worstNow)} of span; without what the air makes, ${percent(found.worstLeft)}`;
  return comparedChart(
    record,
    {
      kind: "sound",
      name: found.phase,
      before: { rows: rows(found.phase, 0), text: words },
      after: { rows: rows(seriesAfter[found.phase], part), text: "without the error of the air" },
    },
    {
      title: `${sentenceCase(words)}, the worst error is ${change}.`,
      caption:
        "Each mark is one reading; the lines join the means of each direction. Taken off each is the error that the day's " +
        `air makes in a sensor taught in other air: ${writeSigned(100 * part, 2)} % of the distance from its face. The ` +
        "shaded band is the tolerance.",
      description: `Errors of ${record.instrument.tag}, ${words}, with and without the error that the air makes. Worst: ${change}. ${toleranceText(record)}`,
    },
  );
}
