import { isDetermined } from "../analysis/figures/figure.ts";
import { indicatedDistance } from "../analysis/readings/ideal-characteristic.ts";
import { loopOf } from "../analysis/readings/loop.ts";
import { actedAt } from "../analysis/switching/acted-at.ts";
import type { CalibrationRows } from "../model/calibration-case.ts";
import type { ControllerLimit } from "../model/controller-limit.ts";
import { spanOf } from "../model/range.ts";
import type { ControllerLimitRecord } from "../record/controller-limit-schema.ts";
import { decidingPoints } from "../record/loop-end.ts";
import { phaseNames } from "../record/phase-name.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";

/**
 * The alarms and trips of the controller, and the distance at which each of them acts with the error that was found.
 *
 * @param record with its phases
 * @param rows of the calibration, with the limits of its tag
 * @returns the part, where the tag has any
 * Source: `actedAt`, on the mean errors of the last stage that was read, in the direction of the limit.
 * @example assembleControllerLimits(record, { ...rows, controllerLimits: [] }) // {}
 */
export function assembleControllerLimits(
  record: CalibrationRecord,
  { controllerLimits }: CalibrationRows,
): Pick<CalibrationRecord, "controllerLimits"> {
  if (controllerLimits.length === 0) return {};
  return { controllerLimits: controllerLimits.map(({ row, line }) => limitOf(row, line, record)) };
}

function limitOf(row: ControllerLimit, line: number, record: CalibrationRecord): ControllerLimitRecord {
  const { tag: _, ...stated } = row;
  const { value: scale } = loopOf(record.instrument).characteristics;
  const meant = scale === undefined ? row.value : indicatedDistance(scale, row.value);
  const isFalling = scale !== undefined && scale.outputAtUpper < scale.outputAtLower;
  const direction = (row.acts === "above") === isFalling ? "approach" : "recede";
  const found = phaseNames.flatMap((phase): ControllerLimitRecord["found"] => {
    const measured = record.phases[phase];
    if (measured === undefined) return [];
    const acted = actedAt(decidingPoints(measured), meant, direction, spanOf(record.instrument));
    return isDetermined(acted)
      ? [{ phase, actedAt: acted.distance, expandedUncertainty: acted.expandedUncertainty }]
      : [{ phase, actedAt: null, expandedUncertainty: null, notDetermined: acted.notDetermined }];
  });
  return { row: line, ...stated, meant, direction, found };
}
