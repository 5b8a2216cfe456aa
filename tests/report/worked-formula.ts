/** A term or a formula that the sheet prints, as it stands there. */
const signs: readonly (readonly [RegExp, string])[] = [
  [/×/gu, "*"],
  [/÷/gu, "/"],
  [/−/gu, "-"],
  [/ %/gu, " * 0.01"],
];

/**
 * What a printed formula gives for one row, as a reader with a pocket calculator would find it: each letter stands for
 * the number printed in its column. Nothing of the program that printed it is used.
 */
export function workedFormula(formula: string, numberByLetter: ReadonlyMap<string, number>): number {
  const arithmetic = signs.reduce((text, [sign, operator]) => text.replace(sign, operator), formula);
  const filled = arithmetic.replace(/[A-Z]/gu, (letter) => {
    const number = numberByLetter.get(letter);
    if (number === undefined) throw new RangeError(`workedFormula: no number in column ${letter} of ${formula}`);
    return `(${number})`;
  });
  if (!/^[\d\s.()*/+-]+(?:e-?\d+)?[\d\s.()*/+-]*$/u.test(filled))
    throw new RangeError(`workedFormula: cannot follow ${formula}`);
  return Function(`"use strict"; return ${filled}`)() as number;
}

/** The number that a cell prints. */
export function printedNumber(text: string): number {
  return Number(text.replace("−", "-").replace("±", ""));
}
