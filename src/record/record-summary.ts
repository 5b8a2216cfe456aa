import { certificateSource } from "../model/certificate-source.ts";
import { worstPointOf } from "./loop-end.ts";
import type { PhaseName } from "./phase-name.ts";
import { outputsStatement, phaseStatement } from "./phase-statement.ts";
import type { CalibrationRecord, JudgedPointRecord, PhaseRecord, SealedRecord } from "./record-schema.ts";
import type { PhaseSummary, RecordSummary } from "./record-summary-schema.ts";

/**
 * A record in short: what a later one of the same tag, a history and a register need of it.
 *
 * @param record sealed
 * @returns figures at full precision; null where the record has none
 * Source: own choice of what to keep.
 * @example recordSummary(sealed).tag // "LT-310"
 */
export function recordSummary(record: SealedRecord): RecordSummary {
  const { tag, calibration, revision, ...rest } = unsealedSummary(record);
  return { tag, calibration, revision, sha256: record.seal.sha256, ...rest };
}

/**
 * The same of a record that has no seal yet.
 *
 * @param record sealed or not
 * @returns figures at full precision; null where the record has none
 * Source: as `recordSummary`.
 * @example unsealedSummary(record).tag // "LT-310"
 */
export function unsealedSummary(record: CalibrationRecord): Omit<RecordSummary, "sha256"> {
  const { instrument, calibration, phases } = record;
  const pointsOf = partReadThroughout(record);
  return {
    tag: instrument.tag,
    calibration: calibration.calibration,
    revision: record.revision,
    performedOn: calibration.performedOn ?? null,
    distanceUnit: instrument.distanceUnit,
    rangeLower: instrument.rangeLower,
    rangeUpper: instrument.rangeUpper,
    serial: instrument.serial ?? null,
    adjustment: calibration.adjustment ?? null,
    pointsOf,
    asFound: phases.asFound === undefined ? null : phaseSummary(record, "asFound", phases.asFound, pointsOf),
    asLeft: phases.asLeft === undefined ? null : phaseSummary(record, "asLeft", phases.asLeft, pointsOf),
    nextDue: record.nextDue ?? null,
    ...(record.overall && {
      overall: { word: record.overall.word, missing: record.overall.missing.map(({ says }) => says) },
    }),
  };
}

/** One part for all phases, for errors of the sensor and of the whole loop are not to be compared. */
function partReadThroughout({ phases }: CalibrationRecord): RecordSummary["pointsOf"] {
  const present = [phases.asFound, phases.asLeft].filter((phase) => phase !== undefined);
  return present.every((phase) => pointsOfPart(phase, "controller") !== undefined) ? "controller" : "sensor";
}

/** Where the controller's value is all that was read, the judged points are those of the whole loop. */
function pointsOfPart({ judged, points, endOf, endPoints }: PhaseRecord, part: RecordSummary["pointsOf"]) {
  if (judged === "value") return part === "controller" ? points : undefined;
  if (part === "sensor") return points;
  return endOf === "controller" ? endPoints : undefined;
}

function phaseSummary(
  record: CalibrationRecord,
  name: PhaseName,
  phase: PhaseRecord,
  pointsOf: RecordSummary["pointsOf"],
): PhaseSummary {
  const { worst } = phase;
  const points = pointsOfPart(phase, pointsOf) ?? [];
  return {
    statement: phaseStatement(record, name),
    outputs: outputsStatement(record, name),
    worst:
      worst === null
        ? null
        : {
            of: worst.of,
            reference: referenceOf(phase, worst.row),
            errorDistance: worst.errorDistance,
            errorPercentSpan: worst.errorPercentSpan,
          },
    worstUncertainty: worstPointOf(phase)?.expandedUncertainty ?? null,
    zeroError: phase.zeroError?.percentSpan ?? null,
    spanError: phase.spanError?.percentSpan ?? null,
    points: points.map((point) => pointSummary(record, point)),
  };
}

function pointSummary({ standards }: CalibrationRecord, judged: JudgedPointRecord): PhaseSummary["points"][number] {
  const { point, errorDistance, expandedUncertainty, toleranceLow, toleranceHigh, statement, budget } = judged;
  return {
    ...{ point, errorDistance, expandedUncertainty },
    combinedUncertainty: budget.combinedUncertainty,
    effectiveDegreesOfFreedom: budget.effectiveDegreesOfFreedom,
    certificates: standards.flatMap(({ standard, certificate }) => {
      const line = budget.lines.find(({ source }) => source === certificateSource(standard));
      return line === undefined ? [] : [{ standard, certificate, standardUncertainty: line.standardUncertainty }];
    }),
    ...{ toleranceLow, toleranceHigh, statement },
  };
}

/** The worst reading is one of the phase's own. */
function referenceOf(phase: PhaseRecord, row: number): number {
  const reading = phase.readings.find((one) => one.row === row);
  if (reading === undefined) throw new TypeError(`recordSummary: there is no reading of row ${row}`);
  return reading.reference;
}
