import type { PhaseRecord } from "../record/record-schema.ts";

/** A certificate that a record rests on, and the day until which it ran. */
export type StandardCell = { standard: string; certificate: string; due_on: string };

/** What each kind of column holds; a digest is kept as 32 bytes, a day as a date. */
type CellOfKind = {
  text: string;
  texts: readonly string[];
  whole: number;
  number: number;
  /** ISO 8601. */
  day: string;
  flag: boolean;
  /** SHA-256, hexadecimal. */
  digest: string;
  standards: readonly StandardCell[];
};
export type ColumnKind = keyof CellOfKind;

const ofRecord = [
  { name: "tag", kind: "text", says: "the loop, by the name that it has now" },
  { name: "filed_as", kind: "text", says: "the tag on the page, where the loop is called otherwise now" },
  { name: "calibration", kind: "text", says: "number of the calibration" },
  { name: "revision", kind: "whole", says: "of the record, from 1" },
  { name: "is_current", kind: "flag", says: "no later revision of the calibration is filed" },
  { name: "is_last", kind: "flag", says: "the record by which the loop stands in the register" },
  { name: "performed_on", kind: "day", says: "day of the work" },
  { name: "path", kind: "text", says: "the page, from the filing folder on" },
  { name: "file_sha256", kind: "digest", says: "of the page, as the ledger has it" },
  { name: "seal_sha256", kind: "digest", says: "of the record's seal" },
  { name: "description", kind: "text", says: "what the loop measures" },
  { name: "location", kind: "text", says: "where it hangs; of the last record, where it is now" },
  { name: "criticality", kind: "text", says: "as the record states it" },
  { name: "principle", kind: "text", says: "how the sensor senses: ultrasonic, laser, radar …" },
  { name: "serial", kind: "text", says: "serial number of the sensor" },
  { name: "procedure", kind: "text", says: "by which the work was done" },
  { name: "distance_unit", kind: "text", says: "unit of the record; the columns in mm are converted from it" },
  { name: "range_lower_mm", kind: "number", says: "distance at the lower end of the signal" },
  { name: "range_upper_mm", kind: "number", says: "distance at its upper end" },
  { name: "overall", kind: "text", says: "the word of the record for the loop as a whole" },
  { name: "missing", kind: "texts", says: "what the record does not prove" },
  { name: "recommendation", kind: "text", says: "what the record recommends" },
  { name: "decision", kind: "text", says: "what was decided about the loop found out of tolerance" },
  { name: "decided_by", kind: "text", says: "by whom, where the ledger says it" },
  {
    name: "signed_by",
    kind: "texts",
    says: "who signed and what for, or where the paper lies; no signature is checked",
  },
  { name: "interval_months", kind: "whole", says: "as agreed" },
  { name: "next_due_on", kind: "day", says: "day on which the loop is due again; null where none counts" },
  { name: "no_due_day", kind: "text", says: "why none counts: no date, not in tolerance, not complete, out of use" },
  { name: "days_late", kind: "whole", says: "days from the day on which the loop was due to that of the work" },
  {
    name: "drift_percent_span_per_year",
    kind: "number",
    says: "of the loop since its last adjustment, until this record",
  },
  { name: "drift_is_early", kind: "flag", says: "the drift rests on less than four records" },
  { name: "forecast_on", kind: "day", says: "day on which the drift meets a limit, by its 95 % prediction band" },
  { name: "forecast_limit", kind: "text", says: "that limit: upper or lower" },
  { name: "standards", kind: "standards", says: "what the record rests on: standard, certificate, due_on" },
] as const;

const ofPhase = [
  { name: "statement", kind: "text", says: "pass, fail, or a word of the decision rule" },
  { name: "worst_error_mm", kind: "number", says: "of the worst reading" },
  { name: "worst_error_percent_span", kind: "number", says: "of the worst reading" },
  { name: "worst_expanded_uncertainty_mm", kind: "number", says: "U at the worst test point" },
  { name: "zero_error_percent_span", kind: "number", says: "zero error" },
  { name: "span_error_percent_span", kind: "number", says: "span error" },
] as const;

/** What is read of the phase itself: a figure of a record has its line here, with where it stands. */
export const figuresOfPhase = [
  {
    name: "inaccuracy_positive_percent_span",
    kind: "number",
    says: "inaccuracy upwards",
    of: ({ inaccuracy }: PhaseRecord) => inaccuracy?.positive,
  },
  {
    name: "inaccuracy_negative_percent_span",
    kind: "number",
    says: "inaccuracy downwards",
    of: ({ inaccuracy }: PhaseRecord) => inaccuracy?.negative,
  },
  {
    name: "mean_absolute_error_percent_span",
    kind: "number",
    says: "mean absolute error",
    of: ({ meanAbsoluteError }: PhaseRecord) => meanAbsoluteError?.percentSpan,
  },
  {
    name: "maximum_measured_error_percent_span",
    kind: "number",
    says: "maximum measured error",
    of: ({ maximumMeasuredError }: PhaseRecord) => maximumMeasuredError?.percentSpan,
  },
  {
    name: "linearity_independent_percent_span",
    kind: "number",
    says: "independent linearity",
    of: ({ linearity }: PhaseRecord) => linearity.independent,
  },
  {
    name: "linearity_terminal_percent_span",
    kind: "number",
    says: "terminal-based linearity",
    of: ({ linearity }: PhaseRecord) => linearity.terminal,
  },
  {
    name: "linearity_zero_based_percent_span",
    kind: "number",
    says: "zero-based linearity",
    of: ({ linearity }: PhaseRecord) => linearity.zeroBased,
  },
  {
    name: "linearity_least_squares_percent_span",
    kind: "number",
    says: "linearity about the line of least squares",
    of: ({ linearity }: PhaseRecord) => linearity.leastSquares,
  },
  {
    name: "hysteresis_percent_span",
    kind: "number",
    says: "hysteresis",
    of: ({ hysteresis }: PhaseRecord) => hysteresis?.percentSpan,
  },
  {
    name: "repeatability_percent_span",
    kind: "number",
    says: "repeatability",
    of: ({ repeatability }: PhaseRecord) => repeatability?.percentSpan,
  },
] as const;

type OfPhase = (typeof ofPhase | typeof figuresOfPhase)[number];
type CellsOf<Column extends { name: string; kind: ColumnKind }> = {
  [One in Column as One["name"]]: CellOfKind[One["kind"]] | null;
};

/** The columns of one phase without the phase's name before them; null where the record has no such figure. */
export type PhaseCells = CellsOf<OfPhase>;
export type PrefixedCells<Prefix extends string> = {
  [Name in keyof PhaseCells as `${Prefix}_${Name}`]: PhaseCells[Name];
};

/** A filed record as a row; null where something is not stated or not determined. */
export type FleetRow = CellsOf<(typeof ofRecord)[number]> & PrefixedCells<"as_found"> & PrefixedCells<"as_left">;
export type FleetColumn = { name: keyof FleetRow; kind: ColumnKind; says: string };

/** The columns of a yearly file, in their order. */
export const fleetColumns: readonly FleetColumn[] = [
  ...ofRecord,
  ...columnsOf("as_found", "as found"),
  ...columnsOf("as_left", "as left"),
];

function columnsOf<Prefix extends "as_found" | "as_left">(prefix: Prefix, words: string) {
  const columns = [...ofPhase, ...figuresOfPhase];
  return columns.map(({ name, kind, says }) => ({
    name: `${prefix}_${name}` as const,
    kind,
    says: `${words}: ${says}`,
  }));
}
