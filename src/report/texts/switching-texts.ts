import type { PhaseName } from "../../record/phase-name.ts";
import { type NamedPhase, phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { writeFixed, writePlain, writeSignificant } from "../../units/write-number.ts";

export type SwitchingRecord = NonNullable<CalibrationRecord["switching"]>[number];
export type SwitchedPhaseRecord = NonNullable<SwitchingRecord["phases"][PhaseName]>;
/** One phase in which an output was tripped. */
export type TrippedPhase = NamedPhase<SwitchedPhaseRecord>;

/** A switched output that does not pass: in which phase (none for its wiring), what is said, and why. */
export type FailedOutput = { phase?: PhaseName; output: string; statement: string; why: string };

/** Every switched output of a record that does not pass, in words. */
export function failedOutputs(record: CalibrationRecord): readonly FailedOutput[] {
  return (record.switching ?? []).flatMap((switching) => {
    const { output } = switching.output;
    const wiring = wiringFaults(switching);
    return [
      ...phasesOf(switching).flatMap((tripped) => failedPhase(record, switching, tripped)),
      ...(wiring.length === 0 ? [] : [{ output, statement: "fail", why: wiring.join("; ") }]),
    ];
  });
}

function failedPhase(
  record: CalibrationRecord,
  switching: SwitchingRecord,
  { name, phase }: TrippedPhase,
): readonly FailedOutput[] {
  if (phase.statement === null || phase.statement === "pass") return [];
  const why = reasonsOf(record, switching, phase).join("; ");
  return [{ phase: name, output: switching.output.output, statement: phase.statement, why }];
}

/** What of an output does not pass: set point, differential travel, repeat accuracy, chatter. */
function reasonsOf(
  { instrument }: CalibrationRecord,
  { output }: SwitchingRecord,
  { setPoint, differential, repeat, chatter, notDetermined }: SwitchedPhaseRecord,
): readonly string[] {
  const unit = instrument.distanceUnit;
  const reasons: string[] = [];
  if (setPoint?.decision && setPoint.decision.statement !== "pass") {
    const error = signedWithUncertainty(setPoint.error, setPoint.expandedUncertainty);
    const limit = `tolerance ±${writePlain(output.setPointTolerance ?? 0)} ${unit}`;
    reasons.push(
      `set-point error ${error} ${unit}, ${limit}${isSingleTripOutside(setPoint) ? ", a single trip lies outside" : ""}`,
    );
  }
  if (setPoint !== null && setPoint.decision === null) {
    const error = signedWithUncertainty(setPoint.error, setPoint.expandedUncertainty);
    reasons.push(`set-point error ${error} ${unit}, no tolerance is stated`);
  }
  for (const [words, travel] of [
    ["differential travel", differential],
    ["repeat accuracy", repeat],
  ] as const) {
    if (travel?.statement !== "fail") continue;
    reasons.push(`${words} ${percentWords(travel.percent)}, limit ${writePlain(travel.limitPercent)} %`);
  }
  if (chatter?.statement === "fail") reasons.push(`chatter ${chatterWords(chatter)}`);
  const contradiction = notDetermined.function;
  if (contradiction !== undefined) reasons.push(contradiction);
  return reasons;
}

/** Simple acceptance fails a set point whose mean lies inside, where one trip does not. */
export function isSingleTripOutside({ error, decision }: NonNullable<SwitchedPhaseRecord["setPoint"]>): boolean {
  if (decision === null || decision.statement !== "fail" || decision.guardBand > 0) return false;
  return error >= decision.toleranceLow && error <= decision.toleranceHigh;
}

/** What of the wiring does not fit, in words; nothing where all that could be judged fits. */
function wiringFaults({ output, wiring }: SwitchingRecord): readonly string[] {
  const { inputMatch, onVoltage, offVoltage, functionMatch } = wiring;
  const faults: string[] = [];
  if (inputMatch?.statement === "fail") {
    faults.push(
      `a ${output.polarity} output needs a ${inputMatch.needs} input, and this one is ${output.controllerInput}`,
    );
  }
  for (const [state, voltage] of [
    ["on", onVoltage],
    ["off", offVoltage],
  ] as const) {
    if (voltage?.statement === "fail") faults.push(`${state}: ${voltageWords(voltage)}`);
  }
  if (functionMatch?.statement === "fail") {
    faults.push(`by its trips it is ${functionMatch.seen}, and stated as ${output.function}`);
  }
  return faults;
}

/** "13 V across the input, read as neither for certain; 15 to 30 V asked for". */
export function voltageWords({
  volts,
  low,
  high,
  readAs,
}: NonNullable<SwitchingRecord["wiring"]["onVoltage"]>): string {
  const read = readAs.startsWith("outside") ? readAs : `read as ${readAs}`;
  return `${writePlain(volts)} V across the input, ${read}; ${writePlain(low)} to ${writePlain(high)} V asked for`;
}

/** "none", or "on approach in cycle 2 (3 changes)". */
export function chatterWords({ runs }: NonNullable<SwitchedPhaseRecord["chatter"]>): string {
  if (runs.length === 0) return "none";
  return runs
    .map(({ direction, cycle, transitions }) => `on ${direction} in cycle ${cycle} (${transitions} changes)`)
    .join(", ");
}

/** "2.7 %": two digits, for the limits have no more. */
export function percentWords(percent: number): string {
  return `${writeSignificant(percent, 2)} %`;
}

/** "−20.5 ± 1.1": two digits of the uncertainty. */
export function signedWithUncertainty(value: number, uncertainty: number): string {
  const written = writeWithUncertainty(value, uncertainty);
  return `${value > 0 ? "+" : ""}${written.value} ± ${written.uncertainty}`;
}

/** What a set-point error is consistent with, and the two parts of it that say so; nothing where it is not off. */
export function sharesWords({ instrument }: CalibrationRecord, phase: SwitchedPhaseRecord): string | undefined {
  const { shares, setPoint } = phase;
  if (shares === null || setPoint === null) return undefined;
  const unit = instrument.distanceUnit;
  const analog = signedWithUncertainty(shares.analogErrorDistance, shares.shiftUncertainty);
  const teach = signedWithUncertainty(shares.teach, shares.teachUncertainty);
  return (
    `Set-point error ${signedWithUncertainty(setPoint.error, setPoint.expandedUncertainty)} ${unit}; the analog value ` +
    `there is off by ${analog} ${unit}, which moves the trip by the opposite; left for the switch alone: ` +
    `${teach} ${unit}. ${causeWords(shares.consistentWith, instrument.principle)}`
  );
}

function causeWords(
  consistentWith: NonNullable<SwitchedPhaseRecord["shares"]>["consistentWith"],
  principle: CalibrationRecord["instrument"]["principle"],
): string {
  const shift = principle === "ultrasonic" ? "the mount, the datum or the air" : "the mount or the datum";
  switch (consistentWith) {
    case "teach":
      return "Consistent with a teach of the output that has drifted: what the analog value is off by explains little of it.";
    case "shift":
      return (
        `Consistent with a shift of ${shift}: switch and analog value are off by about the same distance. ` +
        "Teaching the output anew would hide that."
      );
    case "teach and shift":
      return `Consistent with both: a shift of ${shift}, and a teach of the output that has drifted.`;
    case "neither for certain":
      return "The uncertainties are too large to tell a drifted teach from a shift.";
  }
}

/** "452.00 mm, mean of 5 (451.5 to 452.6)": one decimal more than was typed. */
export function meanWords(
  { operating, release, decimals }: SwitchedPhaseRecord,
  which: "operating" | "release",
  unit: string,
): string | undefined {
  const found = which === "operating" ? operating : release;
  if (found === null) return undefined;
  if (found.count === 1) return `${writeFixed(found.mean, decimals)} ${unit}, 1 trip`;
  const range = `${writeFixed(found.least, decimals)} to ${writeFixed(found.greatest, decimals)}`;
  return `${writeFixed(found.mean, decimals + 1)} ${unit}, mean of ${found.count} (${range})`;
}
