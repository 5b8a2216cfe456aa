import { groupedBy } from "../../model/grouped-by.ts";
import { median } from "../../numeric/median.ts";
import { robustScale } from "../../numeric/robust-line.ts";
import { theilSenLine } from "../../numeric/theil-sen-line.ts";

/** What a stage was given and what it made of it at one reading, percent of span, in the order of the readings. */
export type OrderedReading = { index: number; point: number; input: number; output: number };

const leastStep = 4;
/** Share of the step of the target that counts as standing still. */
const stillShare = 0.05;
const noiseFactor = 4;
const offFactor = 6;
const fewestOnLine = 3;

/**
 * Finds the readings at which the output stood where it was at the reading before though the target had moved on: what a
 * sensor shows that holds its last value when it loses the target.
 *
 * @param readings in the order in which they were taken
 * @param leastDeviation > 0, percent of span: smaller errors do not matter
 * @param leastScatter >= 0, percent of span: what rounding hides
 * @returns indexes of the held readings; those whose error would not matter are none
 * Source: own choice: a step of at least 4 % of span of which the output made less than 5 % or four scatters, and an
 * error of more than six scatters from the line of the other readings.
 * @example heldReadings([0, 20, 40, 60, 80, 100].map((input, index) => ({ index, point: input, input,
 *   output: index === 3 ? 40 : input })), 1, 0) // [3]
 */
export function heldReadings(
  readings: readonly OrderedReading[],
  leastDeviation: number,
  leastScatter: number,
): readonly number[] {
  const suspects = readings.filter((reading, place) => stoodStill(readings[place - 1], reading, leastScatter));
  const rest = readings.filter((reading) => !suspects.includes(reading));
  const places = medianPlaces(rest);
  if (suspects.length === 0 || new Set(places.map(({ input }) => input)).size < fewestOnLine) return [];
  const line = theilSenLine(
    places.map(({ input }) => input),
    places.map(({ output }) => output),
  );
  const errorOf = ({ input, output }: { input: number; output: number }) =>
    output - line.intercept - line.slope * input;
  const scatter = Math.max(robustScale(rest.map(errorOf)), leastScatter);
  const limit = Math.max(leastDeviation, offFactor * scatter);
  return suspects
    .filter((reading) => {
      const before = readings[readings.indexOf(reading) - 1] as OrderedReading;
      const moved = Math.abs(reading.output - before.output);
      const step = Math.abs(reading.input - before.input);
      return moved <= Math.max(stillShare * step, noiseFactor * scatter) && Math.abs(errorOf(reading)) > limit;
    })
    .map(({ index }) => index);
}

// The scatter is not known yet: whatever moved less than a quarter of the step is looked at again.
function stoodStill(before: OrderedReading | undefined, reading: OrderedReading, leastScatter: number): boolean {
  if (before === undefined) return false;
  const step = Math.abs(reading.input - before.input);
  return step >= leastStep && Math.abs(reading.output - before.output) <= Math.max(step / 4, leastScatter);
}

function medianPlaces(readings: readonly OrderedReading[]): readonly { input: number; output: number }[] {
  return Array.from(groupedBy(readings, ({ point }) => point).values(), (there) => ({
    input: median(there.map(({ input }) => input)),
    output: median(there.map(({ output }) => output)),
  }));
}
