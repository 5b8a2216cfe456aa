import { tripDirections } from "../../model/calibration-words.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import type { DraftRow } from "../table-row.ts";
import type { Check, CheckContext } from "./check-context.ts";
import { shownNumber } from "./shown-number.ts";

/** Common practice. */
const fewestApproaches = 3;

/** Set points lie inside the range; each output was tripped in both directions, three times on approach at least. */
export const trips: Check = (context) => {
  for (const draft of context.drafts.outputs) checkSetPoint(draft, context);
  const tripped = tripsOfOutputs(context);
  checkLimited(tripped, context);
  const ofOneOutput = groupedBy(tripped, ({ row: { calibration, output, phase } }) =>
    JSON.stringify([calibration, output, phase]),
  );
  for (const draft of context.drafts.trips) checkPlace(draft, context);
  for (const drafts of ofOneOutput.values()) {
    checkRuns(drafts, context);
    checkExchanged(drafts, context);
  }
};

function checkSetPoint(draft: DraftRow<"outputs">, { instrumentByTag, report }: CheckContext): void {
  const { tag, setPoint } = draft.row;
  const { rangeLower, rangeUpper, distanceUnit = "" } = instrumentByTag.get(tag ?? "")?.row ?? {};
  if (setPoint === undefined || rangeLower === undefined || rangeUpper === undefined) return;
  if (rangeUpper <= rangeLower || (setPoint >= rangeLower && setPoint <= rangeUpper)) return;
  const values = {
    setPoint: shownNumber(setPoint),
    lower: shownNumber(rangeLower),
    upper: shownNumber(rangeUpper),
    unit: distanceUnit,
  };
  report("outputs", draft, "model/set-point-outside-range", { column: "set_point", values });
}

/** Only an output that was tripped is judged at all. */
function checkLimited(
  tripped: readonly DraftRow<"trips">[],
  { drafts, report, calibrationByName }: CheckContext,
): void {
  const named = new Set(
    tripped.map(({ row: { calibration = "", output } }) =>
      JSON.stringify([calibrationByName.get(calibration)?.row.tag, output]),
    ),
  );
  for (const draft of drafts.outputs) {
    const { tag, output } = draft.row;
    const isLimited = draft.cells.set_point_tolerance !== undefined;
    if (output === undefined || isLimited || !named.has(JSON.stringify([tag, output]))) continue;
    report("outputs", draft, "model/set-point-unlimited", { values: { output } });
  }
}

function checkPlace(draft: DraftRow<"trips">, { calibrationByName, instrumentByTag, report }: CheckContext): void {
  const { calibration = "", reference } = draft.row;
  const tag = calibrationByName.get(calibration)?.row.tag ?? "";
  const { rangeLower, rangeUpper, distanceUnit = "" } = instrumentByTag.get(tag)?.row ?? {};
  if (reference === undefined || rangeLower === undefined || rangeUpper === undefined) return;
  if (rangeUpper <= rangeLower || (reference >= rangeLower && reference <= rangeUpper)) return;
  const values = {
    reference: shownNumber(reference),
    lower: shownNumber(rangeLower),
    upper: shownNumber(rangeUpper),
    unit: distanceUnit,
  };
  report("trips", draft, "model/trip-outside-range", { column: "reference", values });
}

/** Whichever way an output acts, its travel lags behind the target: it lets go farther away than it operates. */
function checkExchanged(
  drafts: readonly DraftRow<"trips">[],
  { calibrationByName, instrumentByTag, report }: CheckContext,
): void {
  for (const cycle of groupedBy(drafts, ({ row }) => row.cycle).values()) {
    const [approach, ...moreApproaches] = cycle.filter(({ row }) => row.direction === "approach");
    const [recede, ...moreRecedes] = cycle.filter(({ row }) => row.direction === "recede");
    const isPair = moreApproaches.length === 0 && moreRecedes.length === 0;
    const [near, far] = [approach?.row.reference, recede?.row.reference];
    if (!isPair || recede === undefined || near === undefined || far === undefined || far >= near) continue;
    const tag = calibrationByName.get(recede.row.calibration ?? "")?.row.tag ?? "";
    const values = {
      output: recede.row.output ?? "",
      recede: shownNumber(far),
      approach: shownNumber(near),
      unit: instrumentByTag.get(tag)?.row.distanceUnit ?? "",
      line: approach?.line ?? 0,
    };
    report("trips", recede, "model/trips-exchanged", { column: "direction", values });
  }
}

/** Of an output that is not there it was said already. */
function tripsOfOutputs({ drafts, calibrationByName }: CheckContext): readonly DraftRow<"trips">[] {
  const known = new Set(drafts.outputs.map(({ row }) => JSON.stringify([row.tag, row.output])));
  return drafts.trips.filter(({ row: { calibration = "", output } }) =>
    known.has(JSON.stringify([calibrationByName.get(calibration)?.row.tag, output])),
  );
}

/** Once an output and phase: the first trip stands for all of them. */
function checkRuns(drafts: readonly DraftRow<"trips">[], { report }: CheckContext): void {
  const [first] = drafts;
  const { output, phase, direction } = first?.row ?? {};
  if (first === undefined || output === undefined || phase === undefined) return;
  const present = tripDirections.filter((one) => drafts.some(({ row }) => row.direction === one));
  const words = { output, phase: phase.replace("_", " ") };
  if (present.length === 1 && direction !== undefined) {
    report("trips", first, "model/trips-one-direction", { column: "direction", values: { ...words, direction } });
  }
  const approaches = drafts.filter(({ row }) => row.direction === "approach").length;
  if (approaches === 0 || approaches >= fewestApproaches) return;
  report("trips", first, "model/few-approaches", { values: { ...words, approaches } });
}
