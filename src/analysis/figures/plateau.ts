import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { median } from "../../numeric/median.ts";
import { robustScale } from "../../numeric/robust-line.ts";
import { theilSenLine } from "../../numeric/theil-sen-line.ts";

/** The readings of one test point: what a stage was given and what it made of it, percent of span. */
export type PlateauPoint = { input: number; outputs: readonly number[]; members: readonly number[] };

/** A part of the range, at one end of it, where the output stands still while the input moves. */
export type Plateau = {
  end: "lower" | "upper";
  /** Output there, percent of span. */
  level: number;
  /** Input at which the line of the rest reaches that level, percent of span. */
  knee: number;
  /** How far the outermost output is from the line of the rest, percent of span. */
  deviation: number;
  members: readonly number[];
};

const fewestOnLine = 3;
const fewestOnPlateau = 2;
/** Where the other end stands still, too, the points next to the plateau make the line. */
const nearestOnLine = 4;
/** Of more test points than this, lengths of a plateau are tried in steps at first. */
const mostLengths = 100;
/** Share of the movement of the line that counts as standing still. */
const stillShare = 0.1;
const noiseFactor = 4;
const deviationFactor = 6;
/** One typing error does not undo a plateau; an output that follows now and then does. */
const shareOnLevel = 0.85;

/**
 * Looks for an output that stands still at an end of the range: a clamp, a limit, an obstruction, a blind zone.
 *
 * The outermost two or more test points stand still if their outputs differ by less than 10 % of what the line of the
 * others would move (and 85 % of their readings lie at that level), and the outermost lies farther from that line
 * than `leastDeviation`, than 6 times the scatter, and than half of that movement.
 *
 * @param points one a test point, any order, at least five; inputs in percent of span
 * @param leastDeviation > 0, percent of span: smaller deviations do not matter
 * @param leastScatter >= 0, percent of span: what rounding hides
 * @returns the plateaus found, at most one at each end
 * Source: own choice; the knee is where the line of the rest reaches the level.
 * @example plateausOf([0, 20, 40, 60, 80, 100].map((input, index) => ({ input, outputs: [Math.min(input, 70)],
 *   members: [index] })), 1, 0)[0] // { end: "upper", level: 70, knee: 70, deviation: -30, members: [4, 5] }
 */
export function plateausOf(
  points: readonly PlateauPoint[],
  leastDeviation: number,
  leastScatter: number,
): readonly Plateau[] {
  const rising = points
    .map((point) => ({ ...point, output: median(point.outputs) }))
    .sort((left, right) => left.input - right.input);
  const search = (places: readonly Place[]) => (end: Plateau["end"]) =>
    plateauAt(end === "upper" ? places : places.toReversed(), end, leastDeviation, leastScatter);
  const found = (["lower", "upper"] as const).map(search(rising)).filter((plateau) => plateau !== undefined);
  const [longest, shorter] = found.toSorted((left, right) => right.members.length - left.members.length);
  if (longest === undefined || shorter === undefined) return found;
  // The longer one would bend the line by which the shorter one was judged, so that one has to stand without it.
  const others = rising.filter(({ members }) => !members.some((member) => longest.members.includes(member)));
  const still = search(others)(shorter.end);
  return still === undefined ? [longest] : [longest, still];
}

type Place = PlateauPoint & { output: number };

/**
 * The end in question comes last; the longest plateau wins. Of many points not every length is tried, and then those
 * just above the longest that stood still, so that the work grows with the points and not with their cube.
 */
function plateauAt(
  places: readonly Place[],
  end: Plateau["end"],
  leastDeviation: number,
  leastScatter: number,
): Plateau | undefined {
  const most = places.length - fewestOnLine;
  const step = Math.max(1, Math.ceil((most - fewestOnPlateau) / mostLengths));
  const plateauOf = (count: number): Plateau | undefined => {
    const still = places.slice(-count);
    const rest = places.slice(0, -count);
    const found =
      standsStill(still, rest, leastDeviation, leastScatter) ??
      standsStill(still, rest.slice(-nearestOnLine), leastDeviation, leastScatter);
    return found && { end, ...found, members: still.flatMap(({ members }) => members) };
  };
  for (let count = most; count >= fewestOnPlateau; count -= step) {
    const found = plateauOf(count);
    if (found === undefined) continue;
    for (let longer = Math.min(most, count + step - 1); longer > count; longer -= 1) {
      const also = plateauOf(longer);
      if (also !== undefined) return also;
    }
    return found;
  }
  return undefined;
}

function standsStill(
  still: readonly Place[],
  rest: readonly Place[],
  leastDeviation: number,
  leastScatter: number,
): Pick<Plateau, "level" | "knee" | "deviation"> | undefined {
  const inputs = rest.map(({ input }) => input);
  if (new Set(inputs).size < fewestOnLine) return undefined;
  const line = theilSenLine(
    inputs,
    rest.map(({ output }) => output),
  );
  const valueAt = (input: number) => line.intercept + line.slope * input;
  const level = median(still.flatMap(({ outputs }) => outputs));
  const last = still.at(-1) as Place;
  const movement = Math.abs(line.slope) * (greatestOf(stillInputs(still)) - leastOf(stillInputs(still)));
  const deviation = level - valueAt(last.input);
  // The scatter takes longer than all the rest, and is asked only where nothing else says no.
  if (!(Math.abs(deviation) > Math.max(leastDeviation, deviationFactor * leastScatter, movement / 2))) return undefined;
  const deviations = rest.flatMap((place) => deviationsFrom(place, valueAt(place.input)));
  const scatter = Math.max(robustScale(deviations), leastScatter);
  const isOff = Math.abs(deviation) > deviationFactor * scatter;
  const isStill = isOff && standsWithin({ still, rest, level, movement, scatter }, leastScatter);
  return isStill ? { level, knee: (level - line.intercept) / line.slope, deviation } : undefined;
}

type Standing = {
  still: readonly Place[];
  rest: readonly Place[];
  level: number;
  /** Of the line where the output should stand still, and the scatter of the rest about it; percent of span. */
  movement: number;
  scatter: number;
};

/** What takes long is asked last, for most lengths of most loops are no plateau. */
function standsWithin({ still, rest, level, movement, scatter }: Standing, leastScatter: number): boolean {
  const outputs = still.map(({ output }) => output);
  const moved = greatestOf(outputs) - leastOf(outputs);
  const isWithin = (noise: number) => moved <= stillShare * movement + noiseFactor * noise;
  return (
    isWithin(scatter) &&
    shareWithin(still, level, Math.max(noiseFactor * scatter, stillShare * movement)) >= shareOnLevel &&
    // A bend makes the rest scatter about its line, too: what stands still does so within the noise of its repeats.
    isWithin(repeatScatter([...still, ...rest], leastScatter))
  );
}

/** Standard deviation of repeats, by the median of their sizes; that of anything where nothing was repeated. */
function repeatScatter(places: readonly Place[], leastScatter: number): number {
  const deviations = places
    .filter(({ outputs }) => outputs.length > 1)
    .flatMap((place) => deviationsFrom(place, place.output));
  return deviations.length === 0 ? Number.POSITIVE_INFINITY : Math.max(robustScale(deviations), leastScatter);
}

function shareWithin(still: readonly Place[], level: number, limit: number): number {
  const deviations = still.flatMap((place) => deviationsFrom(place, level));
  return deviations.filter((deviation) => Math.abs(deviation) <= limit).length / deviations.length;
}

function deviationsFrom({ outputs }: PlateauPoint, level: number): readonly number[] {
  return outputs.map((output) => output - level);
}

function stillInputs(still: readonly Place[]): readonly number[] {
  return still.map(({ input }) => input);
}
