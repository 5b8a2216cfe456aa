/** A figure of a published example, beside what this program makes of the same data. */
export type Comparison = {
  figure: string;
  computed: number;
  published: number;
  /** By how much they may differ: half of the last digit that is printed, or what doubles cost. */
  allowed: number;
};

/** A published example: a text where it is no number that is compared. */
export type PublishedExample = {
  name: string;
  /** Document, edition or year, and the place in it. */
  source: string;
  compare: () => readonly (Comparison | TextComparison)[];
};

export type TextComparison = { figure: string; computed: string; published: string };

/** Half a unit of the last printed digit, and a rounding more. */
export function printedTo(lastDigit: number): number {
  return 0.50001 * lastDigit;
}

/** One of so many significant digits. */
export function toDigits(published: number, digits: number): number {
  return Math.abs(published) * 10 ** -digits;
}

/**
 * Figures beside their published values.
 *
 * @param published by the names that the computed object gives them
 * @param computed holds a number under each of those names
 * @param allowed the greatest difference for a published value
 */
export function comparisons(
  published: Readonly<Record<string, number>>,
  computed: object,
  allowed: (value: number, figure: string) => number,
): readonly Comparison[] {
  const found: ReadonlyMap<string, unknown> = new Map(Object.entries(computed));
  return Object.entries(published).map(([figure, value]) => ({
    figure,
    computed: Number(found.get(figure) ?? Number.NaN),
    published: value,
    allowed: allowed(value, figure),
  }));
}
