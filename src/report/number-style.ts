import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import { decimalsForSignificant, writeFixed } from "../units/write-number.ts";

/** How many decimals the page gives to what is computed; what was typed keeps the digits that were typed. */
export type NumberStyle = { distance: number; percent: number; value: number };

const digitsOfTolerance = 3;
const mostExtraDecimals = 6;

/**
 * The decimals of a page: the tightest tolerance shows three digits, and no rounding moves a printed error across a
 * printed limit.
 */
export function numberStyleOf(record: CalibrationRecord): NumberStyle {
  const span = record.instrument.rangeUpper - record.instrument.rangeLower;
  const limits = phasesOf(record).flatMap(({ readings }) =>
    readings.flatMap(({ toleranceLow, toleranceHigh }) => [-toleranceLow, toleranceHigh]),
  );
  const tightest = Math.min(...limits.filter((limit) => limit > 0), span);
  const typed = Math.max(...phasesOf(record).map(({ decimals }) => decimals.reference), 0);
  const distance = Math.max(typed, decimalsForSignificant(tightest, digitsOfTolerance));
  return {
    distance: withoutFalseVerdict(record, distance),
    percent: decimalsForSignificant((100 * tightest) / span, digitsOfTolerance),
    value: valueDecimals(record, tightest / span),
  };
}

function phasesOf({ phases }: CalibrationRecord): readonly PhaseRecord[] {
  return [phases.asFound, phases.asLeft].filter((phase) => phase !== undefined);
}

function valueDecimals({ instrument }: CalibrationRecord, share: number): number {
  const { valueLower, valueUpper } = instrument;
  if (valueLower === undefined || valueUpper === undefined) return 0;
  return decimalsForSignificant(Math.abs(valueUpper - valueLower) * share, digitsOfTolerance);
}

/** Adds decimals until every printed error stands on the same side of its printed limit as the number itself. */
function withoutFalseVerdict(record: CalibrationRecord, decimals: number): number {
  const pairs = phasesOf(record).flatMap(({ readings }) =>
    readings.flatMap(({ errorDistance, loopErrorDistance, toleranceLow, toleranceHigh }) =>
      [errorDistance, loopErrorDistance]
        .filter((error) => error !== undefined)
        .map((error) => ({ error, limit: error < 0 ? toleranceLow : toleranceHigh })),
    ),
  );
  for (let extra = 0; extra < mostExtraDecimals; extra += 1) {
    if (pairs.every((pair) => readsRight(pair, decimals + extra))) return decimals + extra;
  }
  return decimals;
}

function readsRight({ error, limit }: { error: number; limit: number }, decimals: number): boolean {
  const printed = Number(Math.abs(error).toFixed(decimals)) > Number(Math.abs(limit).toFixed(decimals));
  const noise = 1e-12 * Math.abs(limit);
  return printed === Math.abs(error) > Math.abs(limit) + noise;
}

/** A constant of a formula or a setting, with the digits that it needs and no more. */
export function plainNumber(value: number): string {
  const shortest = String(Number(value.toPrecision(12)));
  const decimals = shortest.includes("e") ? decimalsForSignificant(value, 6) : (shortest.split(".")[1]?.length ?? 0);
  return writeFixed(value, decimals);
}
