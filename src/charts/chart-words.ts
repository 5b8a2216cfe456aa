import { greatestOf, leastOf } from "../numeric/least-and-greatest.ts";
import { onceForEach } from "../record/once-for-each.ts";
import { phasesOf } from "../record/phases-of.ts";
import { spanOf } from "../record/range.ts";
import type { CalibrationRecord, JudgedPointRecord, PhaseRecord } from "../record/record-schema.ts";
import { counted } from "../units/counted.ts";
import { readNumber } from "../units/read-number.ts";
import { writeWithUncertainty } from "../units/round-to-uncertainty.ts";
import { decimalsForSignificant, writeFixed, writeSigned } from "../units/write-number.ts";
import type { DrawnReading } from "./phase-rows.ts";

export function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "+0.25 %": two digits of the narrowest tolerance are shown, and two decimals at least. */
export function percentText(record: CalibrationRecord, percentSpan: number): string {
  return `${writeSigned(percentSpan, percentDecimals(record))} %`;
}

export function unsignedPercentText(record: CalibrationRecord, percentSpan: number): string {
  return `${writeFixed(percentSpan, percentDecimals(record))} %`;
}

/** "600.0 mm", with the decimals that the distances and the range were typed with. */
export function distanceText(record: CalibrationRecord, distance: number): string {
  const { rangeLower, rangeUpper, distanceUnit } = record.instrument;
  const typed = phasesOf(record).map(({ phase }) => phase.decimals.reference);
  const decimals = greatestOf([...typed, ...[rangeLower, rangeUpper].map(decimalsOf)]);
  return `${writeFixed(distance, decimals)} ${distanceUnit}`;
}

function decimalsOf(value: number): number {
  return readNumber(String(value), "point")?.decimals ?? 0;
}

export function rangeText(record: CalibrationRecord): string {
  const { rangeLower, rangeUpper } = record.instrument;
  return `from ${distanceText(record, rangeLower)} to ${distanceText(record, rangeUpper)}`;
}

/** "errors from −0.12 % to +0.40 % of span; farthest from zero: +0.40 % at 600 mm, rising". */
export function spreadText(record: CalibrationRecord, readings: readonly DrawnReading[]): string {
  const worst = readings.reduce((left, right) =>
    Math.abs(right.errorPercentSpan) > Math.abs(left.errorPercentSpan) ? right : left,
  );
  const errors = readings.map(({ errorPercentSpan }) => errorPercentSpan);
  const text = (percentSpan: number) => percentText(record, percentSpan);
  return (
    `errors from ${text(leastOf(errors))} to ${text(greatestOf(errors))} of span; farthest from zero: ` +
    `${text(worst.errorPercentSpan)} at ${distanceText(record, worst.reference)}, ${worst.direction}`
  );
}

/** "+0.951 ± 0.096 % of span at 600.0 mm, rising": the mean error that was judged, and its expanded uncertainty. */
export function pointText(record: CalibrationRecord, point: JudgedPointRecord): string {
  const percent = (100 * point.expandedUncertainty) / spanOf(record.instrument);
  const { value, uncertainty } = writeWithUncertainty(point.errorPercentSpan, percent);
  const sign = point.errorPercentSpan > 0 ? "+" : "";
  return `${sign}${value} ± ${uncertainty} % of span at ${distanceText(record, point.reference)}, ${point.direction}`;
}

/** "Tolerance from −0.50 % to +0.50 % of span.", or what it is at both ends where it changes with distance. */
export function toleranceText(record: CalibrationRecord): string {
  const rows = phasesOf(record)
    .flatMap(({ phase: { readings } }) => readings)
    .sort((left, right) => left.reference - right.reference);
  const [first, last] = [rows[0], rows.at(-1)];
  if (first === undefined || last === undefined) return "";
  const limits = ({ toleranceLow, toleranceHigh }: typeof first) =>
    `from ${percentText(record, inPercent(toleranceLow))} to ${percentText(record, inPercent(toleranceHigh))} of span`;
  const varies = limits(first) !== limits(last);
  return varies
    ? `Tolerance ${limits(first)} at ${distanceText(record, first.reference)}, ${limits(last)} at ${distanceText(record, last.reference)}.`
    : `Tolerance ${limits(first)}.`;

  function inPercent(distance: number): number {
    return (100 * distance) / spanOf(record.instrument);
  }
}

/** How small a part of an error is against the tolerance where it is: ": 12 % of the tolerance there"; else nothing. */
export function toleranceShareText(
  record: CalibrationRecord,
  { readings }: PhaseRecord,
  percentSpan: number,
  reference: number,
): string {
  const nearest = readings.toSorted(
    (one, other) => Math.abs(one.reference - reference) - Math.abs(other.reference - reference),
  )[0];
  const limit = nearest && Math.min(-nearest.toleranceLow, nearest.toleranceHigh);
  if (limit === undefined || limit <= 0) return "";
  const share = Math.abs(percentSpan * spanOf(record.instrument)) / limit;
  return `: ${share < 1 ? "under 1" : writeFixed(share, 0)} % of the tolerance there`;
}

/** What the caption says of readings that are in no figure, failed ones apart; empty where there are none. */
export function leftOutText(phases: readonly PhaseRecord[], drawn: number): string {
  const readings = phases.flatMap((phase) => phase.readings);
  const missing = readings.length - drawn;
  if (missing === 0) return "";
  const failed = readings.filter(({ leftOut, verdict }) => leftOut !== undefined && verdict === "fail").length;
  const subject = counted(missing, "reading that is", "readings that are");
  const ending = failed === 0 ? "" : `; ${counted(failed, "of them counts", "of them count")} as failed`;
  return ` ${subject} left out of the figures ${missing === 1 ? "is" : "are"} not drawn${ending}.`;
}

/** Found once for a record, for every number of its pictures is written so. */
const percentDecimals = onceForEach((record: CalibrationRecord): number => {
  const narrowest = leastOf(
    phasesOf(record).flatMap(({ phase: { readings } }) =>
      readings.map(({ toleranceLow, toleranceHigh }) => Math.max(-toleranceLow, toleranceHigh)),
    ),
  );
  const percent = (100 * narrowest) / spanOf(record.instrument);
  return Number.isFinite(percent) && percent > 0 ? Math.max(2, decimalsForSignificant(percent, 2)) : 2;
});
