import { copiedPhase } from "../../analysis/plausibility/copied-phase.ts";
import { readingsAgainst } from "../../analysis/plausibility/phase-errors.ts";
import type { Reading } from "../../model/calibration.ts";
import type { TableRow } from "../../model/calibration-case.ts";
import { isAdjusted } from "../../model/is-adjusted.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { counted } from "../../units/counted.ts";
import type { MeasuredPhase, MeasuredRows, Tell } from "./measured-phase.ts";

/** As left has to be that much worse than as found. */
const worseBy = 2;

/**
 * Tells that the phases may be exchanged: by their times or their order in the table, or because an adjustment brought the
 * loop from inside its tolerance to outside; and that as left was copied from as found, though the loop was adjusted.
 *
 * @param rows of the calibration
 * @param phases as they were measured, as far as there are two
 * @param tell where it goes
 * Source: own choice; `copiedPhase`.
 * @example toldBy((tell) => tellPhases(spoiledRows, { asFound: spoiledPhase, asLeft: undefined }, tell)) // []
 */
export function tellPhases(
  rows: MeasuredRows,
  { asFound, asLeft }: { asFound: MeasuredPhase | undefined; asLeft: MeasuredPhase | undefined },
  tell: Tell,
): void {
  const [found, left] = [asFound?.rows ?? [], asLeft?.rows ?? []];
  const [first] = left;
  if (asFound === undefined || asLeft === undefined || first === undefined) return;
  const how = isEarlier(left, found) ?? (isAdjusted(rows.calibration.row) ? isWorse(asFound, asLeft) : undefined);
  if (how !== undefined) tell(first, "plausible/phases-exchanged", { column: "phase", values: { how } });
  const copied = isAdjusted(rows.calibration.row) && copiedPhase(readingsOf(found), readingsOf(left));
  if (!copied) return;
  const values = { same: copied.same, readings: counted(copied.pairs, "reading") };
  tell(first, "plausible/phase-copied", { column: "phase", values });
}

function readingsOf(rows: readonly TableRow<Reading>[]): readonly Reading[] {
  return rows.map(({ row }) => row);
}

/** Every reading as left comes before every one as found, by the clock where it was noted, else in the table. */
function isEarlier(left: readonly TableRow<Reading>[], found: readonly TableRow<Reading>[]): string | undefined {
  const times = [left, found].map((rows) => rows.flatMap(({ row: { time } }) => (time?.includes("-") ? [time] : [])));
  const [ofLeft = [], ofFound = []] = times.map((all) => all.toSorted());
  const areTimed = ofLeft.length === left.length && ofFound.length === found.length;
  if (areTimed) {
    const isBefore = (ofLeft.at(-1) ?? "") < (ofFound[0] ?? "");
    return isBefore ? "the readings as left were taken before those as found" : undefined;
  }
  const isAbove = greatestOf(left.map(({ line }) => line)) < leastOf(found.map(({ line }) => line));
  return isAbove ? "the readings as left stand before those as found" : undefined;
}

function isWorse(asFound: MeasuredPhase, asLeft: MeasuredPhase): string | undefined {
  const [before, after] = [asFound, asLeft].map(({ staged, loop }) => readingsAgainst(staged, loop));
  if (before === undefined || after === undefined || before > 1 || after <= 1 || after < worseBy * before)
    return undefined;
  return "the loop was adjusted, and the readings as found lie inside the tolerance and those as left outside";
}
