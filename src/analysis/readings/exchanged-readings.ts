import { groupedBy } from "../../model/grouped-by.ts";
import { median } from "../../numeric/median.ts";
import { robustScale } from "../../numeric/robust-line.ts";
import { theilSenLine } from "../../numeric/theil-sen-line.ts";

/** What a stage was given and what it made of it at one reading, percent of span. */
export type GivenAndMade = { index: number; point: number; input: number; output: number };

/** Two readings that fit when they change places. */
export type ExchangedPair = { first: number; second: number; before: number; after: number };

/** Own choice: so many scatters off the line as they stand, within so many when exchanged. */
const beyondScatters = 6;
const withinScatters = 3;
/** What fits less well than that, and yet lies in what matters to nobody, has to explain this part of it all but one. */
const muchBetter = 20;
const fewest = 5;
/** More pairs than one in ten readings are no slips. */
const mostPart = 0.1;
const mostOneByOne = 60;
const fewestPlaces = 3;

/**
 * The pairs of readings whose outputs were noted in each other's row: as they stand both lie far out, exchanged both fit.
 *
 * @param readings of one stage
 * @param leastDeviation percent of span: what lies less far out is left alone
 * @param leastScatter percent of span: what rounding hides
 * @returns pairs by index, the best fit first; each reading in one pair at most
 * Source: own choice; the line of H. Theil and P. K. Sen, which a pair does not move.
 * @example exchangedReadings([0, 10, 20, 30, 40, 60, 50, 70, 80, 90].map((output, place) => ({ index: place, point: 10 *
 *   place, input: 10 * place, output })), 0.5, 0.01)[0] // { first: 5, second: 6, before: 10, after: 0 }
 */
export function exchangedReadings(
  readings: readonly GivenAndMade[],
  leastDeviation: number,
  leastScatter: number,
): readonly ExchangedPair[] {
  const inputs = readings.map(({ input }) => input);
  if (readings.length < fewest || new Set(inputs).size < fewestPlaces) return [];
  const line = lineOf(readings);
  const off = (input: number, output: number) => output - line.intercept - line.slope * input;
  const residuals = readings.map(({ input, output }) => off(input, output));
  const scatter = Math.max(robustScale(residuals), leastScatter);
  const far = Math.max(leastDeviation, beyondScatters * scatter);
  const near = Math.max(leastDeviation / 2, withinScatters * scatter);
  const suspects = readings.filter((_, place) => Math.abs(residuals[place]!) > far);
  const pairs = suspects.flatMap((one, place) =>
    suspects.slice(place + 1).flatMap((other): ExchangedPair[] => {
      if (one.point === other.point) return [];
      const after = Math.max(Math.abs(off(one.input, other.output)), Math.abs(off(other.input, one.output)));
      const before = Math.min(Math.abs(off(one.input, one.output)), Math.abs(off(other.input, other.output)));
      const isBetter = after <= near ? after < before / 3 : after <= leastDeviation && after < before / muchBetter;
      return isBetter ? [{ first: one.index, second: other.index, before, after }] : [];
    }),
  );
  const apart = apartPairs(pairs.toSorted((one, other) => one.after - other.after));
  return apart.length > Math.max(1, mostPart * readings.length) || isFewToJudge(residuals, far) ? [] : apart;
}

/** Many readings are many repeats: the medians of the test points are enough, and quicker. */
function lineOf(readings: readonly GivenAndMade[]) {
  const groups = [...groupedBy(readings, ({ point }) => point).values()];
  const isLong = readings.length > mostOneByOne && groups.length >= fewestPlaces;
  const places = isLong ? groups : readings.map((one) => [one]);
  return theilSenLine(
    places.map((group) => median(group.map(({ input }) => input))),
    places.map((group) => median(group.map(({ output }) => output))),
  );
}

function apartPairs(pairs: readonly ExchangedPair[]): readonly ExchangedPair[] {
  const taken = new Set<number>();
  return pairs.filter(({ first, second }) => {
    if (taken.has(first) || taken.has(second)) return false;
    taken.add(first).add(second);
    return true;
  });
}

/** Where the middle of all readings is far out itself, the line says nothing. */
function isFewToJudge(residuals: readonly number[], far: number): boolean {
  return median(residuals.map(Math.abs)) > far;
}
