import type { Instrument } from "../../model/instrument.ts";

/** One thing of a loop to look at; several of one number stand for one check of the list with more than one value. */
export type LoopItem = {
  /** Place in the list of checks; those of a tag are counted anew, without the places that do not apply to it. */
  number: number;
  /** What the column item of the table loop_checks calls it. */
  key: string;
  look: string;
  record: string;
  accepted: string;
  /** Unit of the number to write down; "distance", "signal" and "value" stand for the instrument's own; none where it is words. */
  unit?: string;
  /** Once for each switched output; its key then ends with "of" and the output's name. */
  eachOutput?: true;
  appliesTo?: (instrument: Instrument) => boolean;
};
