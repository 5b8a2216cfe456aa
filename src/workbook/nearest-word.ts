/** As many letters may differ in a word that was probably meant. */
const greatestDistance = 2;

/** The word that differs least from what was written, or nothing where none comes near. */
export function nearestWord(written: string, words: readonly string[]): string | undefined {
  let nearest: string | undefined;
  let least = Math.min(greatestDistance, Math.floor(written.length / 2)) + 1;
  for (const word of words) {
    const distance = lettersBetween(written, word);
    if (distance >= least) continue;
    least = distance;
    nearest = word;
  }
  return nearest;
}

/** How many letters have to be put in, taken out or exchanged (Levenshtein distance), row by row. */
function lettersBetween(from: string, to: string): number {
  if (Math.abs(from.length - to.length) > greatestDistance) return Number.POSITIVE_INFINITY;
  let above = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let row = 1; row <= from.length; row += 1) {
    const current = [row];
    for (let index = 1; index <= to.length; index += 1) {
      const exchanged = (above[index - 1] ?? 0) + (from[row - 1] === to[index - 1] ? 0 : 1);
      current.push(Math.min(exchanged, (above[index] ?? 0) + 1, (current[index - 1] ?? 0) + 1));
    }
    above = current;
  }
  return above[to.length] ?? 0;
}

/** In a shorter word a letter more or less makes another word. */
const shortestSlip = 4;

/** Whether one slip of the hand makes one word of the other: a letter too many, missing, wrong, or two exchanged. */
export function isOneSlip(written: string, word: string): boolean {
  if (written === word || Math.min(written.length, word.length) < shortestSlip) return false;
  if (lettersBetween(written, word) === 1) return true;
  if (written.length !== word.length) return false;
  const differing = [...word].flatMap((letter, place) => (letter === written[place] ? [] : [place]));
  const [first = 0, second = 0] = differing;
  const areExchanged = written[first] === word[second] && written[second] === word[first];
  return differing.length === 2 && second === first + 1 && areExchanged;
}
