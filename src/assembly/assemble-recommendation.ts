import { isAdjusted } from "../model/is-adjusted.ts";
import type { PhaseName } from "../record/phase-name.ts";
import type { RecommendationRecord } from "../record/recommendation-schema.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import { driftReasons } from "../verdict/recommendation/drift-words.ts";
import { recommend } from "../verdict/recommendation/recommend.ts";
import { thresholdsOf } from "../verdict/recommendation/recommendation-thresholds.ts";
import { workDone } from "../verdict/recommendation/work-done.ts";
import { phaseStateOf } from "./phase-state-of.ts";
import { switchedStates } from "./switched-states.ts";
import { driftOf } from "./years/drift-of.ts";

/**
 * What to do with the loop, phase by phase: an opinion that rests on every other part of the record.
 *
 * @param record with all its other parts
 * @returns the part; nothing where no phase was measured
 * Source: `recommend`.
 * @example assembleRecommendation(record).recommendation?.asFound?.action // "repair wiring or set-up"
 */
export function assembleRecommendation(record: CalibrationRecord): Pick<CalibrationRecord, "recommendation"> {
  const asFound = phaseOf(record, "asFound");
  const asLeft = phaseOf(record, "asLeft") ?? unreadOf(record);
  if (asFound === undefined && asLeft === undefined) return {};
  return {
    recommendation: {
      ...(asFound && { asFound }),
      ...(asLeft && { asLeft }),
      ...(asFound && {
        workDone: workDone([asFound, ...asFound.also], record.calibration.adjustment, record.calibration.alsoAdjusted),
      }),
      thresholds: thresholdsOf(record.instrument),
      history: driftReasons(driftOf(record), record.instrument.distanceUnit),
    },
  };
}

/**
 * Where nothing was read as left, after an adjustment or beside outputs that were tried again: an output speaks for
 * itself, the readings as found for the loop as long as nothing was adjusted.
 */
function unreadOf(record: CalibrationRecord): RecommendationRecord["asLeft"] | undefined {
  const { phases, overall } = record;
  if (phases.asFound === undefined || overall === undefined) return undefined;
  const isUnread = isAdjusted(record.calibration);
  if (!isUnread && overall.of !== "asLeft") return undefined;
  const state = phaseStateOf(record, "asFound", phases.asFound);
  const outputs = switchedStates(record, "asLeft");
  const switching = state.switching.map((found, index) => (outputs[index]?.found ? outputs[index] : found));
  return recommend({
    ...state,
    isUnread,
    missing: overall.missing.map(({ says }) => says),
    switching: isUnread ? outputs : switching,
  });
}

function phaseOf(record: CalibrationRecord, name: PhaseName): RecommendationRecord["asFound"] | undefined {
  const phase = record.phases[name];
  return phase && recommend(phaseStateOf(record, name, phase));
}
