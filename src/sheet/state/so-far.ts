import type { Phase } from "../../model/calibration-words.ts";
import { isInTolerance, type Statement } from "../../model/statement.ts";
import { phaseNames, phaseTitles, tablePhase } from "../../record/phase-name.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { counted } from "../../units/counted.ts";
import type { RowSays } from "./row-says.ts";

/** How far one phase is, and what it says so far. */
export type SoFar = { filled: number; of: number; word: string; isBad: boolean; missing: readonly string[] };

/** What is known of a phase: its readings by themselves, and the record where one could be made. */
export type PhaseSoFar = {
  phase: Phase;
  filled: number;
  of: number;
  says: Iterable<RowSays>;
  record: CalibrationRecord | undefined;
  /** Whether the record was made of what stands in the sheet now: a moment after each key it was not. */
  isCurrent: boolean;
};

/**
 * A phase in a few words, never larger than its evidence: "in tolerance so far" until enough was read.
 *
 * @param known of the phase
 * @returns how many of the planned readings are there, the word, and what the whole proof still lacks
 * Source: `assembleOverall` for what is complete; own choice of words.
 */
export function soFar({ phase, filled, of, says, record, isCurrent }: PhaseSoFar): SoFar {
  const said = [...says];
  const outside = said.filter(({ isOutside }) => isOutside).length;
  const overall = record?.overall;
  const isSpokenOf = overall?.of !== undefined && overall.of !== null && tablePhase[overall.of] === phase;
  const name = phaseNames.find((one) => tablePhase[one] === phase);
  const statement = (name && record?.phases[name]?.verdict) ?? null;
  const missing = isSpokenOf ? (overall?.missing ?? []).map((one) => one.says) : [];
  if (filled === 0) return { filled, of, word: "nothing read yet", isBad: false, missing: [] };
  if (isCurrent && isSpokenOf && overall?.complete === true) {
    return { filled, of, word: overall.word, isBad: !isGood(overall.word), missing };
  }
  if (outside > 0 || (isCurrent && statement === "fail")) {
    const where = outside > 0 ? ` at ${counted(outside, "reading")}` : "";
    return { filled, of, word: `out of tolerance${where}`, isBad: true, missing };
  }
  const unsaid = filled - said.length;
  const isJudged = isCurrent && statement !== null;
  if (unsaid > 0 && !isJudged) {
    return { filled, of, word: `${counted(unsaid, "reading")} not judged`, isBad: false, missing };
  }
  const isOpen = isCurrent && statement !== null && !isInTolerance(statement);
  return { filled, of, word: `${isOpen ? statement : "in tolerance"} so far`, isBad: isOpen, missing };
}

function isGood(word: Statement | "not complete"): boolean {
  return word !== "not complete" && isInTolerance(word);
}

/** A phase as a title: "As found". */
export function titleOf(phase: Phase): string {
  const name = phaseNames.find((one) => tablePhase[one] === phase);
  return name === undefined ? phase : phaseTitles[name];
}
