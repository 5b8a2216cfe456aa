import type { OverallWord } from "./overall-schema.ts";
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
};

/** How many loops were found in tolerance, of those calibrated in a year, and the 95 % interval of the rate. */
export type YearRate = { year: number; inTolerance: number; of: number; interval: { low: number; high: number } };

/** What a folder of records says on a day. */
export type Register = {
  on: string;
  soonDays: number;
  rows: readonly RegisterRow[];
  standards: readonly RegisterStandard[];
  openFindings: readonly OpenFinding[];
  years: readonly YearRate[];
  records: number;
};
