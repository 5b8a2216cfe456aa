import { exchangedOutputs } from "../../analysis/plausibility/exchanged-outputs.ts";
import { tripsApart } from "../../analysis/plausibility/trips-apart.ts";
import { slipThatFits } from "../../analysis/plausibility/typing-alternatives.ts";
import type { Trip } from "../../model/calibration.ts";
import type { TableRow } from "../../model/calibration-case.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import type { Output } from "../../model/instrument.ts";
import { type DistanceUnit, distanceUnits } from "../../model/instrument-words.ts";
import { spanOf } from "../../model/range.ts";
import { gapShare } from "../../model/test-points.ts";
import { median } from "../../numeric/median.ts";
import { convert } from "../../units/convert.ts";
import { writePlain } from "../../units/write-number.ts";
import { typedResolution } from "../phase/typed-resolution.ts";
import { type MeasuredRows, shown, type Tell, writtenIn } from "./measured-phase.ts";

/** What fits another unit lies so near to what it should be, and so far off as it stands; parts of the span. */
const unitWithin = 0.02;
const unitBeyond = 0.1;
/** What a slip leaves of the distance that it explains, at most: own choice. */
const slipLeaves = 1 / 3;

/**
 * Tells the trips of switched outputs that are in another unit or far from their fellows.
 *
 * @param rows of the calibration
 * @param tell where its problems go
 * Source: `tripsApart`; `unit-table.ts` for the factors.
 * @example toldBy((tell) => tellTrips(spoiledRows, tell)) // ["plausible/trip-apart 4"]
 */
export function tellTrips(rows: MeasuredRows, tell: Tell): void {
  for (const trips of groupedBy(rows.trips, ({ row: { phase } }) => phase).values()) tellExchanged(rows, trips, tell);
  const groups = groupedBy(rows.trips, ({ row: { output, phase } }) => JSON.stringify([output, phase]));
  for (const trips of groups.values()) {
    const output = rows.outputs.find(({ row }) => row.output === trips[0]?.row.output)?.row;
    if (output !== undefined) tellOutput(rows, { trips, output }, tell);
  }
}

/** Told once a pair, at the first trip of the one that stands first among the outputs. */
function tellExchanged({ outputs, instrument }: MeasuredRows, trips: readonly TableRow<Trip>[], tell: Tell): void {
  const placed = outputs.flatMap(({ row: { output, setPoint, setPointTolerance, criticalDirection = "approach" } }) => {
    const own = trips.filter(({ row }) => row.output === output && row.direction === criticalDirection);
    const allowed = setPointTolerance ?? gapShare * spanOf(instrument.row);
    return own.length === 0
      ? []
      : [{ output, setPoint, at: median(own.map(({ row }) => row.reference)), allowed, first: own[0] }];
  });
  for (const [one, other] of exchangedOutputs(placed)) {
    const { at = 0, first } = placed.find(({ output }) => output === one) ?? {};
    const { at: otherAt = 0 } = placed.find(({ output }) => output === other) ?? {};
    if (first === undefined) continue;
    const values = { one, other, at: writePlain(at), otherAt: writePlain(otherAt), own: instrument.row.distanceUnit };
    tell(first, "plausible/outputs-exchanged", { column: "output", values });
  }
}

type OutputTrips = { trips: readonly TableRow<Trip>[]; output: Output };

function tellOutput(rows: MeasuredRows, { trips, output }: OutputTrips, tell: Tell): void {
  const { distanceUnit: own } = rows.instrument.row;
  const span = spanOf(rows.instrument.row);
  const middle = median(trips.map(({ row }) => row.reference));
  const [first] = trips;
  const unit = unitNear(middle, output.setPoint, { own, span });
  if (unit !== undefined && first !== undefined) {
    const values = { typed: writePlain(first.row.reference), what: "the set point", unit, own };
    tell(first, "plausible/trip-unit", { column: "reference", values });
    return;
  }
  const { step, decimals } = typedResolution(trips, "reference", own, rows.markOf("trips"));
  const context = { setPoint: output.setPoint, span, step };
  const apart = tripsApart(
    trips.map(({ row }) => row),
    context,
  );
  for (const { index, expected } of apart) {
    if (isOfExchangedPair(index, apart, trips)) continue;
    const trip = trips[index] as TableRow<Trip>;
    const typed = writePlain(trip.row.reference);
    const otherUnit = unitNear(trip.row.reference, expected, { own, span });
    if (otherUnit !== undefined) {
      const values = { typed, what: "the other trips", unit: otherUnit, own };
      tell(trip, "plausible/trip-unit", { column: "reference", values });
      continue;
    }
    const written = writtenIn(trip, "reference", rows.markOf("trips"));
    const missedBy = (meant: number) => Math.abs(meant - expected);
    const fitsWithin = Math.min((unitWithin / 4) * span, missedBy(trip.row.reference) * slipLeaves);
    const slip = written && slipThatFits(written.value, written.decimals, missedBy, fitsWithin);
    const values = {
      ...{ output: output.output, typed, own, direction: trip.row.direction, expected: shown(expected, decimals) },
      hint:
        slip === undefined ? "" : ` (${writePlain(Number(slip.meant.toPrecision(12)))} is one slip away: ${slip.kind})`,
    };
    tell(trip, "plausible/trip-apart", { column: "reference", values });
  }
}

/** Two trips of one cycle that fit when they change places: that is told of their directions, and no number is wrong. */
function isOfExchangedPair(
  index: number,
  apart: ReturnType<typeof tripsApart>,
  trips: readonly TableRow<Trip>[],
): boolean {
  const own = trips[index]?.row;
  const expectedOf = (place: number) => apart.find((one) => one.index === place)?.expected;
  const fits = (reference: number, expected: number | undefined, off: number) =>
    expected !== undefined && Math.abs(reference - expected) <= off * slipLeaves;
  return trips.some(({ row }, place) => {
    if (own === undefined || row.direction === own.direction || row.cycle !== own.cycle) return false;
    const off = Math.abs(row.reference - own.reference);
    return fits(row.reference, expectedOf(index), off) && fits(own.reference, expectedOf(place), off);
  });
}

function unitNear(
  written: number,
  expected: number,
  { own, span }: { own: DistanceUnit; span: number },
): DistanceUnit | undefined {
  if (Math.abs(written - expected) <= unitBeyond * span) return undefined;
  return distanceUnits.find(
    (unit) => unit !== own && Math.abs(convert(written, unit, own) - expected) <= unitWithin * span,
  );
}
