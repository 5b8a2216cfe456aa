import { greatestOf, leastOf } from "../numeric/least-and-greatest.ts";
import type { PlannedRow } from "./sheet-data.ts";

type View = { row: PlannedRow; cells: Readonly<Record<string, string>> };

/**
 * The rows of one more run out and back, at the points of the first run.
 *
 * @param phase of the readings
 * @param views rows that are there
 * @param freshId an id that no other row has
 * @returns rows to be added, with the next number of a run
 * Source: own choice.
 */
export function cycleRows(
  phase: string,
  views: readonly View[],
  freshId: (table: "readings") => string,
): readonly PlannedRow[] {
  const cycles = views.map(({ cells }) => Number(cells.cycle ?? 1)).filter(Number.isFinite);
  const [first, last] = [leastOf(cycles), greatestOf(cycles)];
  const id = freshId("readings");
  return views
    .filter(({ cells }) => Number(cells.cycle ?? 1) === first)
    .map(({ cells: { calibration = "", direction = "rising", point, reference } }, place) => ({
      id: `${id}.${place}`,
      table: "readings" as const,
      cells: { calibration, phase, cycle: String(last + 1), direction, point: point ?? reference ?? "" },
    }));
}
