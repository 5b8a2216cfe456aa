/** The trapezoid rule over a normal distribution: places i·step, i from −count to count, and sums of their weights. */
export type NormalRule = { step: number; count: number; sumTo: Float64Array };

/** From where to where a height changes; below and above it is 1, and 0 in between the inner two where they are in order. */
export type ChangingHeight = { from: number; insideFrom: number; insideTo: number; to: number };

/**
 * Places and weights that integrate a smooth function over the standard normal distribution.
 *
 * @param step between places, standard deviations, > 0; the error falls as e^(−2π²·scale²/step²) for a function that
 *   changes as a normal integral of this scale
 * @param reach to either side, standard deviations
 * @returns the rule; its weights sum to 1
 * Source: P. J. Davis, P. Rabinowitz, Methods of Numerical Integration (1984), 2.9.
 * @example normalRule(0.5, 6).sumTo.at(-1) // 1.000000000000
 */
export function normalRule(step: number, reach: number): NormalRule {
  const count = Math.ceil(reach / step);
  const sumTo = new Float64Array(2 * count + 2);
  for (let index = 0; index <= 2 * count; index++)
    sumTo[index + 1] = (sumTo[index] as number) + Math.exp(-0.5 * ((index - count) * step) ** 2);
  const whole = sumTo.at(-1) as number;
  return { step, count, sumTo: sumTo.map((sum) => sum / whole) };
}

/**
 * The mean of a height over a standard normal quantity, asked for only where it changes.
 *
 * @param rule of `normalRule`
 * @param known where the height is 1, and where 0, without being asked for
 * @param height at a number of standard deviations, 0 to 1
 * @returns ∫ φ(z) · height(z) dz
 * Source: as `normalRule`.
 * @example overNormal(normalRule(0.5, 6), { from: -9, insideFrom: 0, insideTo: 0, to: 9 }, (z) => z * z) // 1.000000
 */
export function overNormal(rule: NormalRule, known: ChangingHeight, height: (deviations: number) => number): number {
  const { step, count, sumTo } = rule;
  const last = 2 * count + 1;
  const indexAt = (place: number) => Math.min(last, Math.max(0, Math.ceil(place / step) + count));
  const [start, end] = [indexAt(known.from), Math.max(indexAt(known.from), indexAt(known.to))];
  const skipFrom = Math.min(end, Math.max(start, indexAt(known.insideFrom)));
  const skipTo = Math.min(end, Math.max(skipFrom, indexAt(known.insideTo)));
  const weightOf = (from: number, to: number) => (sumTo[to] as number) - (sumTo[from] as number);
  let sum = weightOf(0, start) + weightOf(end, last);
  for (let index = start; index < end; index++) {
    if (index === skipFrom) index = skipTo;
    if (index < end) sum += weightOf(index, index + 1) * height((index - count) * step);
  }
  return sum;
}
