import { leastOf } from "../../numeric/least-and-greatest.ts";
import { spanOf } from "../../record/range.ts";
import type { CalibrationRecord, Statement } from "../../record/record-schema.ts";
import type { CorrectedCurve, NewConstants } from "../../record/reteach-schema.ts";
import { marked } from "../../units/decimal-mark.ts";
import { decimalsForSignificant, writeFixed, writePlain } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";

/** Whether what is left lies inside the acceptance limits of the decision rule. */
export function insideWords(statement: Statement): string {
  if (statement === "pass") return "yes";
  return statement === "cannot be decided" ? "cannot be decided" : `no (${statement})`;
}

/** Whether a re-teach can cure it, in one sentence for each part of the loop. */
export function curableWords(record: CalibrationRecord, curve: CorrectedCurve, style: NumberStyle): string {
  const { now, best, isCurable, whyNot } = curve;
  const unit = record.instrument.distanceUnit;
  if (best === null) return "";
  const left = `${writeFixed(Math.abs(best.worst.errorDistance), style.distance)} ${unit}`;
  if (isCurable === null)
    return "Whether a re-teach would do cannot be decided: the uncertainty leaves no error that passes.";
  if (isCurable) {
    return now.statement === "pass"
      ? "It is accepted as it is; new constants are not needed."
      : `${chanceWords(curve)} The best two constants leave ${left} of these very readings: that is a bound.`;
  }
  const half = whyNot && `${writeFixed(whyNot.halfSpread, style.distance)} ${unit}`;
  const at = whyNot && `${writePlain(Number(whyNot.point.toPrecision(6)))} ${unit}`;
  const reason =
    whyNot?.because === "spread at one point"
      ? `at ${at} the errors alone lie apart by twice ${half}, more than any zero and span can bring inside (hysteresis or scatter)`
      : `even the best two constants leave ${half} at ${at} (curvature, or a value that moves in steps)`;
  return `No re-teach can cure it: ${reason}.`;
}

/** The chance is of new readings after a teach; the recommendation says "can cure it" from the same 0.9 on. */
function chanceWords({ expected }: CorrectedCurve): string {
  if (expected === undefined) return "The chance that new readings pass after a re-teach is not determined.";
  const { chanceOfPass } = expected;
  const chance = `new readings after a teach at both ends pass with a chance of ${writeFixed(chanceOfPass, 2)}`;
  return chanceOfPass > sureFrom
    ? `A new zero and span can cure it: ${chance}.`
    : `A re-teach may not be enough: ${chance}.`;
}

const sureFrom = 0.9;

type Typed = { label: string; value: string };

/** New constants as they are typed in, with digits for a hundredth of the tolerance. */
export function typedConstants(record: CalibrationRecord, constants: NewConstants): readonly Typed[] {
  const { instrument } = record;
  const { distanceUnit, rangeLower, rangeUpper, valueUnit = "" } = instrument;
  const tightest = tightestTolerance(record) / spanOf(record.instrument);
  const typed = (value: number, span: number) =>
    writeFixed(value, decimalsForSignificant(Math.abs(span) * tightest, 3));
  const valueSpan = (instrument.valueUpper ?? 1) - (instrument.valueLower ?? 0);
  switch (constants.kind) {
    case "values at counts":
      return [
        { label: `at ${writePlain(constants.countsLower)} counts`, value: constants.valueLower },
        { label: `at ${writePlain(constants.countsUpper)} counts`, value: constants.valueUpper },
      ].map(({ label, value }) => ({ label, value: `${typed(value, valueSpan)} ${valueUnit}`.trimEnd() }));
    case "values in place of others":
      return [
        { label: `in place of ${writePlain(instrument.valueLower ?? 0)}`, value: constants.valueLower },
        { label: `in place of ${writePlain(instrument.valueUpper ?? 1)}`, value: constants.valueUpper },
      ].map(({ label, value }) => ({ label, value: `${typed(value, valueSpan)} ${valueUnit}`.trimEnd() }));
    case "inputs at range ends": {
      const isSignal = constants.of === "signal";
      const span = isSignal
        ? instrument.signalUpper - instrument.signalLower
        : (instrument.countsUpper ?? 1) - (instrument.countsLower ?? 0);
      const unit = isSignal ? instrument.signalUnit : "counts";
      return [
        { label: `signal at ${writePlain(rangeLower)} ${distanceUnit}`, value: constants.atLower },
        { label: `signal at ${writePlain(rangeUpper)} ${distanceUnit}`, value: constants.atUpper },
      ].map(({ label, value }) => ({
        label: isSignal ? label : label.replace("signal", "counts"),
        value: `${typed(value, span)} ${unit}`,
      }));
    }
  }
}

/** What the constants suppose, in words. */
export function constantsWords({ instrument }: CalibrationRecord, constants: NewConstants): string {
  switch (constants.kind) {
    case "values at counts":
      return "Controller values to be shown at the two raw counts, whatever the controller holds now; sensor, input card and scaling are corrected together.";
    case "values in place of others":
      return (
        `No counts were read, so what the controller holds now is taken from the instrument's row (${writePlain(instrument.valueLower ?? 0)} and ${writePlain(instrument.valueUpper ?? 1)}). ` +
        `If it holds others, each new constant is ${writePlain(Number(constants.offset.toPrecision(6)))} + ${writePlain(Number(constants.gain.toPrecision(8)))} · the one that it replaces.`
      );
    case "inputs at range ends":
      return (
        `No controller value was read: these are the ${constants.of === "signal" ? "signals" : "counts"} at which the ` +
        `controller would have to be told the two range ends.${saturationWords(instrument, constants)}`
      );
  }
}

/** What a 4–20 mA signal carries: NAMUR NE 43. */
const measuringMilliamps = { low: 3.8, high: 20.5 };

function saturationWords(
  { signalUnit, signalLower, signalUpper }: CalibrationRecord["instrument"],
  { of, atLower, atUpper }: Extract<NewConstants, { kind: "inputs at range ends" }>,
): string {
  const isLiveZero = signalUnit === "mA" && Math.min(signalLower, signalUpper) === 4;
  const isInside = [atLower, atUpper].every((end) => end >= measuringMilliamps.low && end <= measuringMilliamps.high);
  if (of !== "signal" || !isLiveZero || isInside) return "";
  return marked(
    " One of them lies beyond the 3.8 to 20.5 mA that measure (NAMUR NE 43): the whole range cannot be had so.",
  );
}

function tightestTolerance({ phases }: CalibrationRecord): number {
  const limits = [phases.asFound, phases.asLeft].flatMap((phase) =>
    (phase?.readings ?? []).flatMap(({ toleranceLow, toleranceHigh }) => [-toleranceLow, toleranceHigh]),
  );
  return leastOf(limits.filter((limit) => limit > 0));
}
