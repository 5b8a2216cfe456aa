import { groupedBy } from "../../model/grouped-by.ts";
import { greatestOf } from "../../numeric/least-and-greatest.ts";
import { type CopiedReading, digitsOf } from "./digits-of.ts";
import { equalPairs, pairsAmong } from "./equal-pairs.ts";

/** How many readings of a phase stand at the place of one of the other phase, and how many have its numbers. */
export type CopiedPhase = { pairs: number; same: number };

const fewest = 3;
const mostByChance = 0.001;
/** Where nothing was read twice, nothing tells how often a display shows the same digits again. */
const unknownAgreement = 0.5;

/**
 * Whether a phase is the other one written down again: more of its readings have the numbers of their counterpart, to the
 * last digit, than repeats within the phases make likely.
 *
 * Counterparts are the readings of one test point, direction and cycle; without names of points, those of one place in
 * their run. k of n the same by chance: the upper tail of the binomial distribution, with the greatest of the rates, each
 * (same + 1)/(pairs + 2), at which repeats, and readings of either direction, have all numbers in common.
 *
 * @param found readings of one phase, in the order of the table
 * @param left readings of the other
 * @returns counts, where chance gives as many less than once in a thousand; three of them at least
 * Source: binomial distribution, NIST/SEMATECH e-Handbook 1.3.6.6.18; P. S. Laplace's rule for the rates; the limit is own
 *   choice.
 * @example ((readings) => copiedPhase(readings, readings))(Array.from({ length: 12 }, (_, at) => ({ direction: "rising",
 *   reference: at, signal: at }))) // { pairs: 12, same: 12 }
 */
export function copiedPhase(found: readonly CopiedReading[], left: readonly CopiedReading[]): CopiedPhase | undefined {
  const before = placesOf(found);
  const pairs = [...placesOf(left)].flatMap(([place, reading]) => {
    const other = before.get(place);
    return other === undefined ? [] : [digitsOf(other) === digitsOf(reading)];
  });
  const same = pairs.filter(Boolean).length;
  if (same < fewest) return undefined;
  const chance = binomialTail(same, pairs.length, agreementOf([found, left]));
  return chance < mostByChance ? { pairs: pairs.length, same } : undefined;
}

/** Each reading under where it was taken. */
function placesOf(readings: readonly CopiedReading[]): ReadonlyMap<string, CopiedReading> {
  const taken = new Map<string, number>();
  return new Map(
    readings.map((reading) => {
      const run = `${reading.point ?? ""} ${reading.direction} ${reading.cycle ?? ""}`;
      const before = taken.get(run) ?? 0;
      taken.set(run, before + 1);
      return [`${run} ${before}`, reading];
    }),
  );
}

/** How often readings of one place have all numbers in common where nobody copied: of one direction, of either. */
function agreementOf(phases: readonly (readonly CopiedReading[])[]): number {
  const placeOf = ({ point, reference }: CopiedReading) => point ?? reference;
  const keys = [placeOf, (reading: CopiedReading) => `${placeOf(reading)} ${reading.direction}`];
  const rates = keys.flatMap((keyOf: (reading: CopiedReading) => string | number) => {
    const groups = phases.flatMap((readings) => [...groupedBy(readings, keyOf).values()]);
    const pairs = sum(groups.map(({ length }) => pairsAmong(length)));
    const same = sum(groups.map((group) => equalPairs(group.map(digitsOf))));
    return pairs === 0 ? [] : [(same + 1) / (pairs + 2)];
  });
  return rates.length === 0 ? unknownAgreement : greatestOf(rates);
}

function sum(counts: readonly number[]): number {
  return counts.reduce((total, count) => total + count, 0);
}

/** Chance of that many or more of so many, each with one chance below 1. */
function binomialTail(least: number, all: number, chance: number): number {
  let term = chance ** all;
  let sum = 0;
  for (let count = all; count >= least; count -= 1) {
    sum += term;
    term *= (count / (all - count + 1)) * ((1 - chance) / chance);
  }
  return sum;
}
