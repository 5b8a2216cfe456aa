import { isDetermined } from "../../analysis/figures/figure.ts";
import { worstPoint } from "../../analysis/readings/place-in-range.ts";
import { leftState } from "../../analysis/years/dated-states.ts";
import { dayNumber, daysPerMonth } from "../../analysis/years/day-number.ts";
import { predictedError } from "../../analysis/years/drift-line.ts";
import { observedRate } from "../../analysis/years/observed-rate.ts";
import { isInTolerance } from "../../model/statement.ts";
import type { OverTheYears } from "../../record/over-the-years-schema.ts";
import type { PhaseSummary } from "../../record/record-summary-schema.ts";
import { controlChartInterval } from "../../verdict/intervals/control-chart-interval.ts";
import type { IntervalSettings } from "../../verdict/intervals/interval-settings.ts";
import { staircaseInterval } from "../../verdict/intervals/staircase-interval.ts";
import { monthsLater } from "./next-due.ts";
import type { PlaceFigures } from "./places-over-the-years.ts";
import type { DatedSummary } from "./records-of-one-loop.ts";

type Proposals = Pick<OverTheYears, "reliability" | "staircase" | "controlChart" | "notDetermined">;
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
 *   usualIntervalSettings }).notDetermined.staircase // "not enough: one record"
 */
export function proposedIntervals(
  records: readonly DatedSummary[],
  place: PlaceFigures | undefined,
  basis: Basis,
): Proposals {
  const reliability = observedRate(
    endedIntervals(records).map(({ now }) => isInTolerance(now.asFound?.statement ?? null)),
  );
  const staircase = staircaseOf(records, basis);
  const controlChart = controlChartOf(records, place, basis);
  return {
    reliability: isDetermined(reliability) ? reliability : null,
    staircase: typeof staircase === "string" ? null : staircase,
    controlChart: typeof controlChart === "string" ? null : controlChart,
    notDetermined: {
      ...(!isDetermined(reliability) && { reliability: reliability.notDetermined }),
      ...(typeof staircase === "string" && { staircase }),
      ...(typeof controlChart === "string" && { controlChart }),
    },
  };
}

type Ended = { before: DatedSummary; now: DatedSummary };

function endedIntervals(records: readonly DatedSummary[]): readonly Ended[] {
  const replaced = records.findLastIndex(({ adjustment }) => adjustment === "replace");
  return records.slice(Math.max(replaced, 0)).flatMap((before, index, kept) => {
    const now = kept[index + 1];
    return now !== undefined && hasEnded(before, now) ? [{ before, now }] : [];
  });
}

function hasEnded(before: DatedSummary, now: DatedSummary): boolean {
  const found = now.asFound?.statement ?? null;
  return isLeftInTolerance(before) && found !== null && now.day > before.day;
}

function isLeftInTolerance(record: DatedSummary): boolean {
  return isInTolerance(leftState(record)?.statement ?? null);
}

/** No interval makes a loop fit that is not. */
const notLeftInTolerance = "the last record did not leave the loop in tolerance";

function staircaseOf(
  records: readonly DatedSummary[],
  { intervalMonths, settings }: Basis,
): Proposals["staircase"] | string {
  const [before, now] = [records.at(-2), records.at(-1)];
  if (before === undefined || now === undefined) return "not enough: one record";
  const asFound = now.asFound?.statement ?? null;
  if (asFound === null) return "the last record does not say how the loop was found";
  if (!hasEnded(before, now)) return "the record before did not leave the loop in tolerance";
  if (asFound === "cannot be decided") return "how the loop was found cannot be decided";
  if (!isLeftInTolerance(now)) return notLeftInTolerance;
  const days = now.day - before.day;
  const months = intervalMonths ?? Math.max(1, Math.round(days / daysPerMonth));
  const part = greatestPart(now.asFound);
  const step = staircaseInterval({ asFound, partOfTolerance: part, months, days }, settings);
  return {
    ...step,
    on: monthsLater(now.performedOn, step.months),
    isStated: intervalMonths !== undefined,
    days,
    asFound,
    partOfTolerance: part,
  };
}

/** Infinity, where one side of the tolerance allows nothing, cannot be written. */
function greatestPart(phase: PhaseSummary | null): number | null {
  const part = worstPoint(phase?.points ?? [])?.part ?? null;
  return part !== null && Number.isFinite(part) ? part : null;
}

function controlChartOf(
  records: readonly DatedSummary[],
  place: PlaceFigures | undefined,
  { settings }: Basis,
): Proposals["controlChart"] | string {
  const now = records.at(-1);
  if (now === undefined || place === undefined) return "no test point was judged";
  const { line, crossing } = place;
  if (!isLeftInTolerance(now)) return notLeftInTolerance;
  if (line === undefined) return place.notDetermined.drift ?? "no drift";
  const proposed = controlChartInterval(
    crossing,
    (months) => dayNumber(monthsLater(now.performedOn, months)),
    settings,
  );
  const on = proposed.months === 0 ? null : monthsLater(now.performedOn, proposed.months);
  return { ...proposed, on, predicted: on === null ? null : predictedError(line, dayNumber(on)) };
}
