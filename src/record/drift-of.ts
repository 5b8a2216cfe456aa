import { type DriftFindings, type DriftPoint, driftHistory } from "../verdict/recommendation/drift-history.ts";
import type { CalibrationRecord, PhaseRecord } from "./record-schema.ts";
import type { PhaseSummary, RecordSummary } from "./record-summary-schema.ts";

/**
 * How the loop drifted from record to record, up to what was found now.
 *
 * A record of another range or unit is another loop: the history begins after the last of them.
 *
 * @param record with its history, where a folder of filed records was given
 * @returns the drift of the last two intervals at most
 * Source: `driftHistory`.
 * @example driftOf({ ...record, history: undefined }).earlier // null
 */
export function driftOf({ history, instrument, calibration, phases }: CalibrationRecord): DriftFindings {
  const isSameLoop = ({ distanceUnit, rangeLower, rangeUpper }: RecordSummary) =>
    distanceUnit === instrument.distanceUnit &&
    rangeLower === instrument.rangeLower &&
    rangeUpper === instrument.rangeUpper;
  const others = history?.findLastIndex((summary) => !isSameLoop(summary)) ?? -1;
  const earlier = history?.slice(others + 1).map((summary) => ({
    calibration: summary.calibration,
    performedOn: summary.performedOn,
    adjustment: summary.adjustment,
    asFound: pointsOf(summary.asFound),
    asLeft: pointsOf(summary.asLeft),
  }));
  const current = {
    calibration: calibration.calibration,
    performedOn: calibration.performedOn ?? null,
    adjustment: calibration.adjustment ?? null,
    asFound: judgedPoints(phases.asFound),
    asLeft: judgedPoints(phases.asLeft),
  };
  return driftHistory(
    earlier,
    current,
    instrument.rangeUpper - instrument.rangeLower,
    phases.asFound?.controllerPoints !== undefined,
  );
}

function pointsOf(phase: PhaseSummary | null): readonly DriftPoint[] | null {
  return phase === null ? null : phase.points;
}

/** As a summary takes them: of the loop up to the controller where its values were read. */
function judgedPoints(phase: PhaseRecord | undefined): readonly DriftPoint[] | null {
  return phase === undefined ? null : (phase.controllerPoints ?? phase.points);
}
