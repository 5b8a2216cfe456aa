import { phases } from "../../model/calibration-words.ts";
import type { DraftRow } from "../table-row.ts";
import type { CheckContext, ReadingsCheck } from "./check-context.ts";
import { shownNumber } from "./shown-number.ts";

/** Share of its span by which a reference, or a signal, may lie outside its range. */
const overshootAllowed = 0.1;

/** Far above rounding in the two subtractions, far below anything that a person could mean. */
const roundingAllowed = 1e-9;

/** Each calibration has readings. */
export const hasReadings: ReadingsCheck = ({ calibrations, readings }, { isKnown, report }) => {
  if (!isKnown("readings") || readings.some(({ row }) => row.rejected === undefined)) return;
  for (const draft of calibrations) {
    if (draft.row.calibration !== undefined) report("calibrations", draft, "model/no-readings");
  }
};

/** Each reading says something. */
export const saysSomething: ReadingsCheck = ({ readings }, { report }) => {
  for (const draft of readings) {
    const { signal, counts, value } = draft.cells;
    const isMute = signal === undefined && counts === undefined && value === undefined;
    if (isMute) report("readings", draft, "model/nothing-measured");
  }
};

/** Each reading lies inside the range, and is one that the instrument gives a meaning. */
export const measured: ReadingsCheck = ({ name, readings }, context) => {
  const instrument = instrumentOf(name, context);
  if (instrument === undefined) return;
  for (const draft of readings) {
    checkReference(draft, instrument, context);
    checkSignal(draft, instrument, context);
  }
  checkScaled(readings, instrument, context);
  for (const phase of phases) {
    checkJudged(
      readings.filter(({ row }) => row.phase === phase && row.rejected === undefined),
      instrument,
      context,
    );
  }
};

function instrumentOf(
  calibration: string | undefined,
  context: CheckContext,
): DraftRow<"instruments">["row"] | undefined {
  const tag = calibration === undefined ? undefined : context.calibrationByName.get(calibration)?.row.tag;
  return tag === undefined ? undefined : context.instrumentByTag.get(tag)?.row;
}

function checkReference(
  draft: DraftRow<"readings">,
  { rangeLower, rangeUpper, distanceUnit }: DraftRow<"instruments">["row"],
  { report }: CheckContext,
): void {
  const { reference, rejected } = draft.row;
  if (reference === undefined || rangeLower === undefined || rangeUpper === undefined || rejected !== undefined) return;
  if (rangeUpper <= rangeLower || !isFarOutside(reference, rangeLower, rangeUpper)) return;
  const values = {
    reference: shownNumber(reference),
    lower: shownNumber(rangeLower),
    upper: shownNumber(rangeUpper),
    unit: distanceUnit ?? "",
  };
  report("readings", draft, "model/reading-outside-range", { column: "reference", values });
}

/** A signal that no working loop gives is a fault, or was mistyped: the program cannot tell, the technician can. */
function checkSignal(
  draft: DraftRow<"readings">,
  { signalLower, signalUpper, signalUnit }: DraftRow<"instruments">["row"],
  { report }: CheckContext,
): void {
  const { signal, rejected } = draft.row;
  if (signal === undefined || signalLower === undefined || signalUpper === undefined || rejected !== undefined) return;
  const [lower, upper] = [Math.min(signalLower, signalUpper), Math.max(signalLower, signalUpper)];
  if (lower === upper || !isFarOutside(signal, lower, upper)) return;
  const values = {
    signal: shownNumber(signal),
    lower: shownNumber(lower),
    upper: shownNumber(upper),
    unit: signalUnit ?? "",
  };
  report("readings", draft, "model/signal-outside-range", { column: "signal", values });
}

function isFarOutside(value: number, lower: number, upper: number): boolean {
  return Math.max(lower - value, value - upper) / (upper - lower) > overshootAllowed + roundingAllowed;
}

/** Once a calibration: the first reading stands for all of them. */
function checkScaled(
  drafts: readonly DraftRow<"readings">[],
  { countsLower, valueLower }: DraftRow<"instruments">["row"],
  { report }: CheckContext,
): void {
  const counted = countsLower === undefined ? drafts.find(({ row }) => row.counts !== undefined) : undefined;
  if (counted !== undefined) report("readings", counted, "model/counts-unscaled", { column: "counts" });
  const valued = valueLower === undefined ? drafts.find(({ row }) => row.value !== undefined) : undefined;
  if (valued !== undefined) report("readings", valued, "model/value-unscaled", { column: "value" });
}

/** Once a phase: no reading of it has a quantity that the instrument gives a meaning. */
function checkJudged(
  drafts: readonly DraftRow<"readings">[],
  { countsLower, valueLower }: DraftRow<"instruments">["row"],
  { report }: CheckContext,
): void {
  const isJudged = drafts.some(
    ({ cells }) =>
      cells.signal !== undefined ||
      (cells.counts !== undefined && countsLower !== undefined) ||
      (cells.value !== undefined && valueLower !== undefined),
  );
  const measured = drafts.find(({ cells }) => cells.counts !== undefined || cells.value !== undefined);
  if (isJudged || measured === undefined) return;
  report("readings", measured, "model/nothing-judged", {
    values: { phase: measured.row.phase?.replace("_", " ") ?? "" },
  });
}
