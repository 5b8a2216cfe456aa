import { type PhaseName, phaseWords } from "../record/phase-name.ts";
import { lastPhaseOf } from "../record/phases-of.ts";
import { spanOf } from "../record/range.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import { distanceText, percentText, sentenceCase, toleranceText } from "./chart-words.ts";
import { comparedChart, seriesAfter } from "./compared-chart.ts";
import type { Drawing } from "./drawing/draw.ts";
import { drawnReadings } from "./phase-rows.ts";
import type { DrawnSeries } from "./series-means.ts";

type Curve = NonNullable<NonNullable<NonNullable<CalibrationRecord["reteach"]>[PhaseName]>["sensor"]>;
type Shown = { name: PhaseName; phase: PhaseRecord; part: "sensor" | "controller"; curve: Curve };

/** The errors of the last phase as they are and after the best two constants; none where there is no such correction. */
export async function reteachChart(record: CalibrationRecord): Promise<Drawing | undefined> {
  const shown = shownOf(record);
  const best = shown?.curve.best;
  if (shown === undefined || best === null || best === undefined) return undefined;
  const { name } = shown;
  const { rangeLower } = record.instrument;
  const errors = errorRows(shown);
  if (errors.length === 0) return undefined;
  const percentPerDistance = 100 / spanOf(record.instrument);
  const corrected = ({ x, error }: { x: number; error: number }) =>
    best.lower + ((x + error - rangeLower) / spanOf(record.instrument)) * (best.upper - best.lower) - x;
  const rows = (series: DrawnSeries["series"], errorOf: (row: (typeof errors)[number]) => number) =>
    errors.map((row) => ({ ...row, y: errorOf(row) * percentPerDistance, series }));
  return comparedChart(
    record,
    {
      kind: "reteach",
      name,
      before: { rows: rows(name, ({ error }) => error).map(withoutError), text: phaseWords[name] },
      after: { rows: rows(seriesAfter[name], corrected).map(withoutError), text: "after the best two constants" },
    },
    wordsOf(record, shown, best),
  );
}

/** The part of the loop whose test point is the worst of the last measured phase. */
function shownOf(record: CalibrationRecord): Shown | undefined {
  const last = lastPhaseOf(record);
  const reteach = last && record.reteach?.[last.name];
  if (last === undefined || reteach === undefined) return undefined;
  const { name, phase } = last;
  if (phase.worstPoint?.of === "controller" && reteach.controller !== undefined) {
    return { name, phase, part: "controller", curve: reteach.controller };
  }
  return reteach.sensor === null ? undefined : { name, phase, part: "sensor", curve: reteach.sensor };
}

type ErrorRow = Omit<DrawnSeries, "y" | "series"> & { error: number };

function errorRows({ phase, part }: Shown): readonly ErrorRow[] {
  return drawnReadings(phase).flatMap(({ point, reference, direction, errorDistance, loopErrorDistance }) => {
    const error = part === "sensor" ? errorDistance : loopErrorDistance;
    return error === undefined ? [] : [{ point, x: reference, shape: direction, error }];
  });
}

function withoutError({ point, x, y, series, shape }: DrawnSeries): DrawnSeries {
  return { point, x, y, series, shape };
}

function wordsOf(record: CalibrationRecord, { name, part, curve }: Shown, best: NonNullable<Curve["best"]>) {
  const { now, isCurable } = curve;
  const judged = record.decisionRule.name === "simple acceptance" ? "reading" : "mean error";
  const subject = part === "controller" ? "of the controller " : "";
  const change = `from ${percentText(record, now.errorPercentSpan)} to ${percentText(record, best.worst.errorPercentSpan)}`;
  const ending = isCurable === false ? ", which is not enough" : "";
  return {
    title: `${sentenceCase(phaseWords[name])}, the best two constants would bring the worst ${judged} ${subject}${change} of span${ending}.`,
    caption:
      "Each mark is one reading; the lines join the means of each direction. The best two constants are the new zero and " +
      "span that bring every error farthest inside its limits; no others do better. What they leave is curvature, " +
      "hysteresis and scatter. The shaded band is the tolerance.",
    description:
      `Errors of ${record.instrument.tag}, ${phaseWords[name]}, as they are and after the best two constants. Worst: ` +
      `${percentText(record, now.errorPercentSpan)} of span at ${distanceText(record, now.point)}; afterwards ` +
      `${percentText(record, best.worst.errorPercentSpan)} at ${distanceText(record, best.worst.point)}. ${toleranceText(record)}`,
  };
}
