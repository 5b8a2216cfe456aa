import type { ImpactRecord } from "../../record/impact-schema.ts";
import { isInTolerance } from "../../record/phase-statement.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { counted } from "../../units/counted.ts";
import { decimalsForSignificant, writeFixed, writeSigned } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { endWords } from "./page-texts.ts";
import { failedOutputs } from "./switching-texts.ts";

/** From when to when the loop may have been out of tolerance. */
export function windowWords({ since, until, notDetermined }: ImpactRecord): string {
  const end = until === null ? "the day of this calibration, which is not stated" : until;
  if (since === null) return `Since when is not known (${notDetermined.since}), until ${end}.`;
  const last = `record ${since.calibration}${since.revision === 1 ? "" : `, revision ${since.revision}`}`;
  return `Since ${since.performedOn} at the earliest, when ${last} left the loop in tolerance, until ${end}.`;
}

/** Where in the range the mean error lay outside; a failed statement may also rest on the guard band or on faults. */
export function outsideStretchWords(record: CalibrationRecord, impact: ImpactRecord, style: NumberStyle): string {
  const unit = record.instrument.distanceUnit;
  const stretches = impact.outside.map(
    ({ from, to }) => `${writeFixed(from, style.distance)} to ${writeFixed(to, style.distance)} ${unit}`,
  );
  const errors =
    stretches.length === 0
      ? "No mean error of a test point lay outside the tolerance"
      : `The mean error lay outside the tolerance from ${stretches.join(", and from ")}`;
  const faults = impact.faults === 0 ? "" : `; ${readings(impact.faults)} a fault instead of a distance`;
  return [`${errors}${faults}.`, reasonWords(record, impact), ...outputWords(record)].filter(Boolean).join(" ");
}

/** A switched output acts by itself, so that it counts beside the analog value. */
function outputWords(record: CalibrationRecord): readonly string[] {
  return failedOutputs(record)
    .filter(({ phase }) => phase === "asFound")
    .map(({ output, statement, why }) => `Switched output ${output}: ${statement}; ${why}.`);
}

function readings(count: number): string {
  return `${counted(count, "reading")} reported`;
}

function reasonWords(
  { decisionRule, phases }: CalibrationRecord,
  { outside, faults, statement }: ImpactRecord,
): string {
  // Where the analog value is fit, it is a switched output that was found outside.
  if (outside.length > 0 || faults > 0 || isInTolerance(phases.asFound?.verdict ?? null)) return "";
  if (statement === "cannot be decided") return "The uncertainty is too large to tell.";
  if (phases.asFound?.readings.some(({ verdict }) => verdict === "fail")) return "Single readings did.";
  return `Under the rule ${decisionRule.name} it is not accepted all the same.`;
}

/** The sign in words, for people who do not think in signs. */
export function signWords(impact: ImpactRecord): string {
  const errors = impact.rows.map(({ errorDistance }) => errorDistance ?? 0);
  const shows = endWords[impact.of];
  const [long, short] = [errors.some((error) => error > 0), errors.some((error) => error < 0)];
  if (long && short) return `A positive error means that ${shows} more distance than there was, a negative one less.`;
  return `${shows[0]?.toUpperCase()}${shows.slice(1)} ${short ? "less" : "more"} distance than there was.`;
}

/** An error in the controller's unit, with its sign and three digits: "+19.0". */
export function valueErrorWords(errorValue: number | null): string {
  return errorValue === null ? "–" : writeSigned(errorValue, decimalsForSignificant(errorValue, 3));
}
