import type { OverallWord } from "./overall-words.ts";
import type { Statement } from "./record-schema.ts";

/** How a loop stands with its next calibration. */
export type DueState =
  | "overdue"
  | "due soon"
  | "not due"
  | "no date"
  | "not in tolerance"
  | "not complete"
  | "out of use";

/** The worst reading of a phase, in the loop's unit and in percent of span. */
export type WorstError = { errorDistance: number; errorPercentSpan: number };

/** One tag of a register, by its last record. */
export type RegisterRow = {
  tag: string;
  description: string | null;
  location: string | null;
  criticality: string | null;
  calibration: string;
  revision: number;
  /** Page of the record, from the folder on. */
  path: string;
  performedOn: string | null;
  unit: string;
  asFound: Statement | null;
  asLeft: Statement | null;
  /** What the last record says of the loop as a whole; null for one that does not say it. */
  overall: OverallWord | null;
  worstAsFound: WorstError | null;
  worstAsLeft: WorstError | null;
  recommendation: string | null;
  /** Of the loop since its last adjustment, as its history tells it; early under four records; or why there is none. */
  drift: { percentSpanPerYear: number; isEarly?: boolean } | { notDetermined: string };
  /** When its 95 % prediction band meets a limit of the tolerance; or why no day can be given. */
  forecast: { on: string; limit: "upper" | "lower"; isAlready: boolean; isEarly?: boolean } | { notDetermined: string };
  /** What the last record does not prove; nothing where it is complete, or does not say. */
  missing: readonly string[];
  serial: string | null;
  procedure: string | null;
  /** "Ada Specimen (authorised)", or where the paper lies. */
  signedBy: readonly string[];
  fingerprint: string;
  standards: readonly string[];
  /** What was decided about the finding of the last record; by whom, where the ledger says it. */
  decided: { by: string | null; decision: string } | null;
  /** By how many days the last calibration came after the day on which it was due; null where it did not. */
  daysLate: number | null;
  due: { state: DueState; on: string | null; days: number | null; why: string | null };
  records: number;
};

/** One standard, by the certificate that runs longest. */
export type RegisterStandard = {
  standard: string;
  certificate: string;
  dueOn: string;
  isOverdue: boolean;
  tags: number;
};

/** A loop found out of tolerance of which nobody has written what was decided. */
export type OpenFinding = {
  tag: string;
  calibration: string;
  revision: number;
  path: string;
  performedOn: string | null;
  asFound: Statement;
  /** Since the day of the work; null where none is stated. */
  days: number | null;
};

/** A calibration that was done after the day on which it was due. */
export type LateCalibration = {
  tag: string;
  calibration: string;
  path: string;
  dueOn: string;
  performedOn: string;
  days: number;
};

/** How many loops were found in tolerance, of those calibrated in a year, and the 95 % interval of the rate. */
export type YearRate = { year: number; inTolerance: number; of: number; interval: { low: number; high: number } };

/** What a folder of records says on a day. */
export type Register = {
  on: string;
  soonDays: number;
  rows: readonly RegisterRow[];
  standards: readonly RegisterStandard[];
  /** The oldest first. */
  openFindings: readonly OpenFinding[];
  /** Of all calibrations that count, the last first. */
  late: readonly LateCalibration[];
  years: readonly YearRate[];
  records: number;
  /** Of a past day: records that were disposed of since, and are not in it. */
  disposedSince: number;
};
