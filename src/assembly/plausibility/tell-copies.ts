import { type Copy, copiedReadings } from "../../analysis/plausibility/copied-readings.ts";
import { phaseInWords } from "../../model/calibration-words.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import type { MeasuredPhase } from "./measured-phase.ts";

/**
 * Tells the readings that are copies of others: a row at its line, a cycle or a run once.
 *
 * @param phase with its rows
 * Source: `copiedReadings`.
 * @example toldBy((tell) => tellCopies({ ...spoiledPhase, tell })) // []
 */
export function tellCopies({ phase, rows, tell }: MeasuredPhase): void {
  const copies = copiedReadings(rows.map(({ row }) => row));
  for (const { index, original, of } of copies) {
    const row = rows[index];
    if (of !== "row" || row === undefined) continue;
    tell(row, "plausible/row-copied", { values: { line: rows[original]?.line ?? 0 } });
  }
  const cycles = copies.filter(({ of }) => of !== "row");
  const keyOf = ({ index, of }: Copy) => {
    const { cycle, direction } = rows[index]?.row ?? {};
    return JSON.stringify([of, cycle, of === "run" ? direction : ""]);
  };
  for (const [first] of groupedBy(cycles, keyOf).values()) {
    const row = rows[first?.index ?? -1];
    if (first === undefined || row === undefined) continue;
    const part = first.of === "run" ? `, ${row.row.direction},` : "";
    const values = {
      cycle: row.row.cycle ?? "",
      phase: phaseInWords[phase],
      part,
      line: rows[first.original]?.line ?? 0,
    };
    tell(row, "plausible/cycle-copied", { column: "cycle", values });
  }
}
