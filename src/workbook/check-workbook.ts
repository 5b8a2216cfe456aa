import { groupedBy } from "../model/grouped-by.ts";
import { ProblemList } from "../problems/problem-list.ts";
import { type CheckContext, type ReadingsOfOne, reporterTo } from "./checks/check-context.ts";
import { type CheckStep, everyCheck } from "./checks/every-check.ts";
import { mostReadings } from "./checks/reading-count.ts";
import { RowsByOwner } from "./rows-by-owner.ts";
import type { DraftRow } from "./table-row.ts";

/** Reads the reading at a place of its table; what is wrong with its cells goes to the list. */
export type ReadReading = (place: number, problems: ProblemList) => { draft: DraftRow<"readings">; isStopped: boolean };

type Readings = { rows: RowsByOwner; read: ReadReading };
type Ground = { context: CheckContext; stopped: Set<DraftRow>; readings: Readings | undefined };
type Running = { step: CheckStep; problems: ProblemList; context: CheckContext };

/** What was found, in the order in which it is told, and the readings that nothing stops. */
export type Checked = { ofCells: ProblemList; ofChecks: ProblemList; kept: RowsByOwner };

/**
 * Runs every check. The readings are read one calibration after the other and let go again, so that no more than those of
 * one are held; what is told of them comes in the order in which it would come if all were there.
 */
export function checkWorkbook({ context, stopped, readings }: Ground): Checked {
  const running = everyCheck.map((step): Running => {
    const problems = new ProblemList();
    return { step, problems, context: { ...context, report: reporterTo(problems, stopped) } };
  });
  for (const { step, context: own } of running) if ("ofTables" in step) step.ofTables(own);
  const cells = new ProblemList();
  const kept = new RowsByOwner();
  for (const one of readingsInTurn(readings, cells, { context, stopped })) {
    for (const { step, context: own } of running) {
      if ("ofReadings" in step && (one.tooMany === undefined || step.ofMany === true)) step.ofReadings(one, own);
    }
    if (one.tooMany !== undefined) continue;
    for (const [index, draft] of one.readings.entries()) {
      if (!stopped.delete(draft)) kept.add(one.name, one.places[index] as number);
    }
  }
  const ofChecks = new ProblemList();
  for (const { step, problems } of running) {
    ofChecks.append("byLine" in step && step.byLine ? byLine(problems) : problems.all);
  }
  const ofCells = new ProblemList();
  ofCells.append(byLine(cells));
  return { ofCells, ofChecks, kept };
}

type InTurn = ReadingsOfOne & { places: readonly number[] };

/** The readings of each name in the order in which the names come in their table; then the calibrations without any. */
function* readingsInTurn(
  readings: Readings | undefined,
  cells: ProblemList,
  { context, stopped }: Omit<Ground, "readings">,
): Iterable<InTurn> {
  const byName = groupedBy(context.drafts.calibrations, ({ row }) => row.calibration);
  for (const name of readings?.rows.owners() ?? []) {
    if (readings === undefined) continue;
    const calibrations = byName.get(name) ?? [];
    if (readings.rows.countOf(name) > mostReadings) {
      yield { name, calibrations, places: [], ...tooManyOf(name, readings, cells) };
      continue;
    }
    const places = [...readings.rows.placesOf(name)];
    const drafts = places.map((place) => {
      const { draft, isStopped } = readings.read(place, cells);
      if (isStopped) stopped.add(draft);
      return draft;
    });
    yield { name, calibrations, places, readings: drafts };
  }
  for (const [name, calibrations] of byName) {
    if (readings?.rows.has(name) !== true) yield { name, calibrations, places: [], readings: [] };
  }
}

/** Their cells are read, and none of them is held but the first and the first too many. */
function tooManyOf(name: string | undefined, { rows, read }: Readings, cells: ProblemList) {
  const told: DraftRow<"readings">[] = [];
  let index = 0;
  for (const place of rows.placesOf(name)) {
    const { draft } = read(place, cells);
    if (index === 0 || index === mostReadings) told.push(draft);
    index += 1;
  }
  const [first, beyond] = told as [DraftRow<"readings">, DraftRow<"readings">];
  return { readings: [first], tooMany: { count: index, beyond } };
}

/** What is told of one row stays in its order. */
function byLine({ all }: ProblemList) {
  return all.toSorted((one, other) => (one.place.line ?? 0) - (other.place.line ?? 0));
}
