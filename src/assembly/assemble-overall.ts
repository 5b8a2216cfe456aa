import { copiedPhase } from "../analysis/plausibility/copied-phase.ts";
import { groupedBy } from "../model/grouped-by.ts";
import { isAdjusted } from "../model/is-adjusted.ts";
import { looksByItem } from "../record/looks-by-item.ts";
import { decidingPoints } from "../record/loop-end.ts";
import type { OverallRecord } from "../record/overall-schema.ts";
import { type OverallWord, overallWords } from "../record/overall-words.ts";
import type { PhaseName } from "../record/phase-name.ts";
import type { CalibrationRecord, PhaseRecord, Statement } from "../record/record-schema.ts";
import { counted } from "../units/counted.ts";
import {
  type Asked,
  type Missing,
  missingBeside,
  missingPoints,
  type PhaseToComplete,
  usualEndsWithin,
  usualPointsNeeded,
} from "../verdict/completeness/missing-points.ts";
import { numberWords } from "../verdict/loop-check/limit-words.ts";
import { missingEvidence } from "./missing-evidence.ts";
import { changedOutputs, missingOutputs, outputsWord } from "./outputs-of-overall.ts";
import { pointAtTrueZero } from "./point-at-true-zero.ts";

/** A phase before anybody asked whether it is complete. */
export type MeasuredPhase = Omit<PhaseRecord, "complete" | "missing">;

type Measured = Pick<
  CalibrationRecord,
  "instrument" | "calibration" | "switching" | "loopChecks" | "decisionRule" | "standards"
> & {
  phases: { asFound?: MeasuredPhase | undefined; asLeft?: MeasuredPhase | undefined };
};

/**
 * Whether each phase is complete, and what the record says of the loop as a whole: as it was left, or found where nothing
 * was read or tried as left. No other part of a record, and no page, label or list, has a word of its own.
 *
 * @param record with its phases, switched outputs and loop check
 * @returns the phases with `complete` and `missing`, and `overall`: the worst of loop, outputs, loop check, completeness
 * Source: common practice of the trade for what is asked for (`missingPoints`); own choice of what is worse than what:
 * what is not complete is no pass, and no fail.
 * @example assembleOverall(record).overall.word // "pass"
 */
export function assembleOverall(record: Measured): { phases: CalibrationRecord["phases"]; overall: OverallRecord } {
  const { asFound, asLeft } = record.phases;
  const of = lastState(record);
  const around = missingAround(record, of);
  const found =
    asFound && completed(asFound, [...missingReadings(record, asFound), ...(of === "asFound" ? around : [])]);
  const left = asLeft && completed(asLeft, [...missingLeft(record, asLeft), ...(of === "asLeft" ? around : [])]);
  const phases = { ...(found && { asFound: found }), ...(left && { asLeft: left }) };
  const missing = [...((of && phases[of])?.missing ?? around), ...unreadAfterAdjustment(record)];
  return { phases, overall: overallOf(record, of, missing) };
}

function completed(phase: MeasuredPhase, missing: readonly Missing[]): PhaseRecord {
  const { notDetermined, ...rest } = phase;
  return { ...rest, complete: missing.length === 0, missing: [...missing], notDetermined };
}

/** The phase that tells how the loop stands now. */
function lastState({ phases, switching = [] }: Measured): PhaseName | null {
  if (phases.asLeft !== undefined || isTriedAsLeft({ switching })) return "asLeft";
  return phases.asFound !== undefined || switching.some((one) => one.phases.asFound !== undefined) ? "asFound" : null;
}

function isTriedAsLeft({ switching = [] }: Pick<Measured, "switching">): boolean {
  return switching.some(({ phases }) => phases.asLeft !== undefined);
}

function askedOf({ instrument }: Measured): Asked {
  const { rangeLower, rangeUpper, distanceUnit, pointsNeeded, endsWithin } = instrument;
  return {
    rangeLower,
    rangeUpper,
    unit: distanceUnit,
    pointsNeeded: pointsNeeded ?? usualPointsNeeded,
    endsWithin: endsWithin ?? usualEndsWithin,
  };
}

function missingReadings(record: Measured, phase: MeasuredPhase): readonly Missing[] {
  const points = missingPoints(toComplete(record, phase), askedOf(record), writeOf(record));
  return [...points, ...missingEvidence(record, phase)];
}

function missingLeft(record: Measured, phase: MeasuredPhase): readonly Missing[] {
  const { asFound } = record.phases;
  const own = missingReadings(record, phase);
  if (asFound === undefined) return own;
  const isAdjustmentNamed = isAdjusted(record.calibration);
  const context = { asked: askedOf(record), isAdjustmentNamed, write: writeOf(record) };
  const beside = missingBeside(toComplete(record, phase), toComplete(record, asFound), context);
  return [...own, ...beside, ...(isAdjustmentNamed ? readingsOfItsOwn(asFound, phase) : [])];
}

/** Numbers that were written down again say nothing of a loop that was adjusted in between. */
function readingsOfItsOwn(asFound: MeasuredPhase, asLeft: MeasuredPhase): readonly Missing[] {
  const copied = copiedPhase(asFound.readings, asLeft.readings);
  if (copied === undefined) return [];
  const { same, pairs } = copied;
  const says = `${same} of ${counted(pairs, "reading")} as left have the numbers of those as found to the last digit, though the loop was adjusted: what it does since was not read`;
  return [{ about: "copies", says }];
}

function writeOf({ instrument }: Measured): (distance: number) => string {
  return (distance) => numberWords(distance, instrument.distanceUnit, 4);
}

const depths = ["sensor", "wiring", "input card", "controller"] as const;
const endNames = {
  sensor: "",
  wiring: "the signal at the input card",
  "input card": "the raw counts",
  controller: "the controller's value",
} as const;

function toComplete({ instrument }: Measured, phase: MeasuredPhase): PhaseToComplete {
  const judged = phase.endOf === "sensor" ? phase.points : (phase.endPoints ?? decidingPoints(phase));
  const isInRange = (at: number) => at >= instrument.rangeLower && at <= instrument.rangeUpper;
  const points = judged.map(
    ({ point, errorDistance, expandedUncertainty, toleranceLow: low, toleranceHigh: high }) => ({
      point,
      errorDistance,
      expandedUncertainty,
      tolerance: { low, high },
    }),
  );
  const atZero = pointAtTrueZero(phase, instrument);
  return {
    points: [...points, ...atZero].sort((one, other) => one.point - other.point),
    read: [
      ...phase.readings.filter(({ leftOut }) => leftOut === undefined).map(({ reference }) => reference),
      ...atZero.map(({ point }) => point),
    ],
    tried: [
      ...new Set(
        phase.readings
          .filter(({ leftOut, verdict, point }) => (leftOut === undefined || verdict !== undefined) && isInRange(point))
          .map(({ point }) => point),
      ),
    ],
    railed: [...new Set(phase.readings.filter(({ railed }) => railed !== undefined).map(({ point }) => point))],
    rejected: rejectedAlone(phase).filter(isInRange),
    depth: depths.indexOf(phase.endOf),
    endName: endNames[phase.endOf],
  };
}

/** Test points of which no reading was kept. */
function rejectedAlone({ readings }: MeasuredPhase): readonly number[] {
  const isRejected = ({ leftOut = "" }: { leftOut?: string | undefined }) => leftOut.startsWith("rejected:");
  return [...groupedBy(readings, ({ point }) => point)].flatMap(([point, group]) =>
    group.every(isRejected) ? [point] : [],
  );
}

/** What is missing of what is around the readings, for the state that the record speaks of. */
function missingAround(record: Measured, of: PhaseName | null): readonly Missing[] {
  return [
    ...missingOutputs(record, of),
    ...(isAdjusted(record.calibration) ? [] : changedOutputs(record, writeOf(record))),
    ...(record.loopChecks?.incomplete ?? []).map((says): Missing => ({ about: "restored", says })),
    ...(isWorkedOn(record) ? checksNotLookedAtAgain(record) : []),
  ];
}

/** Something was done between a check that failed and the state that the record speaks of. */
function isWorkedOn({ phases, calibration }: Measured): boolean {
  return phases.asLeft !== undefined || isAdjusted(calibration);
}

function checksNotLookedAtAgain(record: Measured): readonly Missing[] {
  return failedOnce(record).map((item) => ({
    about: "loop check",
    says: `the item "${item}" of the loop check failed and was not looked at again`,
  }));
}

type Item = NonNullable<CalibrationRecord["loopChecks"]>["items"][number];

/** Looks at each item of the loop check; whether it was restored is asked apart. */
function looksAtItems({ loopChecks }: Measured): readonly (readonly Item[])[] {
  return looksByItem((loopChecks?.items ?? []).filter(({ item }) => item !== "restored"));
}

function isFailed({ result, isContradiction }: Item): boolean {
  return result === "fail" || isContradiction;
}

function failedOnce(record: Measured): readonly string[] {
  return looksAtItems(record).flatMap((rows) => {
    const [first] = rows;
    return rows.length === 1 && first !== undefined && isFailed(first) ? [first.item] : [];
  });
}

/** What failed before something was done, and was not looked at again, is no fail of what was left: it is open. */
function loopCheckWord(record: Measured): "pass" | "fail" | null {
  const rows = looksAtItems(record);
  if (rows.length === 0) return null;
  const open = new Set(isWorkedOn(record) ? failedOnce(record) : []);
  const last = rows.flatMap((some) => some.at(-1) ?? []).filter(({ item }) => !open.has(item));
  return last.some(isFailed) ? "fail" : "pass";
}

/** An adjustment stands between what was read and what was left: as left is unknown until it is read. */
function unreadAfterAdjustment(record: Measured): readonly Missing[] {
  const { phases, calibration } = record;
  if (!isAdjusted(record.calibration) || phases.asLeft !== undefined) return [];
  if (phases.asFound === undefined && isTriedAsLeft(record)) return [];
  const done = [calibration.adjustment, ...(calibration.alsoAdjusted ?? [])].join(", ");
  return [{ about: "adjustment", says: `the loop was adjusted (${done}), and no readings were taken as left` }];
}

/** Of readings; those as found stand for the loop as left where nothing was adjusted. */
function loopWord(record: Measured, of: PhaseName | null): Statement | null {
  const { phases } = record;
  const own = of === null ? undefined : phases[of];
  return (own ?? (isAdjusted(record.calibration) ? undefined : phases.asFound))?.verdict ?? null;
}

function overallOf(record: Measured, of: PhaseName | null, missing: readonly Missing[]): OverallRecord {
  const loop = loopWord(record, of);
  const outputs = outputsWord(record, of);
  const loopCheck = loopCheckWord(record);
  const isNothing = loop === null && outputs === null;
  const complete = missing.length === 0 && !isNothing;
  const words: readonly (OverallWord | null)[] = [loop, outputs, loopCheck, complete ? null : "not complete"];
  return {
    word: words.reduce<OverallWord>((worst, word) => (word !== null && isWorse(word, worst) ? word : worst), "pass"),
    of,
    loop,
    outputs,
    loopCheck,
    complete,
    missing: [
      ...missing,
      ...(isNothing ? [{ about: "points" as const, says: "nothing was read that can be judged" }] : []),
    ],
  };
}

function isWorse(one: OverallWord, other: OverallWord): boolean {
  return overallWords.indexOf(one) > overallWords.indexOf(other);
}
