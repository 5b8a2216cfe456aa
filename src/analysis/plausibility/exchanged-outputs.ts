/** Where an output is meant to switch and where it does, and how far apart these may lie; distances in one unit. */
export type PlacedOutput = { output: string; setPoint: number; at: number; allowed: number };

/** What an exchange leaves of the distance that it explains, at most: own choice. */
const leaves = 1 / 3;

/**
 * Pairs of switched outputs that each trip where the other one is set to: the outputs, their cores or their names may be
 * exchanged.
 *
 * @param outputs of one tag and phase
 * @returns names of the two of each pair; none where either of them trips where it is meant to
 * Source: own choice.
 * @example exchangedOutputs([{ output: "Q1", setPoint: 400, at: 900.3, allowed: 5 },
 *   { output: "Q2", setPoint: 900, at: 400.1, allowed: 5 }]) // [["Q1", "Q2"]]
 */
export function exchangedOutputs(outputs: readonly PlacedOutput[]): readonly (readonly [string, string])[] {
  return outputs.flatMap((one, place) =>
    outputs
      .slice(place + 1)
      .filter((other) => isAtThatOf(one, other) && isAtThatOf(other, one))
      .map((other) => [one.output, other.output] as const),
  );
}

function isAtThatOf({ at, setPoint, allowed }: PlacedOutput, other: PlacedOutput): boolean {
  const off = Math.abs(at - setPoint);
  return off > allowed && Math.abs(at - other.setPoint) <= leaves * off;
}
