import { createContext, type VNode } from "preact";
import { useContext, useMemo } from "preact/hooks";
import type { Instrument, Output } from "../../model/instrument.ts";
import type { Cells, PlannedRow, SheetData } from "../sheet-data.ts";
import type { SheetProblem } from "../state/judge-sheet.ts";

/** A cell that is set by a button, and not typed. */
export type SetCell = { row: PlannedRow; column: string; text: string };

/** What every part of the sheet knows and can do; it stays the same while the sheet is open. */
export type Sheet = {
  data: SheetData;
  instrument: Instrument;
  outputs: readonly Output[];
  /** The text of a field while it is typed. */
  type: (row: PlannedRow, column: string, text: string) => void;
  /** A field was left: what stands in it is a change. */
  leave: (row: PlannedRow, column: string, before: string) => void;
  set: (cells: readonly SetCell[]) => void;
  add: (rows: readonly PlannedRow[]) => void;
  remove: (row: PlannedRow) => void;
  freshId: (table: PlannedRow["table"]) => string;
};

/** A row as it stands: texts planned and typed, and what is wrong with it. */
export type RowView = { row: PlannedRow; cells: Cells; problems: readonly SheetProblem[] };

export const SheetContext = createContext<Sheet | undefined>(undefined);

export function useSheet(): Sheet {
  const sheet = useContext(SheetContext);
  if (sheet === undefined) throw new TypeError("useSheet: a part stands outside of its sheet");
  return sheet;
}

/** A part that is drawn anew only when one of the things that it is made of has changed: a key press touches one row. */
export function Kept({ of, draw }: { of: readonly unknown[]; draw: () => VNode }): VNode {
  return useMemo(draw, of);
}
