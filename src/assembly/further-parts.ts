import type { CalibrationRows } from "../model/calibration-case.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import { assembleCandidates } from "./assemble-candidates.ts";
import { assembleCauses } from "./assemble-causes.ts";
import { assembleControllerLimits } from "./assemble-controller-limits.ts";
import { assembleImpact } from "./assemble-impact.ts";
import { assembleLoopChecks } from "./assemble-loop-checks.ts";
import { assembleOverall } from "./assemble-overall.ts";
import { assembleRecommendation } from "./assemble-recommendation.ts";
import { assembleReteach } from "./assemble-reteach.ts";
import { assembleSetPoints } from "./assemble-set-points.ts";
import { assembleSound } from "./assemble-sound.ts";
import { assembleSwitching } from "./assemble-switching.ts";
import { assembleNextDue } from "./years/assemble-next-due.ts";
import { assembleOverTheYears } from "./years/assemble-over-the-years.ts";

/** One more part of a record: what it adds to the measured ones, from the record so far and the rows. */
type FurtherPart = (record: CalibrationRecord, rows: CalibrationRows) => Partial<CalibrationRecord>;

/** In the order in which later parts may rest on earlier ones. */
const furtherParts: readonly FurtherPart[] = [
  assembleSwitching,
  assembleLoopChecks,
  assembleOverall,
  assembleNextDue,
  assembleCauses,
  assembleSetPoints,
  assembleControllerLimits,
  assembleImpact,
  assembleOverTheYears,
  assembleReteach,
  assembleSound,
  assembleRecommendation,
  assembleCandidates,
];

/**
 * Adds to a record what follows from it: causes, forecasts, switched outputs, loop checks.
 *
 * @param record with its phases
 * @param rows of the calibration
 * @returns the record with every part that its rows allow; a part that they do not allow is absent
 * Source: the parts' own files.
 * @example withFurtherParts(record, rows).setPointTable?.[0].name // "lower end"
 */
export function withFurtherParts(record: CalibrationRecord, rows: CalibrationRows): CalibrationRecord {
  const whole: CalibrationRecord = { ...record };
  for (const part of furtherParts) Object.assign(whole, part(whole, rows));
  return whole;
}
