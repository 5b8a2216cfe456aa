/** Letters of other alphabets that look like Latin ones, small or capital, by the small one. */
const alike: Readonly<Record<string, string>> = {
  ...{ а: "a", в: "b", е: "e", і: "i", ј: "j", к: "k", м: "m", н: "h", о: "o", р: "p", с: "c", ѕ: "s", т: "t", у: "y" },
  ...{ х: "x", ԛ: "q", ԝ: "w" },
  ...{ α: "a", β: "b", ε: "e", ζ: "z", η: "h", ι: "i", κ: "k", μ: "m", ν: "n", ο: "o", ρ: "p", τ: "t", υ: "y", χ: "x" },
};

/**
 * How a name looks to a reader: two names that a person takes for one look the same.
 *
 * Capitals, spaces and characters of no width make no difference; nor do the kinds of hyphens, letters of other alphabets
 * that look like Latin ones, and o, i and l after a digit, which are taken for 0 and 1.
 *
 * @param name a tag or a number, as typed
 * @returns another text, for comparing only
 * Source: own choice, after the idea of a skeleton in UTS #39, 4; the letters are from memory.
 * @example lookOfName("LT-1O1") === lookOfName("lt‑101") // true
 */
export function lookOfName(name: string): string {
  return name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\s\p{Cf}]+/gu, "")
    .replace(/[\p{Pd}\u2212_]/gu, "-")
    .replace(/[а-ѿԀ-ԯα-ω]/gu, (letter) => alike[letter] ?? letter)
    .replace(/(?<=\d[oil]*)[oil]/gu, (letter) => (letter === "o" ? "0" : "1"));
}
