import { type Figure, isDetermined, notDetermined } from "../../analysis/figures/figure.ts";
import type { DatedRecord } from "../../analysis/years/dated-states.ts";
import { dayNumber, daysPerMonth } from "../../analysis/years/day-number.ts";
import { predictedError } from "../../analysis/years/drift-line.ts";
import { monthsLater } from "../../analysis/years/next-due.ts";
import { type ObservedRate, observedRate } from "../../analysis/years/observed-rate.ts";
import type { PlaceDrift } from "../../analysis/years/place-drift.ts";
import { isInTolerance, type Statement } from "../../model/statement.ts";
import type { ValueInterval } from "../../numeric/prediction-interval.ts";
import { type ControlChartInterval, controlChartInterval } from "./control-chart-interval.ts";
import { endedIntervals, isLeftInTolerance, type StatedPhase } from "./ended-intervals.ts";
import type { IntervalSettings } from "./interval-settings.ts";
import { type StaircaseStep, staircaseInterval } from "./staircase-interval.ts";

/** A record of a loop as the proposals need it. */
export type JudgedRecord = DatedRecord<StatedPhase> & { performedOn: string };

/** What the records say of the interval: two proposals, and how often the loop was found in tolerance at its end. */
export type ProposedIntervals = {
  reliability: Figure<ObservedRate>;
  staircase: Figure<
    StaircaseStep & {
      on: string;
      isStated: boolean;
      days: number;
      asFound: Statement;
      partOfTolerance: number | null;
    }
  >;
  controlChart: Figure<ControlChartInterval & { on: string | null; predicted: ValueInterval | null }>;
};

type Basis = { intervalMonths: number | undefined; settings: IntervalSettings };

/**
 * What the records say of the interval: two proposals, and how often the loop was found in tolerance at its end.
 *
 * An interval that ended is one whose beginning left the loop in tolerance and whose end says how it was found. The
 * reliability is that of the sensor in place: intervals that began before a replacement do not count.
 *
 * @param records of one loop, at least one, oldest first
 * @param place that speaks for the loop
 * @param basis interval as stated, settings
 * @returns proposals, or why there is none; nothing is applied
 * Source: ILAC-G24:2022 / OIML D 10, 6.2, 6.3 and 6.6.
 * @example proposedIntervals([{ ...recordSummary(sealed), day: 20000 }], undefined, { intervalMonths: 12, settings:
 *   usualIntervalSettings }).staircase.notDetermined // "not enough: one record"
 */
export function proposedIntervals(
  records: readonly JudgedRecord[],
  place: PlaceDrift | undefined,
  basis: Basis,
): ProposedIntervals {
  const ended = endedIntervals(sinceReplacement(records)).filter((interval) => interval !== undefined);
  return {
    reliability: observedRate(ended.map(({ asFound }) => isInTolerance(asFound))),
    staircase: staircaseOf(records, basis),
    controlChart: controlChartOf(records, place, basis),
  };
}

/** From the replacement on, the sensor is the one in place. */
function sinceReplacement(records: readonly JudgedRecord[]): readonly JudgedRecord[] {
  const replaced = records.findLastIndex(({ adjustment }) => adjustment === "replace");
  return records.slice(Math.max(replaced, 0));
}

/** No interval makes a loop fit that is not. */
const notLeftInTolerance = "the last record did not leave the loop in tolerance";

function staircaseOf(
  records: readonly JudgedRecord[],
  { intervalMonths, settings }: Basis,
): ProposedIntervals["staircase"] {
  const now = records.at(-1);
  if (now === undefined || records.length < 2) return notDetermined("not enough: one record");
  const asFound = now.asFound?.statement ?? null;
  if (asFound === null) return notDetermined("the last record does not say how the loop was found");
  // What was done at the last visit says nothing of the sensor that was found there.
  const ended = endedIntervals([...sinceReplacement(records.slice(0, -1)), now]);
  const last = ended.at(-1);
  if (last === undefined) return notDetermined("the record before did not leave the loop in tolerance");
  if (asFound === "cannot be decided") return notDetermined("how the loop was found cannot be decided");
  if (!isLeftInTolerance(now)) return notDetermined(notLeftInTolerance);
  const months = intervalMonths ?? Math.max(1, Math.round(last.days / daysPerMonth));
  const step = staircaseInterval([...ended.slice(0, -1), last], months, settings);
  return {
    ...step,
    on: monthsLater(now.performedOn, step.months),
    isStated: intervalMonths !== undefined,
    ...last,
  };
}

function controlChartOf(
  records: readonly JudgedRecord[],
  place: PlaceDrift | undefined,
  { settings }: Basis,
): ProposedIntervals["controlChart"] {
  const now = records.at(-1);
  if (now === undefined || place === undefined) return notDetermined("no test point was judged");
  const { line, meets } = place;
  if (!isLeftInTolerance(now)) return notDetermined(notLeftInTolerance);
  if (!isDetermined(line)) return line;
  const proposed = controlChartInterval(
    isDetermined(meets) ? meets : undefined,
    (months) => dayNumber(monthsLater(now.performedOn, months)),
    settings,
  );
  const on = proposed.months === 0 ? null : monthsLater(now.performedOn, proposed.months);
  return { ...proposed, on, predicted: on === null ? null : predictedError(line, dayNumber(on)) };
}
