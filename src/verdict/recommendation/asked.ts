import { isInTolerance, type Statement } from "../../model/statement.ts";
import { rowsExchanged, wildReading } from "../causes/apart-causes.ts";
import { causeOf } from "../causes/cause-of.ts";
import type { Finding } from "../causes/finding.ts";
import { onePointOff } from "../causes/lone-point-causes.ts";
import { typingError } from "../causes/typing-causes.ts";
import { reaches } from "./beside-threshold.ts";
import { remedyOf } from "./cause-remedy.ts";
import type { PartState, PhaseState } from "./phase-state.ts";

/** Which part of the loop is to be worked on: it does not pass, or lies so near its limit that adjusting is asked for. */
export type Asked = { sensor: boolean; controller: boolean; isPassing: boolean };

/**
 * Which parts of the loop ask for work.
 *
 * @param state of the phase
 * @returns the parts, and whether the phase passes all the same
 * Source: own choice: a conditional pass is accepted, a conditional fail counts as out of tolerance; `adjust_at` for the
 *   rest.
 * @example askedOf({ ...state, sensor: { statement: "pass", worst: 0.82, forecast: null }, thresholds: {
 *   ...state.thresholds, adjustAt: 80 } }) // { sensor: true, controller: false, isPassing: false }
 */
export function askedOf({
  statement,
  sensor,
  controller,
  thresholds,
}: Pick<PhaseState, "statement" | "sensor" | "controller" | "thresholds">): Asked {
  const isPassing = isInTolerance(statement);
  const isAsked = (part: PartState | null) =>
    part !== null &&
    (isFailed(part.statement) ? !isPassing : isInTolerance(part.statement) && isNearLimit(part, thresholds.adjustAt));
  return { sensor: isAsked(sensor), controller: isAsked(controller), isPassing };
}

/** At 100 % of the tolerance the decision rule speaks, and nothing else. */
function isNearLimit({ worst }: PartState, adjustAt: number): boolean {
  return adjustAt < 100 && reaches(worst, adjustAt);
}

function isFailed(statement: Statement | null): boolean {
  return statement === "fail" || statement === "conditional fail";
}

/**
 * The findings that a recommendation rests on: those of the parts that ask for work.
 *
 * @param state of the phase
 * @param asked of `askedOf`
 * @returns findings in their order; those of a switched output are left to its own judgement
 * Source: own choice: what matters less than the tolerance needs no cure.
 * @example countedFindings(state, { sensor: false, controller: false, isPassing: true }) // []
 */
export function countedFindings({ findings, judged }: PhaseState, asked: Asked): PhaseState["findings"] {
  const isAny = asked.sensor || asked.controller;
  return findings.filter(({ id, stage }) => {
    if (stage === "switched output") return false;
    if (stage === "readings" || judged !== "signal") return isAny;
    if (stage === "wiring") return causeOf(id).isSeenAtSensor ? asked.sensor : isAny;
    return stage === "sensor" || stage === "rig" ? asked.sensor : asked.controller;
  });
}

/**
 * Whether a finding is one that the readings themselves have to settle.
 *
 * @param finding its cause and its place
 * @returns true for typing, warm-up, play, dwell
 * Source: `remedyOf`.
 * @example isOfReadings({ id: "typing-error", stage: "readings" }) // true
 */
export function isOfReadings(finding: Pick<Finding, "id" | "stage">): boolean {
  return remedyOf(finding).cures === "readings";
}

/**
 * Whether a finding is of readings that stand apart from the others, which say what they say without them.
 *
 * @param finding its cause and its place
 * @returns true for a wild reading, rows exchanged, a typing error, a test point that is off at the sensor
 * Source: own choice.
 * @example isOfApart({ id: "wild-reading", stage: "readings" }) // true
 */
export function isOfApart({ id, stage }: Pick<Finding, "id" | "stage">): boolean {
  const isPoint = id === onePointOff.id && stage === "sensor";
  return isPoint || [wildReading.id, rowsExchanged.id, typingError.id].includes(id);
}
