import { compareRecords } from "../../proof/compare-records.ts";
import { differenceDoubts } from "../../proof/difference-doubts.ts";
import type { Doubt } from "../../record/doubt.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { rebuildWithinLimit } from "../records/rebuild-within-limit.ts";

/** Doubts about the figures of a record; the note says what of them was not made again. */
export type FigureDoubts = { doubts: readonly Doubt[]; note?: string };

/** What the rows of a record do not give so, or not at all. */
export function figureDoubts(record: SealedRecord): FigureDoubts {
  try {
    const rebuilt = rebuildWithinLimit(record);
    if ("doubts" in rebuilt) return rebuilt;
    const { made, found, note } = rebuilt;
    return { doubts: differenceDoubts(compareRecords(made, found)), ...(note === undefined ? {} : { note }) };
  } catch (fault) {
    return { doubts: [cannotBeMade("figures", "inputs.rows", fault)] };
  }
}

/** Only a record that was tampered with, by somebody who sealed it anew, gets here. */
export function cannotBeMade(about: Doubt["about"], place: string, fault: unknown): Doubt {
  const why = fault instanceof Error ? fault.message : String(fault);
  return { about, place, says: `they cannot be made from this record: ${why}` };
}
