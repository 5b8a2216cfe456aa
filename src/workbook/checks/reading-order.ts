import type { Reading } from "../../model/calibration.ts";
import { groupedBy } from "../grouped-by.ts";
import type { DraftRow } from "../table-row.ts";
import type { Check } from "./check-context.ts";

type ReadingDraft = DraftRow<"readings">;

/** Rising readings rise and falling readings fall, within a run out or back; told once a run. */
export const readingOrder: Check = ({ readingsByCalibration, report }) => {
  for (const drafts of readingsByCalibration.values()) {
    for (const run of runsOf(drafts)) {
      const turned = run.find((draft, index) => turnsBack(run[index - 1]?.row, draft.row));
      if (turned === undefined) continue;
      const { direction = "rising", cycle = 1 } = turned.row;
      const values = { actual: direction === "rising" ? "down" : "up", direction, cycle };
      report("readings", turned, "model/readings-out-of-order", { column: "reference", values });
    }
  }
};

/** Readings that follow each other in one phase and cycle, parted where the direction changes. */
function runsOf(drafts: readonly ReadingDraft[]): readonly ReadingDraft[][] {
  const used = drafts.filter(({ row }) => row.rejected === undefined && row.direction !== undefined);
  const cycles = groupedBy(used, ({ row }) => `${row.phase} ${row.cycle}`);
  return [...cycles.values()].flatMap((cycle) => {
    const runs: ReadingDraft[][] = [];
    for (const draft of cycle) {
      const last = runs.at(-1);
      if (last?.[0]?.row.direction === draft.row.direction) last?.push(draft);
      else runs.push([draft]);
    }
    return runs;
  });
}

/** Readings of one named point may scatter either way. */
function turnsBack(before: Partial<Reading> | undefined, { point, reference, direction }: Partial<Reading>): boolean {
  if (before?.reference === undefined || reference === undefined) return false;
  if (point !== undefined && point === before.point) return false;
  return direction === "rising" ? reference < before.reference : reference > before.reference;
}
