import type { Reading } from "../../model/calibration.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import { agreementBySteps } from "./agreement-by-steps.ts";
import { digitsOf } from "./digits-of.ts";
import { equalPairs, pairsAmong } from "./equal-pairs.ts";

/** A reading that only repeats the digits of another, and what was copied: the row alone, a run of one direction, a cycle. */
export type Copy = { index: number; original: number; of: "row" | "run" | "cycle" };

type Numbered = { index: number; reading: Reading; cycle: number; digits: string; outputs: string };

/** Runs and rows of that many readings at least, where chance makes as many agree so seldom. */
const fewest = 3;
const mostByChance = 0.01;

/**
 * The readings of a phase that are no readings of their own: the same in every number as another one.
 *
 * A row that is there twice is a copy, and one too many in its cycle that another cycle has too. Of a cycle that repeats an
 * earlier one to the last digit, of a run of one direction, and of single rows of other cycles, it is said only where
 * chance does not explain it: a coarse display shows the same digits again.
 *
 * @param readings of one phase, in the order of the table; rejected ones are passed over
 * @returns the copies in the order of the table, each with the first reading of the same digits
 * Source: own choice.
 * @example copiedReadings([{ calibration: "C-1", phase: "as_found", cycle: 1, direction: "rising", reference: 49.96,
 *   signal: 4.919 }, { calibration: "C-1", phase: "as_found", cycle: 1, direction: "rising", reference: 49.96,
 *   signal: 4.919 }]) // [{ index: 1, original: 0, of: "row" }]
 */
export function copiedReadings(readings: readonly Reading[]): readonly Copy[] {
  if (!areSomeAlike(readings)) return [];
  const numbered = numberedReadings(readings);
  const copies = new Map<number, Copy>();
  const left = () => numbered.filter(({ index }) => !copies.has(index));
  for (const copy of rowsTwice(numbered)) copies.set(copy.index, copy);
  for (const copy of copiedCycles(left())) copies.set(copy.index, copy);
  for (const copy of copiedRuns(left())) copies.set(copy.index, copy);
  for (const copy of surplusRows(left())) copies.set(copy.index, copy);
  for (const copy of rowsBeyondChance(left())) copies.set(copy.index, copy);
  return [...copies.values()].toSorted((one, other) => one.index - other.index);
}

/** Asked first, of the few that share a reference: in most tables no two readings are the same in every number. */
function areSomeAlike(readings: readonly Reading[]): boolean {
  const atOne = [...groupedBy(readings, ({ reference }) => reference).values()].filter(({ length }) => length > 1);
  return atOne.some((group) => new Set(group.map(placedDigits)).size < group.length);
}

function numberedReadings(readings: readonly Reading[]): readonly Numbered[] {
  const seen = new Map<string, number>();
  return readings.flatMap((reading, index) => {
    const outputs = outputsOf(reading);
    if (reading.rejected !== undefined || outputs === nothingRead) return [];
    const place = `${reading.point ?? reading.reference} ${reading.direction}`;
    const times = (seen.get(place) ?? 0) + 1;
    seen.set(place, times);
    return [{ index, reading, cycle: reading.cycle ?? times, digits: placedDigits(reading), outputs }];
  });
}

function placedDigits(reading: Reading): string {
  return `${reading.direction} ${reading.point} ${digitsOf(reading)}`;
}

/** The same in every cell; without a cycle only where one stands right under the other, for a repeat may look the same. */
function rowsTwice(numbered: readonly Numbered[]): readonly Copy[] {
  const firsts = new Map<string, Numbered>();
  return numbered.flatMap((one, place) => {
    const { time = "", cycle, remark = "" } = one.reading;
    const before = numbered[place - 1];
    if (cycle === undefined) {
      const isTwice = before?.digits === one.digits && (before.reading.time ?? "") === time;
      return isTwice ? [{ index: one.index, original: before.index, of: "row" as const }] : [];
    }
    const key = JSON.stringify([one.digits, cycle, time, remark]);
    const first = firsts.get(key);
    if (first === undefined) firsts.set(key, one);
    return first === undefined ? [] : [{ index: one.index, original: first.index, of: "row" as const }];
  });
}

function copiedCycles(numbered: readonly Numbered[]): readonly Copy[] {
  const cycles = [...groupedBy(numbered, ({ cycle }) => cycle).values()];
  const originals: (readonly Numbered[])[] = [];
  const agreement = agreementAmong(placesOf(numbered));
  return cycles.flatMap((members) => {
    const original = originals.find((one) => members.length >= 2 && repeats(members, one));
    if (original === undefined) {
      originals.push(members);
      return [];
    }
    return isBeyondChance(members.length, cycles.length, agreement) ? copiesOf(members, original, "cycle") : [];
  });
}

/** Whether so many readings, each the same in every number as its fellow, are more than others at one place make likely. */
function isBeyondChance(count: number, candidates: number, { pairs, all }: Pick<Agreement, "pairs" | "all">): boolean {
  const ofOne = (all - count + 1) / (pairs - count + 2);
  return candidates ** 2 * ofOne ** count < mostByChance;
}

function copiedRuns(numbered: readonly Numbered[]): readonly Copy[] {
  const runs = [...groupedBy(numbered, ({ cycle, reading }) => `${reading.direction} ${cycle}`).values()];
  const originals: (readonly Numbered[])[] = [];
  const agreement = agreementAmong(groupsOfRepeats(numbered));
  return runs.flatMap((members) => {
    const isLong = members.length >= fewest;
    const original = isLong ? originals.find((one) => repeats(members, one)) : undefined;
    if (original === undefined) {
      originals.push(members);
      return [];
    }
    return isBeyondChance(members.length, runs.length, agreement) ? copiesOf(members, original, "run") : [];
  });
}

function repeats(members: readonly Numbered[], others: readonly Numbered[]): boolean {
  const digits = new Set(others.map((other) => other.digits));
  return members.every((member) => digits.has(member.digits));
}

function copiesOf(members: readonly Numbered[], originals: readonly Numbered[], of: Copy["of"]): readonly Copy[] {
  return members.flatMap(({ index, digits }) => {
    const original = originals.find((other) => other.digits === digits);
    return original === undefined ? [] : [{ index, original: original.index, of }];
  });
}

type Agreement = { pairs: number; all: number; references: number; outputs: number };

/** How many pairs of readings of one group there are, and in how many all numbers, the references, the outputs agree. */
function agreementAmong(groups: readonly (readonly Numbered[])[]): Agreement {
  const agreement = { pairs: 0, all: 0, references: 0, outputs: 0 };
  for (const group of groups) {
    agreement.pairs += pairsAmong(group.length);
    agreement.all += equalPairs(group.map(({ reading, outputs }) => `${reading.reference} ${outputs}`));
    agreement.references += equalPairs(group.map(({ reading }) => reading.reference));
    agreement.outputs += equalPairs(group.map(({ outputs }) => outputs));
  }
  return agreement;
}

function placeOf({ reading: { point, reference } }: Numbered): number {
  // Without a nominal position, readings of one reference are all that repeats can be told by.
  return point ?? reference;
}

function groupsOfRepeats(numbered: readonly Numbered[]): readonly (readonly Numbered[])[] {
  return [...groupedBy(numbered, (one) => `${placeOf(one)} ${one.reading.direction}`).values()];
}

/** Readings at one place, of either direction: how often their numbers agree tells how coarse the digits are. */
function placesOf(numbered: readonly Numbered[]): readonly (readonly Numbered[])[] {
  return [...groupedBy(numbered, placeOf).values()];
}

/** A second reading of one point in one run, with the numbers of another cycle. */
function surplusRows(numbered: readonly Numbered[]): readonly Copy[] {
  const named = numbered.filter(({ reading: { cycle, point } }) => cycle !== undefined && point !== undefined);
  const placeOf = ({ cycle, reading }: Numbered) => JSON.stringify([cycle, reading.direction, reading.point]);
  const twice = [...groupedBy(named, placeOf).values()].filter(({ length }) => length === 2);
  if (twice.length > fewest) return [];
  return twice.flatMap((pair) => {
    const found = pair.flatMap(({ index, cycle, digits }) => {
      const original = named.find((other) => other.digits === digits && other.cycle !== cycle);
      return original === undefined ? [] : [{ index, original: original.index, of: "row" as const }];
    });
    return found.slice(0, 1);
  });
}

function outputsOf({ signal, signalAtCard, counts, value }: Reading): string {
  return `${signal} ${signalAtCard} ${counts} ${value}`;
}

const nothingRead = "undefined undefined undefined undefined";

/** At the same reference an output shows the same digits more often than elsewhere: own choice. */
const leastAgreement = 0.2;

/**
 * More pairs agree in every number than chance makes agree: by how often the references agree alone, and by how many of
 * those of one reference show the same output, or of one place read in the other direction.
 */
function rowsBeyondChance(numbered: readonly Numbered[]): readonly Copy[] {
  const { pairs, all, references, outputs } = agreementAmong(groupsOfRepeats(numbered));
  const smoothed = (agreeing: number) => (agreeing - all + 1) / (pairs - all + 2);
  const atPlaces = agreementAmong(placesOf(numbered));
  const acrossDirections = (atPlaces.outputs - outputs) / Math.max(1, atPlaces.pairs - pairs);
  const ofOneReference = Math.max(leastAgreement, smoothed(outputs), acrossDirections);
  if (all < fewest) return [];
  const byRates = Math.max(pairs * smoothed(references), references * ofOneReference);
  const groups = groupsOfRepeats(numbered);
  const byPlace = groups.toSorted((one, other) => placeOf(one[0] as Numbered) - placeOf(other[0] as Numbered));
  const placed = byPlace.map((group) => group.map(({ reading }) => reading));
  const isBeyond =
    poissonTail(all, byRates) < mostByChance || poissonTail(all, pairs * agreementBySteps(placed)) < mostBySteps;
  if (!isBeyond) return [];
  return groups.flatMap((group) =>
    group.flatMap(({ index, digits }, place) => {
      const original = group.slice(0, place).find((other) => other.digits === digits);
      return original === undefined ? [] : [{ index, original: original.index, of: "row" as const }];
    }),
  );
}

/** Steps say less surely than rates how often digits come again. */
const mostBySteps = 1e-4;

/** Chance of that many or more where so many are expected. */
function poissonTail(count: number, expected: number): number {
  let term = Math.exp(-expected);
  let below = 0;
  for (let k = 0; k < count; k += 1) {
    below += term;
    term *= expected / (k + 1);
  }
  return Math.max(0, 1 - below);
}
