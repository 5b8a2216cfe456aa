import { slipThatFits } from "../../analysis/plausibility/typing-alternatives.ts";
import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import type { Reading } from "../../model/calibration.ts";
import type { TableRow } from "../../model/calibration-case.ts";
import { type DistanceUnit, distanceUnits } from "../../model/instrument-words.ts";
import { spanOf } from "../../model/range.ts";
import { gapShare } from "../../model/test-points.ts";
import { convert } from "../../units/convert.ts";
import type { DecimalMark } from "../../units/read-number.ts";
import { writePlain } from "../../units/write-number.ts";
import { type MeasuredPhase, shown, writtenIn } from "./measured-phase.ts";

/** So near to one has to be a ratio that two units explain. */
const ratioWithin = 0.02;

/**
 * Tells where the nominal position of a reading and its reference do not belong together: the same distance in two units,
 * or more than 2 % of span apart.
 *
 * @param phase with its rows
 * @param markOf decimal mark of a file
 * @returns lines of the readings that were told
 * Source: own choice, the same 2 % of span that part two test points.
 * @example tellPoints(spoiledPhase, () => "point").size // 0
 */
export function tellPoints(phase: MeasuredPhase, markOf: (file: string) => DecimalMark): ReadonlySet<number> {
  const told = new Set<number>();
  const span = spanOf(phase.loop.characteristics.signal);
  const used = phase.rows.filter(({ row }) => row.rejected === undefined);
  for (const row of used) {
    const { point, reference } = row.row;
    if (point === undefined) continue;
    const unit = unitBetween(reference, point, phase.instrument.distanceUnit);
    const isApart = Math.abs(reference - point) > gapShare * span;
    if (unit !== undefined) tellUnit(phase, row, unit);
    else if (isApart) tellApart(phase, row, markOf);
    if (unit !== undefined || isApart) told.add(row.line);
  }
  return told;
}

/** The unit in which one of two distances is the other. */
function unitBetween(reference: number, point: number, own: DistanceUnit): DistanceUnit | undefined {
  if (reference === 0 || point === 0) return undefined;
  const isSame = (one: number, other: number) => Math.abs(one / other - 1) <= ratioWithin;
  return distanceUnits.find(
    (unit) =>
      unit !== own && (isSame(convert(reference, unit, own), point) || isSame(convert(point, unit, own), reference)),
  );
}

function tellUnit({ instrument, tell }: MeasuredPhase, row: TableRow<Reading>, unit: DistanceUnit): void {
  const { point = 0, reference } = row.row;
  const values = { reference: writePlain(reference), point: writePlain(point), unit, own: instrument.distanceUnit };
  tell(row, "plausible/point-unit", { column: "reference", values });
}

/** What would fit: a reference that one slip makes of the typed one, or the nominal position of another reading. */
function tellApart(phase: MeasuredPhase, row: TableRow<Reading>, markOf: (file: string) => DecimalMark): void {
  const { point = 0, reference } = row.row;
  const { instrument, resolutions, tell, rows } = phase;
  const span = spanOf(phase.loop.characteristics.signal);
  const written = writtenIn(row, "reference", markOf);
  const fits = (meant: number) => Math.abs(meant - point);
  const slip = written && slipThatFits(written.value, written.decimals, fits, (gapShare * span) / 2);
  const others = rows.flatMap((other) => (other.row.point === undefined ? [] : [other.row.point]));
  const nearest = others.toSorted((one, other) => Math.abs(one - reference) - Math.abs(other - reference))[0];
  const isNear = nearest !== undefined && Math.abs(nearest - reference) <= gapShare * span && !isPointRight(phase, row);
  const hints = [
    ...(isNear ? [`point ${writePlain(nearest)}`] : []),
    ...(slip ? [`reference ${shown(slip.meant, resolutions.reference.decimals)} (${slip.kind})`] : []),
  ];
  const values = {
    reference: writePlain(reference),
    point: writePlain(point),
    own: instrument.distanceUnit,
    percent: writePlain(Number(((100 * Math.abs(reference - point)) / span).toPrecision(3))),
    hint: hints.length === 0 ? "" : `; ${hints.join(", or ")} would fit`,
  };
  tell(row, "plausible/point-apart", { column: "reference", values });
}

/** The signal of the row, or the controller's value, is that of its point: then no other point would fit. */
function isPointRight({ rows, staged, loop }: MeasuredPhase, row: TableRow<Reading>): boolean {
  const { point = 0, reference } = row.row;
  const { percent } = staged.find(({ index }) => rows[index] === row) ?? {};
  const seen = percent?.signal ?? percent?.value;
  if (seen === undefined) return false;
  const distance = inUnitOf(loop, "reference", seen);
  return Math.abs(distance - point) < Math.abs(distance - reference);
}
