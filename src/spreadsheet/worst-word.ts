/** The words of a decision, from the worst. */
const fromWorst = [
  "fail",
  "conditional fail",
  "cannot be decided",
  "not complete",
  "conditional pass",
  "pass",
] as const;
type Word = (typeof fromWorst)[number];

/** A formula for the worst word of which there is any; `count` is a formula for how many there are. */
export function worstWord(count: (word: Word) => string): string {
  return fromWorst.reduceRight((rest, word) => `IF(${count(word)}>0,"${word}",${rest})`, `"not determined"`);
}

/** The same over cells that hold a word each, or none. */
export function worstWordOf(cells: readonly string[]): string {
  return worstWord((word) => cells.map((cell) => `(${cell}="${word}")`).join("+") || "0");
}
