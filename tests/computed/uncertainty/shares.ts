import { clopperPearson } from "../../../src/numeric/clopper-pearson.ts";

/** How often something was so, and the 95 % interval of Clopper and Pearson for how often it is; parts of 1. */
export type Share = { of: number; count: number; share: number; low: number; high: number };

/** Of things that are independent of each other. */
export function shareOf<Item>(items: readonly Item[], isSo: (item: Item) => boolean): Share {
  const count = items.filter(isSo).length;
  return { of: items.length, count, share: count / items.length, ...clopperPearson(count, items.length) };
}

/**
 * The mean of parts, one of each record, with its interval of ± 1.96 standard errors: for what the records have several
 * of that are not independent.
 */
export function meanShare(parts: readonly number[]): Pick<Share, "share" | "low" | "high"> {
  const share = meanOf(parts);
  const squares = parts.reduce((sum, part) => sum + (part - share) ** 2, 0);
  const error = 1.96 * Math.sqrt(squares / (parts.length - 1) / parts.length);
  return { share, low: share - error, high: share + error };
}

export function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/**
 * The chance of that many or fewer of `of`, each with the probability p: the tail of the binomial distribution, added up.
 * @example chanceOfAtMost(1, 3, 0.5) // 0.5
 */
export function chanceOfAtMost(most: number, of: number, probability: number): number {
  // By logarithms, for the first terms may be smaller than any number.
  const odds = Math.log(probability) - Math.log1p(-probability);
  let term = of * Math.log1p(-probability);
  let sum = Math.exp(term);
  for (let count = 1; count <= most; count += 1) {
    term += Math.log((of - count + 1) / count) + odds;
    sum += Math.exp(term);
  }
  return sum;
}

/** What a test here may fail by, though all is as it should be. */
const mostChance = 1e-6;

/**
 * The fewest of `of` that do not come by chance alone, each with the probability p: fewer come with less than 10⁻⁶.
 * @example fewestByChance(100, 0.94) // 81
 */
export function fewestByChance(of: number, probability: number): number {
  let fewest = 0;
  while (fewest < of && chanceOfAtMost(fewest, of, probability) < mostChance) fewest += 1;
  return fewest;
}

/** The most of `of`: more come with less than 10⁻⁶. */
export function mostByChance(of: number, probability: number): number {
  return of - fewestByChance(of, 1 - probability);
}

/**
 * Chances of none, one, two … of several things of which each has a chance of its own.
 * @example countsOf([0.5, 0.5]) // [0.25, 0.5, 0.25]
 */
export function countsOf(chances: readonly number[]): readonly number[] {
  return chances.reduce<readonly number[]>(
    (before, chance) =>
      Array.from({ length: before.length + 1 }, (_, count) => {
        return (before[count] ?? 0) * (1 - chance) + (before[count - 1] ?? 0) * chance;
      }),
    [1],
  );
}

/** "95.2 (94.1 to 96.0)", in percent. */
export function withInterval({ share, low, high }: Pick<Share, "share" | "low" | "high">, decimals = 1): string {
  return `${percent(share, decimals)} (${percent(Math.max(0, low), decimals)} to ${percent(Math.min(1, high), decimals)})`;
}

export function percent(part: number, decimals = 1): string {
  return (100 * part).toFixed(decimals);
}
