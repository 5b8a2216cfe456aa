import { type Figure, notDetermined } from "../analysis/figures/figure.ts";
import { loopOf } from "../analysis/readings/loop.ts";
import { budgetBasis } from "../analysis/uncertainty/budget-basis.ts";
import { standardsUncertainty } from "../analysis/uncertainty/standards-uncertainty.ts";
import type { CalibrationRows } from "../model/calibration-case.ts";
import type { Candidate } from "../model/instrument.ts";
import { isInTolerance } from "../model/statement.ts";
import type { CandidateFitRecord, CandidatesRecord } from "../record/candidates-schema.ts";
import { tablePhase } from "../record/phase-name.ts";
import { phaseStatement } from "../record/phase-statement.ts";
import { lastPhaseName, lastPhaseOf } from "../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import { compareCandidates, notCompared } from "../verdict/replacement/compare-candidates.ts";
import type { LoopNeeds } from "../verdict/replacement/loop-needs.ts";
import { assembleSound } from "./assemble-sound.ts";
import { decimalMarkOf } from "./decimal-mark-of.ts";
import { readingResolutions, stepsOf } from "./phase/typed-resolution.ts";

/**
 * What could take the place of the sensor: where the tables have candidates for the tag, and the loop as it was left does
 * not pass or replacing is recommended. Only then does the record carry their rows.
 *
 * @param record with its phases, sound in air and recommendation
 * @param rows of the calibration, with the candidates that are considered for its tag
 * @returns the part and the rows that it rests on, or nothing
 * Source: `compare-candidates.ts`.
 * @example assembleCandidates(record, { ...rows, candidates: [] }) // {}
 */
export function assembleCandidates(
  record: CalibrationRecord,
  rows: CalibrationRows,
): Pick<CalibrationRecord, "candidates"> & Partial<Pick<CalibrationRecord, "inputs">> {
  const because = rows.candidates.length === 0 ? undefined : whyShown(record);
  if (because === undefined) return {};
  const needs = needsOf(record, rows);
  const fits = compareCandidates(
    rows.candidates.map(({ row }) => row),
    needs,
  );
  return {
    candidates: {
      because,
      fits: fits.map(({ place, cells, ...fit }) => ({
        row: rows.candidates[place]?.line ?? 0,
        ...fit,
        cells: [...cells],
        ...supplyOf(rows.candidates[place]?.row),
      })),
      notCompared: [...notCompared(needs)],
    },
    inputs: { ...record.inputs, rows: { ...record.inputs.rows, candidates: rows.candidates.map(sourceRow) } },
  };
}

/** What is said of getting one, as it was typed. */
function supplyOf(row: Candidate | undefined): Pick<CandidateFitRecord, "supply"> {
  const { sparePart, leadTime, price, indicators } = row ?? {};
  const supply = {
    ...(sparePart !== undefined && { sparePart }),
    ...(leadTime !== undefined && { leadTime }),
    ...(price !== undefined && { price }),
    ...(indicators !== undefined && { indicators }),
  };
  return Object.keys(supply).length === 0 ? {} : { supply };
}

/** Without the tags: the record has one loop, and the others that a candidate is considered for are not in it. */
function sourceRow({ file, line, cells: { tags: _, ...cells } }: CalibrationRows["candidates"][number]) {
  return { file, line, cells };
}

function whyShown(record: CalibrationRecord): CandidatesRecord["because"] | undefined {
  const { recommendation } = record;
  const verdict = phaseStatement(record, lastPhaseName(record));
  const advised = recommendation?.asLeft ?? recommendation?.asFound;
  if (advised && [advised, ...advised.also].some(({ action }) => action === "replace"))
    return "replacing is recommended";
  return verdict === null || isInTolerance(verdict) ? undefined : "the loop does not pass";
}

function needsOf(record: CalibrationRecord, rows: CalibrationRows): LoopNeeds {
  const { instrument, calibration, outputs } = record;
  // A candidate may be ultrasonic though the present sensor is not.
  const { sound } = assembleSound({ ...record, instrument: { ...instrument, principle: "ultrasonic" } });
  const last = lastPhaseOf(record)?.phase;
  return {
    instrument,
    calibration,
    outputs,
    airExtremes: sound?.expected ?? [],
    standardsUncertainty:
      last === undefined ? notDetermined("nothing was measured") : standardsOf(record, rows, last.judged),
  };
}

function standardsOf(record: CalibrationRecord, rows: CalibrationRows, stage: PhaseRecord["judged"]): Figure<number> {
  const { instrument, calibration, standards } = record;
  const phase = tablePhase[lastPhaseName(record)];
  const typed = readingResolutions(
    rows.readings.filter(({ row }) => row.phase === phase),
    instrument,
    decimalMarkOf(rows, "readings"),
  );
  const curve = { stage, curve: [], readings: [] };
  return standardsUncertainty(
    budgetBasis({ instrument, calibration, standards, steps: stepsOf(typed) }, curve, loopOf(instrument)),
  );
}
