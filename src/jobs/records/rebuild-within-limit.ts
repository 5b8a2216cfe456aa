import type { Doubt } from "../../record/doubt.ts";
import { phasesOf } from "../../record/phases-of.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { rebuildRecord } from "./rebuild-record.ts";

/** Some fifteen seconds; a record that asks for more is not to hold up the verification of a folder for hours. */
const mostDrawnAgain = 30_000_000;

/** A record as its rows give it, and as it is, to be compared; the note says what of it was not made again. */
export type Rebuilt = { made: object; found: object; note?: string };

/**
 * A record made once more from its rows, beside the one that is to be held against it. Budgets that were checked by
 * drawing are drawn again, unless that takes more draws than any record may ask for; then both go without.
 */
export function rebuildWithinLimit(
  record: SealedRecord,
  mostDraws = mostDrawnAgain,
): Rebuilt | { doubts: readonly Doubt[] } {
  const { monteCarloDraws } = record;
  const undrawn = rebuildRecord({ ...record, monteCarloDraws: undefined });
  if ("doubts" in undrawn) return undrawn;
  if (monteCarloDraws === undefined) return { made: asRead(undrawn.record), found: record };
  const draws = monteCarloDraws * budgetsOf(undrawn.record);
  if (draws > mostDraws)
    return { made: withoutDraws(undrawn.record), found: withoutDraws(record), note: noteOf(draws, mostDraws) };
  const drawn = rebuildRecord(record);
  return "doubts" in drawn ? drawn : { made: asRead(drawn.record), found: record };
}

function noteOf(draws: number, mostDraws: number): string {
  return `its budgets were not drawn again, the rest was made again: that takes ${millions(draws)} draws, and a record is given ${millions(mostDraws)} at most`;
}

function millions(count: number): string {
  return `${count / 1e6} million`;
}

/** As the rows give them, not as the record says. */
function budgetsOf(record: SealedRecord): number {
  return phasesOf(record).reduce((sum, { phase }) => sum + phase.points.length + (phase.endPoints?.length ?? 0), 0);
}

function asRead(record: object): object {
  return JSON.parse(JSON.stringify(record));
}

function withoutDraws({ monteCarloDraws: _draws, monteCarloSeed: _seed, ...others }: SealedRecord): object {
  return JSON.parse(JSON.stringify(others), (key, value: unknown) => (key === "monteCarlo" ? undefined : value));
}
