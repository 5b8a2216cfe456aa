import { functionAfterTrip } from "../../model/function-after-trip.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import type { DraftRow } from "../table-row.ts";
import type { Check, CheckContext } from "./check-context.ts";

type TripDraft = DraftRow<"trips">;

/** The states after the trips of an output agree with each other, and with the function that its row states. */
export const tripStates: Check = (context) => {
  const ofOneOutput = groupedBy(firstOfRuns(context.drafts.trips), ({ row: { calibration, output, phase } }) =>
    JSON.stringify([calibration, output, phase]),
  );
  const stated = new Map(
    context.drafts.outputs.map(({ row }) => [JSON.stringify([row.tag, row.output]), row.function]),
  );
  for (const drafts of ofOneOutput.values()) checkStates(drafts, stated, context);
};

/** Of a run that chatters the first trip alone tells the function. */
function firstOfRuns(drafts: readonly TripDraft[]): readonly TripDraft[] {
  const seen = new Set<string>();
  return drafts.filter(({ row }) => {
    if (row.cycle === undefined) return row.state !== undefined;
    const run = JSON.stringify([row.calibration, row.output, row.phase, row.direction, row.cycle]);
    const isFirst = !seen.has(run);
    seen.add(run);
    return isFirst && row.state !== undefined;
  });
}

function checkStates(
  drafts: readonly TripDraft[],
  functions: ReadonlyMap<string, "NO" | "NC" | undefined>,
  { report, calibrationByName }: CheckContext,
): void {
  const [first] = drafts;
  if (first === undefined) return;
  const { output = "", calibration = "" } = first.row;
  const byFunction = groupedBy(drafts, ({ row }) => functionAfterTrip(row));
  const [most, fewest] = [...byFunction].toSorted(([, one], [, other]) => other.length - one.length);
  if (most === undefined) return;
  const [seen] = most;
  if (fewest !== undefined) {
    for (const draft of fewest[1]) {
      const { direction = "", state = "" } = draft.row;
      const values = { output, state, direction, seen, others: most[1].length };
      report("trips", draft, "model/states-contradicted", { column: "state", values });
    }
    return;
  }
  const tag = calibrationByName.get(calibration)?.row.tag;
  const stated = functions.get(JSON.stringify([tag, output]));
  if (stated === undefined || stated === seen) return;
  report("trips", first, "model/function-contradicted", { column: "state", values: { output, seen, stated } });
}
