import type { Direction } from "../../model/calibration-words.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";

/** Where a reading stands in the order of the work: which way the reference went, and in which run out and back. */
export type PlaceInOrder = { direction: Direction; cycle: number };

/** A step over more of the distances than this, against the steps around it, is the way back to begin anew. */
const jumpPart = 0.6;

/**
 * The direction of each reading, and the cycle that it belongs to, as the order of the references tells: rising where the
 * reference rose to it, falling where it fell; where it stands still the way on decides, as at a turning point. A new
 * cycle begins where the references rise again after they fell, or start again from the other end.
 */
export function orderOfReadings(references: readonly number[]): readonly PlaceInOrder[] {
  const span = greatestOf(references) - leastOf(references);
  const steps = references.slice(1).map((reference, place) => reference - (references[place] ?? 0));
  const isJump = (place: number) => {
    const [before, step, next] = [steps[place - 1] ?? 0, steps[place] ?? 0, steps[place + 1] ?? 0];
    return Math.abs(step) > jumpPart * span && step * next < 0 && step * before < 0;
  };
  const on = nextWays(steps);
  let before = 0;
  const directions = references.map((_, place): Direction => {
    const step = place === 0 ? 0 : (steps[place - 1] ?? 0);
    if (step !== 0) before = step;
    const here = place === 0 || isJump(place - 1) ? 0 : step;
    const way = here !== 0 ? here : on[place] !== 0 ? (on[place] ?? 0) : -(before === 0 ? -1 : before);
    return way < 0 ? "falling" : "rising";
  });
  let cycle = 1;
  const first = directions[0];
  return directions.map((direction, place) => {
    const isAgain = place > 0 && (isJump(place - 1) || (direction === first && directions[place - 1] !== first));
    if (isAgain) cycle += 1;
    return { direction, cycle };
  });
}

/** The next step from each place on that leads anywhere; 0 where none does. */
function nextWays(steps: readonly number[]): readonly number[] {
  const ways: number[] = Array.from({ length: steps.length + 1 }, () => 0);
  for (let place = steps.length - 1; place >= 0; place -= 1) ways[place] = steps[place] || (ways[place + 1] ?? 0);
  return ways;
}
