import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { mersenne } from "pure-rand/generator/mersenne";

/** A seeded source of chance; another generator than the one that the program draws from. */
export type Random = {
  between: (low: number, high: number) => number;
  /** Evenly over the logarithm. */
  logBetween: (low: number, high: number) => number;
  whole: (least: number, most: number) => number;
  normal: (standardDeviation: number) => number;
  isTrue: (chance: number) => boolean;
  sign: () => 1 | -1;
  pick: <T>(choices: readonly T[]) => T;
};

export function randomFrom(seed: number): Random {
  const generator = mersenne(seed);
  const unit = () => uniformFloat64(generator);
  const between = (low: number, high: number) => low + (high - low) * unit();
  const whole = (least: number, most: number) => least + Math.floor(unit() * (most - least + 1));
  return {
    between,
    logBetween: (low, high) => low * (high / low) ** unit(),
    whole,
    // Box and Muller 1958; the logarithm is kept from 0.
    normal: (standardDeviation) =>
      standardDeviation * Math.sqrt(-2 * Math.log(1 - unit())) * Math.cos(2 * Math.PI * unit()),
    isTrue: (chance) => unit() < chance,
    sign: () => (unit() < 0.5 ? -1 : 1),
    pick: (choices) => choices[whole(0, choices.length - 1)] as (typeof choices)[number],
  };
}
