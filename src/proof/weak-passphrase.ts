/** What is tried first by whoever has a key file; whole words would be a list of their own. */
const common =
  /pass(?:word|wort|phrase)|qwert[yz]|azerty|letmein|welcome|secret|admin|kalibr|calibrat|spanwright|iloveyou/giu;
const leastDifferent = 6;
const leastBeside = 8;
const longestRun = 6;

/**
 * Why a passphrase would be guessed soon by whoever has the key file; nothing where no such reason is seen, which does
 * not say that it is a good one.
 *
 * @param passphrase as typed
 * @param name of the person whose key it is, where it is known
 * @returns words for "the passphrase …"
 * Source: NIST SP 800-63B, 5.1.1.2, kinds of passphrases to refuse: repetitive or sequential characters, words of the
 *   service, the user's name; the limits are own choice.
 * @example weakPassphrase("abababababab") // "repeats one piece"
 */
export function weakPassphrase(passphrase: string, name = ""): string | undefined {
  const folded = passphrase.normalize("NFKC").toLowerCase().trim();
  if (/^(.{1,6}?)\1+.{0,5}$/u.test(folded)) return "repeats one piece";
  if (new Set(folded).size < leastDifferent) return `has fewer than ${leastDifferent} different characters`;
  if (runLength(folded) > folded.length - longestRun) return "is a row of neighbouring characters";
  if (folded.replace(common, "").length < leastBeside) return "is a common word with little beside it";
  const names = name
    .toLowerCase()
    .split(/\s+/u)
    .filter((part) => part.length > 2);
  const withoutName = names.reduce((rest, part) => rest.replaceAll(part, ""), folded);
  return withoutName.length < leastBeside && withoutName !== folded
    ? "is the name of its owner with little beside it"
    : undefined;
}

/** How many characters stand beside the one that comes before or after them in order, or are the same. */
function runLength(text: string): number {
  const codes = [...text].map((character) => character.codePointAt(0) ?? 0);
  return codes.filter((code, index) => index > 0 && Math.abs(code - (codes[index - 1] ?? 0)) <= 1).length;
}
