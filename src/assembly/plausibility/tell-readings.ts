import { type ApartReading, readingsApart } from "../../analysis/plausibility/readings-apart.ts";
import { slipThatFits } from "../../analysis/plausibility/typing-alternatives.ts";
import { faultSide } from "../../analysis/readings/fault-signal.ts";
import { indicatedDistance } from "../../analysis/readings/ideal-characteristic.ts";
import type { Loop } from "../../analysis/readings/loop.ts";
import { axisCharacteristic, inUnitOf } from "../../analysis/stages/staged-readings.ts";
import { phaseInWords } from "../../model/calibration-words.ts";
import { columnName } from "../../model/column-name.ts";
import type { Axis } from "../../model/loop-stages.ts";
import { spanOf } from "../../model/range.ts";
import type { DecimalMark } from "../../units/read-number.ts";
import { writePlain } from "../../units/write-number.ts";
import { type MeasuredPhase, ownUnit, shown, writtenIn } from "./measured-phase.ts";
import { scalesOf } from "./tell-units.ts";

type MarkOf = (file: string) => DecimalMark;

/** What is known beside the phase: where else its numbers could belong, and which rows were told already. */
export type ReadingDoubts = { other: MeasuredPhase | undefined; told: ReadonlySet<number>; markOf: MarkOf };

/**
 * Tells the readings that their fellows contradict, each with what would fit: another unit, the other phase, exchanged with
 * another row, a slip of the typing hand.
 *
 * @param phase on one scale
 * @param doubts other phase, lines that were told already, decimal mark of a file
 * Source: `readingsApart`, `slipThatFits`.
 * @example toldBy((tell) => tellReadings({ ...spoiledPhase, tell }, { other: undefined, told: new Set(),
 *   markOf: () => "point" })) // ["plausible/reading-apart 5"]
 */
export function tellReadings(phase: MeasuredPhase, { other, told, markOf }: ReadingDoubts): void {
  const apart = readingsApart(phase.staged, phase).filter(({ index }) => !told.has(phase.rows[index]?.line ?? 0));
  const exchanged = new Set<ApartReading>();
  for (const one of apart) {
    const partner = apart.find((candidate) => candidate !== one && isExchanged(phase, one, candidate));
    if (partner === undefined) continue;
    if (!exchanged.has(partner)) tellExchanged(phase, one, partner);
    exchanged.add(one);
  }
  for (const one of apart) {
    if (exchanged.has(one)) continue;
    const unit = isFault(phase, one.index) ? undefined : unitThatFits(phase, one, markOf);
    if (unit !== undefined) tellUnit(phase, one, unit);
    else if (other !== undefined && fitsIn(other, phase, one)) tellOtherPhase(phase, other, one);
    else tellApart(phase, one, markOf);
  }
}

/** Part of the signal's span within which a sensor that reports a fault keeps to its level: common practice. */
const nearLevel = 0.03;

/**
 * A signal at a fault level is a fault that was reported, unless a slip makes it one: no number in another unit. One far
 * beyond the level is what no sensor gives, and may be either.
 */
function isFault({ rows, loop }: MeasuredPhase, index: number): boolean {
  const { signal } = rows[index]?.row ?? {};
  const side = signal === undefined ? "none" : faultSide(signal, loop.faultLevels);
  if (signal === undefined || side === "none") return false;
  const { outputAtLower, outputAtUpper } = loop.characteristics.signal;
  const level = loop.faultLevels[side];
  return level !== undefined && Math.abs(signal - level) <= nearLevel * Math.abs(outputAtUpper - outputAtLower);
}

function percentOf(loop: Loop, axis: Axis, written: number): number {
  const characteristic = axisCharacteristic(loop, axis);
  if (characteristic === undefined) return Number.NaN;
  return (100 * (indicatedDistance(characteristic, written) - characteristic.rangeLower)) / spanOf(characteristic);
}

/** Each of the two numbers is what the other row asks for. */
function isExchanged({ staged }: MeasuredPhase, one: ApartReading, other: ApartReading): boolean {
  if (one.axis !== other.axis || one.isOfAll || other.isOfAll) return false;
  const percent = (index: number) => staged.find((reading) => reading.index === index)?.percent[one.axis] ?? Number.NaN;
  const within = Math.max(one.limit, other.limit);
  return (
    Math.abs(percent(other.index) - one.expected) <= within && Math.abs(percent(one.index) - other.expected) <= within
  );
}

function tellExchanged({ rows, instrument, tell }: MeasuredPhase, one: ApartReading, other: ApartReading): void {
  const [row, partner] = [rows[one.index], rows[other.index]];
  if (row === undefined || partner === undefined) return;
  const column = columnName(one.axis);
  const values = {
    column,
    typed: writePlain(row.row[one.axis] ?? 0),
    other: writePlain(partner.row[one.axis] ?? 0),
    own: ownUnit(instrument, one.axis),
    line: partner.line,
  };
  tell(row, "plausible/rows-exchanged", { column, values });
}

type UnitThatFits = { axis: Axis; unit: string; expected: number };

/** The other unit in which the number fits: in its own column or, where nothing tells which is wrong, in the reference. */
function unitThatFits(phase: MeasuredPhase, one: ApartReading, markOf: MarkOf): UnitThatFits | undefined {
  const row = phase.rows[one.index];
  if (row === undefined || one.isOfAll) return undefined;
  for (const { axis, expected } of suspects(phase, one)) {
    const written = writtenIn(row, axis, markOf);
    if (written === undefined) continue;
    const scale = scalesOf(phase, axis).find(
      ({ ofRange, unit, percentOf: inUnit }) =>
        // A meter's numbers as a whole may be distances; one alone among them is none.
        (axis === "reference" || axis === "value" || unit !== phase.instrument.distanceUnit) &&
        ofRange === undefined &&
        Math.abs(inUnit(written.value) - expected) <= one.limit,
    );
    if (scale !== undefined) return { axis, unit: scale.unit, expected };
  }
  return undefined;
}

/** The columns that may be wrong, with what would fit in each, percent of span. */
function suspects({ staged }: MeasuredPhase, one: ApartReading): readonly { axis: Axis; expected: number }[] {
  const own = { axis: one.axis, expected: one.expected };
  if (!one.isEither) return [own];
  const reference = staged.find(({ index }) => index === one.index)?.percent.reference ?? 0;
  return [own, { axis: "reference", expected: reference + one.deviation }];
}

function tellUnit(phase: MeasuredPhase, { index }: ApartReading, { axis, unit, expected }: UnitThatFits): void {
  const { rows, loop, instrument, resolutions, tell } = phase;
  const row = rows[index];
  if (row === undefined) return;
  const column = columnName(axis);
  const decimals = axis === "signalAtCard" ? resolutions.signal.decimals : resolutions[axis].decimals;
  const values = {
    typed: `${column} ${writePlain(row.row[axis] ?? 0)}`,
    unit,
    own: ownUnit(instrument, axis) || "the unit of the controller",
    expected: shown(inUnitOf(loop, axis, expected), decimals),
  };
  tell(row, "plausible/unit-of-row", { column, values });
}

/** Whether a reading that does not fit its own phase fits the readings of the other one. */
function fitsIn(other: MeasuredPhase, phase: MeasuredPhase, one: ApartReading): boolean {
  const reading = phase.staged.find(({ index }) => index === one.index);
  if (reading === undefined) return false;
  const guest = { ...reading, index: -1 };
  const found = readingsApart([...other.staged, guest], other);
  return other.staged.length >= fewestFellows && !found.some(({ index }) => index === -1);
}

const fewestFellows = 4;

function tellOtherPhase(phase: MeasuredPhase, other: MeasuredPhase, { index, deviation }: ApartReading): void {
  const row = phase.rows[index];
  if (row === undefined) return;
  const values = {
    percent: percentWords(deviation),
    phase: phaseInWords[phase.phase],
    other: phaseInWords[other.phase],
  };
  phase.tell(row, "plausible/reading-of-other-phase", { column: "phase", values });
}

function tellApart(phase: MeasuredPhase, one: ApartReading, markOf: MarkOf): void {
  const { rows, loop, instrument, resolutions, tell } = phase;
  const row = rows[one.index];
  if (row === undefined) return;
  const found = suspects(phase, one).map(({ axis, expected }) => {
    const written = one.isOfAll ? undefined : writtenIn(row, axis, markOf);
    const missedBy = (meant: number) => Math.abs(percentOf(loop, axis, meant) - expected);
    const slip = written && slipThatFits(written.value, written.decimals, missedBy, one.limit);
    return { axis, expected, slip };
  });
  if (isFault(phase, one.index) && found.every(({ slip }) => slip === undefined)) return;
  // Where the number of one column is a slip away from what fits and that of the other is not, it is that column.
  const { axis, expected, slip } =
    found.find((candidate) => candidate.slip !== undefined) ?? (found[0] as (typeof found)[0]);
  const rest = found.find((candidate) => candidate.axis !== axis);
  const decimals = (of: Axis) => (of === "signalAtCard" ? resolutions.signal : resolutions[of]).decimals;
  const number = (of: Axis, percent: number) => shown(inUnitOf(loop, of, percent), decimals(of));
  const hints = [
    ...(slip ? [`${writePlain(Number(slip.meant.toPrecision(12)))} is one slip away: ${slip.kind}`] : []),
    ...(rest ? [`or ${columnName(rest.axis)} ${number(rest.axis, rest.expected)}`] : []),
    ...(one.isOfAll ? ["the other columns of the row agree with it"] : []),
  ];
  const values = {
    column: columnName(axis),
    typed: writePlain(row.row[axis] ?? 0),
    own: ownUnit(instrument, axis),
    percent: percentWords(one.deviation),
    expected: number(axis, expected),
    hint: hints.length === 0 ? "" : ` (${hints.join("; ")})`,
  };
  tell(row, "plausible/reading-apart", { column: columnName(axis), values });
}

function percentWords(percent: number): string {
  return writePlain(Number(Math.abs(percent).toPrecision(3)));
}
