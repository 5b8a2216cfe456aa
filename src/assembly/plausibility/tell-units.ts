import { outputScales, referenceScales, type Scale } from "../../analysis/plausibility/scales.ts";
import {
  areReferencesOutside,
  isUnknownScale,
  type UnitOfAll,
  unitOfAll,
} from "../../analysis/plausibility/unit-of-all.ts";
import { phaseInWords } from "../../model/calibration-words.ts";
import { columnName } from "../../model/column-name.ts";
import { type Axis, axes } from "../../model/loop-stages.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { writePlain } from "../../units/write-number.ts";
import { type MeasuredPhase, ownUnit } from "./measured-phase.ts";

/**
 * Tells the column whose numbers as a whole fit another unit, if there is one.
 *
 * @param phase on one scale
 * @returns whether something was told: then the numbers of the phase say nothing more
 * Source: `unitOfAll`.
 * @example tellUnits(spoiledPhase) // false
 */
export function tellUnits(phase: MeasuredPhase): boolean {
  const found = axes.flatMap((axis) => {
    const fit = unitOfAll(phase.staged, axis, scalesOf(phase, axis));
    return fit === undefined ? [] : [{ axis, fit }];
  });
  const [best] = found.toSorted((one, other) => one.fit.after - other.fit.after);
  if (best !== undefined) {
    tellFit(phase, best.axis, best.fit);
    return true;
  }
  const unknown = (["signal", "signalAtCard"] as const).filter((axis) => isUnknownScale(phase.staged, axis));
  for (const axis of unknown) tellUnknown(phase, axis);
  if (unknown.length === 0 && areReferencesOutside(phase.staged)) {
    tellOutside(phase);
    return true;
  }
  return unknown.length > 0;
}

/**
 * The other units that a column of readings may be written in.
 *
 * @param phase with its loop and instrument
 * @param axis the column
 * @returns scales by `referenceScales` and `outputScales`
 * Source: as there.
 * @example scalesOf(spoiledPhase, "reference")[0].unit // "cm"
 */
export function scalesOf(
  { loop, instrument }: Pick<MeasuredPhase, "loop" | "instrument">,
  axis: Axis,
): readonly Scale[] {
  return axis === "reference" ? referenceScales(loop, instrument.distanceUnit) : outputScales(loop, axis, instrument);
}

function tellFit({ phase, staged, rows, instrument, tell }: MeasuredPhase, axis: Axis, fit: UnitOfAll): void {
  const first = staged.find(({ reading }) => reading[axis] !== undefined);
  const row = rows[first?.index ?? -1];
  if (row === undefined) return;
  const { scale, before, after } = fit;
  const values = {
    phase: phaseInWords[phase],
    unit: scale.unit,
    own: ownUnit(instrument, axis) || "the unit of the controller",
    before: writePlain(Number(before.toPrecision(3))),
    after: writePlain(Number(after.toPrecision(2))),
  };
  const code = scale.ofRange ? "plausible/unit-of-range" : "plausible/unit-of-column";
  tell(row, code, { column: columnName(axis), values });
}

function tellOutside({ phase, staged, rows, instrument, tell }: MeasuredPhase): void {
  const row = rows[staged[0]?.index ?? -1];
  if (row === undefined) return;
  const references = staged.map(({ reading }) => reading.reference);
  const values = {
    phase: phaseInWords[phase],
    lower: writePlain(instrument.rangeLower),
    upper: writePlain(instrument.rangeUpper),
    own: instrument.distanceUnit,
    least: writePlain(leastOf(references)),
    greatest: writePlain(greatestOf(references)),
  };
  tell(row, "plausible/references-outside", { column: "reference", values });
}

function tellUnknown({ phase, staged, rows, instrument, tell }: MeasuredPhase, axis: "signal" | "signalAtCard"): void {
  const numbers = staged.flatMap(({ index, reading }) =>
    reading[axis] === undefined ? [] : [{ index, number: reading[axis] }],
  );
  const row = rows[numbers[0]?.index ?? -1];
  if (row === undefined) return;
  const values = {
    phase: phaseInWords[phase],
    lower: instrument.signalLower,
    upper: instrument.signalUpper,
    own: instrument.signalUnit,
    least: writePlain(leastOf(numbers.map(({ number }) => number))),
    greatest: writePlain(greatestOf(numbers.map(({ number }) => number))),
  };
  tell(row, "plausible/scale-unknown", { column: columnName(axis), values });
}
