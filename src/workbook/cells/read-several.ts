import type { CellResult } from "./cell-result.ts";
import { readChoice } from "./read-choice.ts";

const between = /\s*(?:[;,+&/|]|\band\b)\s*/iu;

/** Several words of a choice in one cell: the one that weighs most, and the others. */
export type SeveralWords = { value: string; others: readonly string[] };

/**
 * The words of a cell that names several of a choice; nothing where it names one alone, or something that is none of them.
 * A word that is not among those that weigh something, as "none" is, goes with no other.
 */
export function readSeveral(
  text: string,
  choices: readonly string[],
  order: readonly string[],
): SeveralWords | undefined {
  if ("value" in readChoice(text, choices)) return undefined;
  const words = text.split(between).map((word): CellResult<string> => readChoice(word, choices));
  const read = new Set(words.flatMap((word) => ("value" in word ? [word.value] : [])));
  const isRead = words.every((word) => "value" in word && order.includes(word.value));
  const value = order.find((word) => read.has(word));
  return isRead && value !== undefined
    ? { value, others: order.filter((word) => word !== value && read.has(word)) }
    : undefined;
}
