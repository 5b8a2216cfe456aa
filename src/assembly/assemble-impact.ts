import { outsideEitherWay } from "../analysis/figures/outside-stretches.ts";
import { outputErrorOf } from "../analysis/readings/ideal-characteristic.ts";
import { loopOf } from "../analysis/readings/loop.ts";
import { toleranceAt } from "../analysis/readings/tolerance.ts";
import { worseAnalogErrorAt } from "../analysis/switching/analog-error-at.ts";
import { spanOf } from "../model/range.ts";
import { isInTolerance } from "../model/statement.ts";
import type { ImpactRecord } from "../record/impact-schema.ts";
import { isOutside } from "../record/is-outside.ts";
import { decidingPoints, faultsIn } from "../record/loop-end.ts";
import { phaseStatement } from "../record/phase-statement.ts";
import type { CalibrationRecord, JudgedPointRecord } from "../record/record-schema.ts";
import type { RecordSummary } from "../record/record-summary-schema.ts";

/**
 * What a loop that was found out of tolerance may have touched: since when, how far it was off at the places that
 * matter, in which parts of the range, and what was decided about it. A conditional fail counts as out of tolerance,
 * and so does what cannot be decided, until somebody decides.
 *
 * @param record with its phases, set-point table and history
 * @returns the part, where the as-found state is not in tolerance
 * Source: ISO/IEC 17025:2017, 7.10; ISO 9001:2015, 7.1.5.2; what counts as out of tolerance is our own choice.
 * @example assembleImpact(record).impact?.since // null
 */
export function assembleImpact(record: CalibrationRecord): Pick<CalibrationRecord, "impact"> {
  const { asFound } = record.phases;
  const statement = phaseStatement(record, "asFound");
  if (asFound === undefined || statement === null || isInTolerance(statement)) return {};
  const { calibration } = record;
  const since = lastInTolerance(record.history ?? []);
  return {
    impact: {
      statement,
      since: since ?? null,
      until: calibration.performedOn ?? null,
      of: asFound.endOf,
      rows: rowsOf(record, decidingPoints(asFound)),
      outside: [...outsideEitherWay(decidingPoints(asFound), record.instrument)],
      faults: faultsIn(asFound),
      decision: calibration.impactDecision ?? null,
      decidedBy: calibration.impactDecidedBy ?? null,
      decidedOn: calibration.impactDecidedOn ?? null,
      notDetermined: since === undefined ? { since: whyUnknown(record.history) } : {},
    },
  };
}

/** The state in which the last record left the loop, if that was in tolerance; else that of the one before it. */
function lastInTolerance(history: readonly RecordSummary[]): ImpactRecord["since"] | undefined {
  const found = history.findLast(({ asFound, asLeft }) => isInTolerance((asLeft ?? asFound)?.statement ?? null));
  if (found === undefined || found.performedOn === null) return undefined;
  return { performedOn: found.performedOn, calibration: found.calibration, revision: found.revision };
}

function whyUnknown(history: CalibrationRecord["history"]): string {
  if (history === undefined) return "no filed records of the tag were given";
  if (history.length === 0) return "there is no filed record of the tag before this one";
  return "no filed record before this one left the loop in tolerance";
}

function rowsOf(record: CalibrationRecord, points: readonly JudgedPointRecord[]): ImpactRecord["rows"] {
  const { characteristics, toleranceTerms } = loopOf(record.instrument);
  return (record.setPointTable ?? []).flatMap(({ name, distance }) => {
    if (distance === null) return [];
    const { low, high } = toleranceAt(toleranceTerms, characteristics.signal, distance);
    const error = worseAnalogErrorAt(points, distance, spanOf(record.instrument));
    return {
      name,
      distance,
      errorDistance: error?.errorDistance ?? null,
      expandedUncertainty: error?.expandedUncertainty ?? null,
      errorValue: error === undefined ? null : inControllerUnit(record, error.errorDistance),
      toleranceLow: low,
      toleranceHigh: high,
      isOutside:
        error === undefined
          ? null
          : isOutside(error.errorDistance, { toleranceLow: low, toleranceHigh: high }, record.instrument),
    };
  });
}

function inControllerUnit({ instrument }: CalibrationRecord, errorDistance: number): number | null {
  const { value } = loopOf(instrument).characteristics;
  return value === undefined ? null : outputErrorOf(value, errorDistance);
}
