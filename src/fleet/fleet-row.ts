import type { IndexEntry } from "../filing/index-entry.ts";
import type { DecidedLine } from "../filing/ledger-line.ts";
import { registerRow } from "../filing/register-row.ts";
import type { TagLife } from "../filing/tag-lives.ts";
import type { PhaseName } from "../record/phase-name.ts";
import type { PhaseRecord, SealedRecord } from "../record/record-schema.ts";
import type { RegisterRow } from "../record/register-form.ts";
import { convertDifference } from "../units/convert.ts";
import { type FleetRow, figuresOfPhase, type PhaseCells, type PrefixedCells } from "./fleet-columns.ts";

/** A filed record, and what its folder knows of the loop. */
export type FleetEntry = {
  entry: IndexEntry;
  /** Current records of the loop up to this one, by the day of the work; of a superseded record itself alone. */
  untilThen: readonly IndexEntry[];
  isCurrent: boolean;
  isLast: boolean;
  /** What became of the loop since its last record; of other records nothing. */
  life: TagLife;
};

/**
 * The row of a filed record: what the register says of a loop, at the time of that record, and the record's own figures.
 *
 * @param record the record of the entry's page
 */
export function fleetRow(fleet: FleetEntry, record: SealedRecord, decisions: readonly DecidedLine[]): FleetRow {
  const { entry, isCurrent, isLast } = fleet;
  const { instrument } = record;
  // What is overdue depends on the day of the question, and is not in the row: any day will do here.
  const on = entry.summary.performedOn ?? "2000-01-01";
  const row = registerRow(fleet.untilThen, fleet.life, { on, soonDays: 0, decisions });
  const { asFound, asLeft } = entry.summary;
  return {
    ...{ tag: row.tag, filed_as: entry.filedAs ?? null, calibration: row.calibration, revision: row.revision },
    ...{ is_current: isCurrent, is_last: isLast, performed_on: row.performedOn, path: row.path },
    ...{ file_sha256: entry.fileSha256, seal_sha256: entry.summary.sha256 },
    ...{ description: row.description, location: row.location, criticality: row.criticality },
    ...{ principle: instrument.principle ?? null, serial: row.serial, procedure: row.procedure },
    distance_unit: row.unit,
    range_lower_mm: millimetres(instrument.rangeLower, record),
    range_upper_mm: millimetres(instrument.rangeUpper, record),
    ...{ overall: row.overall, missing: row.missing, recommendation: row.recommendation },
    ...{ decision: row.decided?.decision ?? null, decided_by: row.decided?.by ?? null, signed_by: row.signedBy },
    interval_months: entry.intervalMonths ?? null,
    next_due_on: row.due.on,
    no_due_day: row.due.on === null ? row.due.state : null,
    days_late: row.daysLate,
    ...driftCells(row),
    standards: entry.standards.map(({ standard, certificate, dueOn }) => ({ standard, certificate, due_on: dueOn })),
    ...prefixed("as_found", phaseCells(record, "asFound", asFound)),
    ...prefixed("as_left", phaseCells(record, "asLeft", asLeft)),
  };
}

function driftCells({ drift, forecast }: RegisterRow) {
  const known = "notDetermined" in drift ? undefined : drift;
  const met = "notDetermined" in forecast ? undefined : forecast;
  return {
    drift_percent_span_per_year: known?.percentSpanPerYear ?? null,
    drift_is_early: known === undefined ? null : known.isEarly === true,
    forecast_on: met?.on ?? null,
    forecast_limit: met?.limit ?? null,
  };
}

function phaseCells(record: SealedRecord, name: PhaseName, summary: IndexEntry["summary"]["asFound"]): PhaseCells {
  return {
    statement: summary?.statement ?? null,
    worst_error_mm: millimetres(summary?.worst?.errorDistance, record),
    worst_error_percent_span: summary?.worst?.errorPercentSpan ?? null,
    worst_expanded_uncertainty_mm: millimetres(summary?.worstUncertainty, record),
    zero_error_percent_span: summary?.zeroError ?? null,
    span_error_percent_span: summary?.spanError ?? null,
    ...figureCells(record.phases[name]),
  };
}

type FigureCells = Pick<PhaseCells, (typeof figuresOfPhase)[number]["name"]>;

function figureCells(phase: PhaseRecord | undefined): FigureCells {
  const cells = figuresOfPhase.map(({ name, of }) => [name, (phase && of(phase)) ?? null]);
  return Object.fromEntries(cells) as FigureCells;
}

/** A distance of the record, also where it is below zero, in mm. */
function millimetres(distance: number | null | undefined, { instrument }: SealedRecord): number | null {
  return distance === null || distance === undefined
    ? null
    : convertDifference(distance, instrument.distanceUnit, "mm");
}

function prefixed<Prefix extends string>(prefix: Prefix, cells: PhaseCells): PrefixedCells<Prefix> {
  const named = Object.entries(cells).map(([name, cell]) => [`${prefix}_${name}`, cell]);
  return Object.fromEntries(named) as PrefixedCells<Prefix>;
}
