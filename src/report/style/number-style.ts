import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { isOutside } from "../../record/is-outside.ts";
import { onceForEach } from "../../record/once-for-each.ts";
import { phasesOf } from "../../record/phases-of.ts";
import { spanOf } from "../../record/range.ts";
import type { CalibrationRecord, ReadingRecord } from "../../record/record-schema.ts";
import { withDecimalMark } from "../../units/decimal-mark.ts";
import { decimalsForSignificant, writeFixed } from "../../units/write-number.ts";

/** How many decimals the page gives to what is computed; what was typed keeps the digits that were typed. */
export type NumberStyle = { distance: number; percent: number; value: number };

const digitsOfTolerance = 3;
/** Enough for any two errors that the decision tells apart. */
const mostExtraDecimals = 15;
/** In steps of the last digit. */
const farApart = 1.5;

/**
 * The decimals of a page: the tightest tolerance shows three digits, a percentage is no finer than the distance beside
 * it, and no rounding moves a printed error across a printed limit.
 */
export function numberStyleOf(record: CalibrationRecord): NumberStyle {
  const span = spanOf(record.instrument);
  const limits = phasesOf(record).flatMap(({ phase: { readings } }) =>
    readings.flatMap(({ toleranceLow, toleranceHigh }) => [-toleranceLow, toleranceHigh]),
  );
  const tightest = leastOf([...limits.filter((limit) => limit > 0), span]);
  const typed = greatestOf([...phasesOf(record).map(({ phase }) => phase.decimals.reference), 0]);
  const least = Math.max(typed, decimalsForSignificant(tightest, digitsOfTolerance));
  const distance = readableDecimals(record, least);
  return {
    distance,
    percent: percentDecimals(distance, span),
    value: valueDecimals(record, tightest / span),
  };
}

/** The decimals of a percentage of span whose last digit stands for no less than the last digit of the distance. */
export function percentDecimals(distanceDecimals: number, span: number): number {
  const stepPercent = (100 * 10 ** -distanceDecimals) / span;
  // A step of a power of ten, such as 0.01 % exactly, must not be taken for a little more than that.
  return Math.max(0, Math.floor(-Math.log10(stepPercent) + 1e-9));
}

function valueDecimals({ instrument }: CalibrationRecord, share: number): number {
  const { valueLower, valueUpper } = instrument;
  if (valueLower === undefined || valueUpper === undefined) return 0;
  return decimalsForSignificant(Math.abs(valueUpper - valueLower) * share, digitsOfTolerance);
}

/** One error of a reading and the limit on its side, distance; in percent of span too where the limit is stated so. */
type ErrorAtLimit = { isOutside: boolean; printed: readonly { error: number; limit: number; isStated: boolean }[] };

/** The fewest decimals with which every printed error stands on the same side of its printed limit as the number itself. */
export function readableDecimals(record: CalibrationRecord, least: number): number {
  const errors = errorsAtLimits(record);
  const span = spanOf(record.instrument);
  for (let extra = 0; extra < mostExtraDecimals; extra += 1) {
    const decimals = [least + extra, percentDecimals(least + extra, span)];
    if (errors.every((error) => readsRight(error, decimals))) return least + extra;
  }
  return least + mostExtraDecimals;
}

/** A limit that is stated is printed as it was typed, another one with the decimals of the error. */
function readsRight({ isOutside, printed }: ErrorAtLimit, decimals: readonly number[]): boolean {
  return printed.every(({ error, limit, isStated }, place) => {
    const shown = decimals[place] ?? 0;
    // Rounding moves either by half a step, so that it brings none over the other.
    if (Math.abs(error - limit) > farApart * 10 ** -shown) return error > limit === isOutside;
    const printedError = roundedTo(error, shown);
    const printedLimit = isStated ? limit : roundedTo(limit, shown);
    return printedError > printedLimit === isOutside;
  });
}

/** The number that is printed of one that is not negative. */
function roundedTo(value: number, decimals: number): number {
  return Number(withDecimalMark("point", () => writeFixed(value, decimals)));
}

const errorsAtLimits = onceForEach((record: CalibrationRecord): readonly ErrorAtLimit[] => {
  const { toleranceBasis, secondTolerance } = record.instrument;
  const isStatedInPercent = toleranceBasis === "percent of span" && secondTolerance === undefined;
  const span = spanOf(record.instrument);
  /** As `pointError` reckons it, to the last digit. */
  const inPercentOfSpan = (distance: number) => (100 * distance) / span;
  const pair = (signed: number, reading: ReadingRecord): ErrorAtLimit => {
    const error = Math.abs(signed);
    const limit = Math.abs(signed < 0 ? reading.toleranceLow : reading.toleranceHigh);
    const inPercent = { error: inPercentOfSpan(error), limit: asTyped(inPercentOfSpan(limit)), isStated: true };
    return {
      isOutside: isOutside(signed, reading, record.instrument),
      printed: [{ error, limit, isStated: false }, ...(isStatedInPercent ? [inPercent] : [])],
    };
  };
  return phasesOf(record).flatMap(({ phase: { readings } }) =>
    readings.flatMap((reading) =>
      [reading.errorDistance, reading.loopErrorDistance]
        .filter((error) => error !== undefined)
        .map((error) => pair(error, reading)),
    ),
  );
});

function asTyped(limit: number): number {
  return Number(limit.toPrecision(12));
}
