import { loopOf } from "../analysis/readings/loop.ts";
import { inUnitOf } from "../analysis/stages/staged-readings.ts";
import { sharedPartOf } from "../analysis/uncertainty/shared-uncertainty.ts";
import type { CalibrationRows } from "../model/calibration-case.ts";
import type { CausesRecord, PhaseCauses } from "../record/causes-schema.ts";
import { type PhaseName, tablePhase } from "../record/phase-name.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import { type CauseEvidence, causeEvidence } from "../verdict/causes/evidence/cause-evidence.ts";
import { placeOf, unitOf } from "../verdict/causes/evidence/line-words.ts";
import { allLonePoints } from "../verdict/causes/evidence/lone-points.ts";
import type { StageEvidence } from "../verdict/causes/evidence/stage-evidence.ts";
import { findCauses } from "../verdict/causes/find-causes.ts";
import { switchedStates } from "./switched-states.ts";

/**
 * What the readings of each phase are consistent with, as the record carries it.
 *
 * @param record with its phases and switched outputs
 * @param rows of the calibration: readings, loop checks
 * @returns the part `causes`; nothing where no phase was measured
 * Source: `findCauses`.
 * @example assembleCauses(switched, rows).causes?.asFound?.findings.map(({ id }) => id) // []
 */
export function assembleCauses(record: CalibrationRecord, rows: CalibrationRows): Pick<CalibrationRecord, "causes"> {
  const { asFound, asLeft } = record.phases;
  const causes: CausesRecord = {
    ...(asFound && { asFound: phaseCauses("asFound", asFound, record, rows) }),
    ...(asLeft && { asLeft: phaseCauses("asLeft", asLeft, record, rows) }),
  };
  return Object.keys(causes).length === 0 ? {} : { causes };
}

function phaseCauses(
  name: PhaseName,
  measured: PhaseRecord,
  { instrument, calibration, switching }: CalibrationRecord,
  rows: CalibrationRows,
): PhaseCauses {
  const evidence = causeEvidence({
    instrument,
    calibration,
    loop: loopOf(instrument),
    readings: rows.readings.map(({ row }) => row).filter(({ phase }) => phase === tablePhase[name]),
    switching: switchedStates({ switching }, name),
    loopChecks: rows.loopChecks.map(({ row }) => row),
    decimals: { ...measured.decimals, signalAtCard: measured.decimals.signal },
    sharedUncertainty: measured.zeroError === null ? 0 : sharedPartOf(measured.zeroError),
  });
  const setAside = setAsideOf(evidence, measured);
  return {
    ...(setAside.length > 0 && { setAside }),
    stageLines: evidence.stages.flatMap((stage) => stageLineRecord(evidence, stage)),
    ...findCauses(evidence),
  };
}

/** Each reading once, in the order of the table. */
function setAsideOf(evidence: CauseEvidence, { readings }: PhaseRecord) {
  const { railed, slips, exchanged, wild } = evidence;
  const ofSensor = allLonePoints(evidence).filter(({ stage }) => placeOf(stage.stage) === "sensor");
  const why = new Map<number, string>([
    ...ofSensor.flatMap(({ lone }) => lone.members.map((index) => [index, "test point off"] as const)),
    ...wild.map(({ index }) => [index, "wild reading"] as const),
    ...exchanged.flatMap(({ first, second }) => [first, second].map((index) => [index, "rows exchanged"] as const)),
    ...slips.map(({ index }) => [index, "typing error"] as const),
    ...railed.map((index) => [index, "railed"] as const),
  ]);
  return readings.flatMap(({ row }, reading) => {
    const reason = why.get(reading);
    return reason === undefined ? [] : [{ reading, row, why: reason }];
  });
}

function stageLineRecord(evidence: CauseEvidence, { line }: StageEvidence): PhaseCauses["stageLines"] {
  if (line === undefined) return [];
  const { zeroCrossing } = line;
  return [
    {
      stage: line.stage,
      readings: line.used.length,
      excluded: line.excluded.length,
      gain: line.gain,
      gainStandardUncertainty: line.gainStandardUncertainty,
      from: inUnitOf(evidence.loop, line.input, 0),
      to: inUnitOf(evidence.loop, line.input, 100),
      inputUnit: unitOf(evidence, line.input),
      errorAtLower: line.errorAtLower,
      errorAtUpper: line.errorAtUpper,
      greatestResidual: line.greatestResidual.percentSpan,
      zeroCrossing: zeroCrossing
        ? { value: zeroCrossing.value, standardUncertainty: zeroCrossing.standardUncertainty }
        : null,
    },
  ];
}
