import { type PhaseName, phaseTitles } from "../../record/phase-name.ts";
import type {
  PhaseRecommendationRecord,
  RecommendationRecord,
  RecommendedStepRecord,
} from "../../record/recommendation-schema.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writePlain } from "../../units/write-number.ts";
import { typedConstants } from "./reteach-texts.ts";

type NamedStep = Pick<RecommendedStepRecord, "action" | "of" | "does">;

/** A step in a few words, what it is called on the first page: to leave a loop is all that it does, or half of it. */
export function actionWords({ action, of, does }: NamedStep): string {
  switch (action) {
    case "leave":
      return does.replace(/\.$/u, "");
    case "re-teach":
      return of === "switched output" ? "Re-teach the switched output" : "Re-teach";
    case "re-scale":
      return "Re-scale";
    case "replace":
      return "Replace";
    case "repair wiring or set-up":
      return of === "wiring" ? "Repair the wiring" : "Put the set-up right";
    case "cannot be decided":
      return "Cannot be decided yet";
  }
}

/** All steps for a headline, "Repair the wiring", "then re-teach"; each kind of work once. */
export function headlineParts(steps: readonly RecommendedStepRecord[]): readonly string[] {
  const firstOfEach = steps.filter(
    ({ action, of }, index) =>
      steps.findIndex(
        (other) => other.action === action && (action !== "repair wiring or set-up" || other.of === of),
      ) === index,
  );
  return firstOfEach.map((step, index) => (index === 0 ? actionWords(step) : `then ${lowerFirst(laterWords(step))}`));
}

/** Reasons on the first page, where there is one step and where there are several. */
const reasonsOfOne = 2;
const reasonsOfMany = 1;

/** The reasons of a step that the first page has room for. */
export function firstReasons(
  { reasons }: Pick<RecommendedStepRecord, "reasons">,
  steps: number,
): RecommendedStepRecord["reasons"] {
  return reasons.slice(0, steps === 1 ? reasonsOfOne : reasonsOfMany);
}

/** What cannot be decided at first is, after other work, something to look at again. */
export function laterWords(step: NamedStep): string {
  return step.action === "cannot be decided" ? "Look again" : actionWords(step);
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** The steps of a phase in their order. */
export function stepsOf({ also, ...first }: PhaseRecommendationRecord): readonly RecommendedStepRecord[] {
  return [first, ...also];
}

/** The recommendation that holds now: that of the last phase. */
export function recommendationNow(
  record: CalibrationRecord,
): { phase: PhaseName; steps: readonly RecommendedStepRecord[] } | undefined {
  const { asFound, asLeft } = record.recommendation ?? {};
  if (asLeft) return { phase: "asLeft", steps: stepsOf(asLeft) };
  return asFound && { phase: "asFound", steps: stepsOf(asFound) };
}

/** The phases of the recommendation, the one that holds now first. */
export function recommendedPhases({
  recommendation,
}: CalibrationRecord): readonly { name: PhaseName; title: string; steps: readonly RecommendedStepRecord[] }[] {
  return (["asLeft", "asFound"] as const).flatMap((name) => {
    const phase = recommendation?.[name];
    return phase ? [{ name, title: phaseTitles[name], steps: stepsOf(phase) }] : [];
  });
}

type Typed = { label: string; value: string };

/** The constants that a re-scale types in: as the loop is designed, and those of the forecast where they may be used. */
export function constantsWords(
  record: CalibrationRecord,
  phase: PhaseName,
  { constants }: Pick<RecommendedStepRecord, "constants">,
): string | undefined {
  const forecast = record.reteach?.[phase]?.newConstants;
  const designed = designedConstants(record);
  if (constants === null || designed.length === 0) return undefined;
  const best =
    constants === "of the forecast" && forecast
      ? `; ${inWords(typedConstants(record, forecast))} would make up for the sensor's own error as well`
      : "";
  return `${inWords(designed)}, as designed${best}.`;
}

function inWords(typed: readonly Typed[]): string {
  return typed.map(({ label, value }) => `${value} ${label}`).join(", ");
}

function designedConstants(record: CalibrationRecord): readonly Typed[] {
  const {
    valueLower,
    valueUpper,
    valueUnit = "",
    countsLower,
    countsUpper,
    signalLower,
    signalUpper,
    signalUnit,
  } = record.instrument;
  if (valueLower === undefined || valueUpper === undefined) return [];
  const at = (counts: number | undefined, signal: number) =>
    counts === undefined ? `at ${writePlain(signal)} ${signalUnit}` : `at ${writePlain(counts)} counts`;
  return [
    { label: at(countsLower, signalLower), value: `${writePlain(valueLower)} ${valueUnit}`.trimEnd() },
    { label: at(countsUpper, signalUpper), value: `${writePlain(valueUpper)} ${valueUnit}`.trimEnd() },
  ];
}

/** "As found it asked for: re-teach. Done: re-teach." and how the two agree. */
export function workDoneWords(record: CalibrationRecord): string | undefined {
  const workDone = record.recommendation?.workDone;
  if (workDone === undefined) return undefined;
  const asked = workDone.asked.join(", then ");
  const done = workDone.done ?? "not stated";
  const agreement = {
    "as asked": asksForMore(record)
      ? "no other was asked for, and whether the rest of what was asked for was done, the table does not say."
      : "that is what was asked for.",
    "a part of it":
      "that is a part of what was asked for; the table names one kind of work only, its note may say more.",
    "something else": "that is something else than this opinion asks for.",
    "nothing was done": "what was asked for is still to be done.",
    "not stated": "the table does not say what was done.",
  }[workDone.agreement];
  return `As found, this asks for: ${asked}. Adjustment stated in the table: ${done}; ${agreement}`;
}

/** To read again, to compare, to complete what was left: no adjustment, and no column of the table tells of it. */
function asksForMore({ recommendation, phases }: CalibrationRecord): boolean {
  const steps = recommendation?.asFound ? stepsOf(recommendation.asFound) : [];
  return steps.some(
    ({ action }) => action === "cannot be decided" || (action === "leave" && phases.asFound?.complete === false),
  );
}

/** A limit with its unit. */
export function thresholdWords({ value, unit }: RecommendationRecord["thresholds"][number]): string {
  return unit === "times" ? `${writePlain(value)} times` : `${writePlain(value)} % of the tolerance`;
}

/** Where a limit comes from, with the column that sets it. */
export function thresholdOrigin({ column, from }: RecommendationRecord["thresholds"][number]): string {
  return from === "instruments table" ? `${from}, ${column}` : `${from}; ${column} sets it`;
}
