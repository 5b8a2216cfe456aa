import { type Phase, phaseInWords } from "../model/calibration-words.ts";

/** The phases of a record, in the order of the work. */
export const phaseNames = ["asFound", "asLeft"] as const;

/** A phase as a record names it. */
export type PhaseName = (typeof phaseNames)[number];

/** The same phase as the tables name it. */
export const tablePhase: Readonly<Record<PhaseName, Phase>> = Object.freeze({
  asFound: "as_found",
  asLeft: "as_left",
});

/** The same phase in words, inside a sentence and as a title. */
export const phaseWords: Readonly<Record<PhaseName, string>> = Object.freeze({
  asFound: phaseInWords.as_found,
  asLeft: phaseInWords.as_left,
});
export const phaseTitles: Readonly<Record<PhaseName, string>> = Object.freeze({
  asFound: "As found",
  asLeft: "As left",
});
