import { phaseInWords } from "../../model/calibration-words.ts";
import type { DraftRow } from "../table-row.ts";
import type { ReadingsCheck } from "./check-context.ts";

type ReadingDraft = DraftRow<"readings">;

/** A run of a phase so short, among rows of the other one, is a slip and not a second visit. */
const mostOfSlip = 2;
/** More changes from phase to phase than that come of another way to order the table. */
const mostRuns = 6;
const mostPart = 0.2;

/** The rows as found stand together and before those as left; a row or two among the others are told. */
export const phaseOrder: ReadingsCheck = ({ readings }, { report }) => {
  const runs = runsOf(readings.filter(({ row }) => row.rejected === undefined && row.phase !== undefined));
  const isInOrder = runs.length <= 2 && runs[0]?.[0]?.row.phase === "as_found";
  if (isInOrder || runs.length > Math.max(mostRuns, mostPart * readings.length)) return;
  for (const [place, run] of runs.entries()) {
    const [before, after] = [runs[place - 1], runs[place + 1]];
    const around = [before, after].filter((one) => one !== undefined);
    const isShortest = around.every(({ length }) => length >= run.length);
    const isAlone = around.some(({ length }) => length > run.length);
    if (run.length > mostOfSlip || !isShortest || !isAlone) continue;
    for (const draft of run) {
      const phase = phaseInWords[draft.row.phase ?? "as_left"];
      const values = { phase, others: phase === "as found" ? "as left" : "as found" };
      report("readings", draft, "model/phase-contradicted", { column: "phase", values });
    }
  }
};

function runsOf(drafts: readonly ReadingDraft[]): readonly (readonly ReadingDraft[])[] {
  const runs: ReadingDraft[][] = [];
  for (const draft of drafts) {
    const last = runs.at(-1);
    if (last?.[0]?.row.phase === draft.row.phase) last?.push(draft);
    else runs.push([draft]);
  }
  return runs;
}
