import type { ProblemCode } from "./catalogue.ts";
import type { Severity } from "./entry.ts";

/**
 * Where the user can find what is wrong. `line` counts from 1, as an editor or a spreadsheet shows it; what stands in a
 * spreadsheet has its sheet too, and a single cell its address.
 */
export type Place = { file: string; sheet?: string; line?: number; column?: string; cell?: string };

/** The calibration, tag or standard whose row has the problem. */
export type Belonging = { calibration: string } | { tag: string } | { standard: string };

/** One thing that is wrong with a user's table, as data; `sentence` turns it into words. */
export type Problem = {
  code: ProblemCode;
  severity: Severity;
  place: Place;
  /** The text of the cell, where one cell is to blame. */
  read?: string;
  /** What the catalogue's sentence needs to be filled in with. */
  values: Readonly<Record<string, string | number>>;
  /** What the problem touches; a problem that belongs to nothing in particular touches every calibration. */
  belongsTo?: Belonging;
};
