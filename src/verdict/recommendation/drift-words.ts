import { isDetermined } from "../../analysis/figures/figure.ts";
import { decimalsForSignificant, writeSigned } from "../../units/write-number.ts";
import { numberWords } from "../loop-check/limit-words.ts";
import type { DriftChange, DriftFindings, SpokenDrift } from "./drift-history.ts";

const noChange =
  "The filed history has no test point in common with these readings, or the last record adjusted the loop and did not read it again.";

/**
 * What the filed history says, in sentences.
 *
 * @param findings of `driftHistory`
 * @param unit of the distances
 * @returns one sentence or more, also where there is no history
 * Source: own choice.
 * @example driftReasons(driftHistory(undefined, { rangeLower: 0, rangeUpper: 1000 }, false), "mm")
 *   // ["No filed history was given."]
 */
export function driftReasons(findings: DriftFindings, unit: string): string[] {
  const { earlier, drift } = findings;
  if (earlier === null) return ["No filed history was given."];
  if (earlier === 0) return ["The filed history holds no earlier record of this tag."];
  return [...(isDetermined(drift) ? [driftSentence(drift, unit)] : []), ...changeSentences(findings, unit)];
}

function driftSentence({ point, perYear, records, isEarly, isSinceAdjustment }: SpokenDrift, unit: string): string {
  // As in the history: all to the digits that the interval supports.
  const digits = decimalsForSignificant(perYear.high - perYear.low || perYear.value, 2);
  const [value, low, high] = [perYear.value, perYear.low, perYear.high].map((one) => writeSigned(one, digits));
  return (
    `${isSinceAdjustment ? "Since the last adjustment the" : "The"} error at ${numberWords(point, unit)} drifts by ${value} ${unit} a year ` +
    `(95 %: ${low} to ${high}), by ${records} records${isEarly ? ", which is early" : ""}.`
  );
}

function changeSentences({ changes, growth }: DriftFindings, unit: string): string[] {
  if (changes.length === 0) return [noChange];
  const told = changes.map((change) => changeWords(change, unit));
  if (changes.length === 1) return [...told, "One interval does not show how the drift goes on."];
  if (growth === null) return told;
  const [factor, least] = [growth.factor, growth.atLeast].map((one) => numberWords(one, null, 2));
  return [
    ...told,
    `That is ${factor} times as fast as in the interval before, and ${least} times at least by the U of both.`,
  ];
}

function changeWords(
  { from, to, adjustment, point, errorDistance, expandedUncertainty, years }: DriftChange,
  unit: string,
): string {
  const time = years > 0 ? ` in ${yearsWords(numberWords(years, null, 2))}` : "";
  const start = adjustment === null || adjustment === "none" ? "" : `, after ${adjustment}`;
  return (
    `From ${from} to ${to}${start}: ${signedWords(errorDistance, unit)} at ${numberWords(point, unit)}${time}` +
    ` (U ${numberWords(expandedUncertainty, unit, 2)}).`
  );
}

function signedWords(value: number, unit: string | null): string {
  return `${value > 0 ? "+" : ""}${numberWords(value, unit, 2)}`;
}

function yearsWords(count: string): string {
  return `${count} ${count === "1" ? "year" : "years"}`;
}
