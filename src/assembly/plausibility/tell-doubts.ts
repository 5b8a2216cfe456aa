import type { ProblemList } from "../../problems/problem-list.ts";
import { type MeasuredRows, measuredPhase, tellOf } from "./measured-phase.ts";
import { tellCopies } from "./tell-copies.ts";
import { tellPhases } from "./tell-phases.ts";
import { tellPoints } from "./tell-points.ts";
import { tellReadings } from "./tell-readings.ts";
import { tellResolution } from "./tell-tolerance.ts";
import { tellTrips } from "./tell-trips.ts";
import { tellUnits } from "./tell-units.ts";

/**
 * Tells everything that the numbers of one calibration say against each other, before there is a record.
 *
 * @param rows of the calibration, those that could be read
 * @param problems list that it goes to
 * Source: each check's own file.
 * @example toldBy((_, problems) => tellDoubts(spoiledRows, problems)) // ["plausible/reading-apart 5", "plausible/trip-apart 4"]
 */
export function tellDoubts(rows: MeasuredRows, problems: ProblemList): void {
  const tell = tellOf(rows.calibration.row.calibration, problems);
  const asFound = measuredPhase(rows, "as_found", tell);
  const asLeft = measuredPhase(rows, "as_left", tell);
  tellPhase(rows, asFound, asLeft);
  tellPhase(rows, asLeft, asFound);
  tellPhases(rows, { asFound, asLeft }, tell);
  if (rows.trips.length > 0) tellTrips(rows, tell);
}

type Phase = ReturnType<typeof measuredPhase>;

/** Where the unit of a whole column is wrong, its readings say nothing more. */
function tellPhase(rows: MeasuredRows, phase: Phase, other: Phase): void {
  if (phase === undefined) return;
  tellCopies(phase);
  if (tellUnits(phase)) return;
  const markOf = rows.markOf("readings");
  const told = tellPoints(phase, markOf);
  tellReadings(phase, { other, told, markOf });
  tellResolution(phase, rows);
}
