import type { SignalUnit, ToleranceBasis, ToleranceCombination } from "../../model/instrument-words.ts";
import { convertDifference } from "../../units/convert.ts";
import { type DecimalMark, readNumber } from "../../units/read-number.ts";
import { type UnitSymbol, unitOf, unitTable } from "../../units/unit-table.ts";

/** One term of a tolerance as it was written: how far up and down, in a unit or as a part of something. */
type WrittenTerm = { plus: number; minus: number; basis: ToleranceBasis; unit: UnitSymbol | undefined };

/** A tolerance as it was written: one term or two, and how they belong together. */
export type WrittenTolerance = { first: WrittenTerm; second?: WrittenTerm; combined: ToleranceCombination };

/** What a tolerance in words puts into the row of an instrument. */
export type ToleranceValues = {
  tolerance: number;
  toleranceMinus?: number;
  toleranceBasis: ToleranceBasis;
  secondTolerance?: number;
  secondToleranceMinus?: number;
  secondToleranceBasis?: ToleranceBasis;
  toleranceCombined?: ToleranceCombination;
};

/** The ways that are understood, for whoever wrote another one. */
export const toleranceForms =
  "±0.5 % of span, 0.1 % of reading, ±2 mm, 0.05 mA, +3/−5 mm, 0.5 % of reading + 5 mm, or 0.5 % of reading or 5 mm, whichever is greater";

const greaterWords =
  /,?\s*(?:whichever|which ?ever|what ?ever)\s+(?:is\s+)?(?:the\s+)?(?:greater|greatest|larger|largest|higher|bigger|more)\.?$/u;
const lessWords =
  /,?\s*(?:whichever|which ?ever|what ?ever)\s+(?:is\s+)?(?:the\s+)?(?:less|lesser|least|smaller|smallest|lower|fewer)\.?$/u;
const greaterOf = /^(?:the\s+)?(?:greater|larger|higher|max(?:imum)?)\s*(?:of\b|\()\s*/u;
const lessOf = /^(?:the\s+)?(?:lesser|smaller|lower|min(?:imum)?)\s*(?:of\b|\()\s*/u;

/**
 * Reads a tolerance as the trade writes it: "±0.5 % of reading or 5 mm, whichever is greater", "0.1 %FS + 2 mm",
 * "+3/−5 mm". Nothing where it can be understood in no way or in two.
 */
export function readTolerance(text: string, mark: DecimalMark): WrittenTolerance | undefined {
  const written = text
    .trim()
    .replace(/[\u2212\u2013\ufe63\uff0d]/gu, "-")
    .replace(/\+\s*\/\s*-(?=\s*[\d(.,])/gu, "±")
    .replace(/\s+/gu, " ");
  const lowered = written.toLowerCase();
  const combinations: readonly (readonly [ToleranceCombination, RegExp, RegExp])[] = [
    ["greater", greaterWords, greaterOf],
    ["less", lessWords, lessOf],
  ];
  for (const [combined, behind, before] of combinations) {
    const ending = behind.exec(lowered);
    const opening = before.exec(lowered);
    if (ending === null && opening === null) continue;
    const from = opening?.[0].length ?? 0;
    const to = ending === null ? written.length : ending.index;
    const inner = withoutBrackets(written.slice(from, to));
    const parts = inner.split(opening === null ? /\s+or\s+/iu : /\s*(?:,|;|\band\b|\bor\b)\s+/iu);
    return ofTerms(parts, combined, mark);
  }
  return ofTerms(addedParts(withoutBrackets(written)), "sum", mark);
}

/** "±(0.5 % + 5 mm)" holds for all that stands in the brackets. */
function withoutBrackets(text: string): string {
  const trimmed = text.trim();
  const inner = /^±?\s*\(([^()]*)\)$/u.exec(trimmed)?.[1];
  return (inner ?? trimmed.replace(/\)$/u, "")).trim();
}

/** The terms of a sum: parted by plus signs, by "plus", by a further ±; "a and b, added" as a record's page says it. */
function addedParts(text: string): readonly string[] {
  if (twoSided.test(text)) return [text];
  const added = /^(.*?)\s+and\s+(.*?),?\s+added$/iu.exec(text);
  if (added !== null) return added.slice(1);
  return text.replace(/^[±+]\s*/u, "").split(/\s*(?:\+\s*±|\+|±|\bplus\b)\s*/iu);
}

function ofTerms(
  parts: readonly string[],
  combined: ToleranceCombination,
  mark: DecimalMark,
): WrittenTolerance | undefined {
  const [first, second, ...more] = parts.map((part) => readTerm(part, mark));
  if (first === undefined || more.length > 0 || (parts.length === 2 && second === undefined)) return undefined;
  if (second === undefined) return combined === "sum" ? { first, combined } : undefined;
  return { first, second, combined };
}

const amount = "\\d[\\d\\s]*(?:[.,]\\d+)?|[.,]\\d+";
/** "+3/-5 mm", "+3 mm / -5 mm", "-5 / +3 % of span": two sides, each with its sign. */
const twoSided = new RegExp(
  `^([+-])\\s*(${amount})\\s*([^\\d/+-]*?)\\s*[/,;]?\\s*([+-])\\s*(${amount})\\s*(\\D.*)$`,
  "u",
);
const oneSided = new RegExp(`^±?\\s*(${amount})\\s*(\\D.*)$`, "u");

function readTerm(text: string, mark: DecimalMark): WrittenTerm | undefined {
  const [, firstSign, firstAmount = "", firstUnit = "", secondSign, secondAmount = "", unit = ""] =
    twoSided.exec(text.trim()) ?? [];
  if (firstSign !== undefined) {
    if (firstSign === secondSign || (firstUnit !== "" && firstUnit.trim() !== unit.trim())) return undefined;
    const [plus, minus] = firstSign === "+" ? [firstAmount, secondAmount] : [secondAmount, firstAmount];
    return termOf(plus, minus, unit, mark);
  }
  const [, both, word = ""] = oneSided.exec(text.trim()) ?? [];
  return both === undefined ? undefined : termOf(both, both, word, mark);
}

function termOf(up: string, down: string, word: string, mark: DecimalMark): WrittenTerm | undefined {
  const [plus, minus] = [up, down].map((digits) => readNumber(digits.trim(), mark)?.value);
  const meant = basisOf(word.trim());
  if (plus === undefined || minus === undefined || !(plus > 0) || !(minus > 0) || meant === undefined) return undefined;
  return { plus, minus, ...meant };
}

const ofSpan =
  /^(?:%|percent|per cent)\s*(?:of\s+)?(?:the\s+)?(?:span|fs|f\.?\s?s\.?|full[\s-]?scale|range|measuring range|fsr)$/u;
const ofReading =
  /^(?:%|percent|per cent)\s*(?:of\s+)?(?:the\s+)?(?:reading|rdg\.?|rd\.?|measured value|measured distance|distance|mv|value)$/u;

function basisOf(word: string): Pick<WrittenTerm, "basis" | "unit"> | undefined {
  const lowered = word.toLowerCase();
  if (ofSpan.test(lowered)) return { basis: "percent of span", unit: undefined };
  if (ofReading.test(lowered)) return { basis: "percent of reading", unit: undefined };
  const unit = unitOf(word);
  if (unit === undefined) return undefined;
  const { kind } = unitTable[unit];
  if (kind === "distance") return { basis: "distance", unit };
  return kind === "current" || kind === "voltage" ? { basis: "signal", unit } : undefined;
}

/** The values of the row, each term in the units of its instrument; nothing where a unit does not belong to the loop. */
export function toleranceValues(
  { first, second, combined }: WrittenTolerance,
  units: { distanceUnit?: UnitSymbol | undefined; signalUnit?: SignalUnit | undefined },
): ToleranceValues | undefined {
  const [one, two] = [first, second].map((term) => term && inUnits(term, units));
  if (one === undefined || (second !== undefined && two === undefined)) return undefined;
  return {
    tolerance: one.plus,
    ...(one.minus !== one.plus && { toleranceMinus: one.minus }),
    toleranceBasis: first.basis,
    ...(two && second && { secondTolerance: two.plus, secondToleranceBasis: second.basis }),
    ...(two && two.minus !== two.plus && { secondToleranceMinus: two.minus }),
    ...(two && combined !== "sum" && { toleranceCombined: combined }),
  };
}

function inUnits(
  { plus, minus, basis, unit }: WrittenTerm,
  { distanceUnit, signalUnit }: { distanceUnit?: UnitSymbol | undefined; signalUnit?: SignalUnit | undefined },
): { plus: number; minus: number } | undefined {
  if (unit === undefined) return { plus, minus };
  const own = basis === "distance" ? distanceUnit : signalUnit;
  if (own === undefined || unitTable[own].kind !== unitTable[unit].kind) return undefined;
  return { plus: convertDifference(plus, unit, own), minus: convertDifference(minus, unit, own) };
}
