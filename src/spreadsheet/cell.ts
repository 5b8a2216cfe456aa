/** A live cell: its formula without "=", and what the record says that it gives, where the record says anything of it. */
export type FormulaCell = { formula: string; is?: number | string | undefined };

/** Text and numbers are what was typed, or values of the record; nothing is an empty cell. */
export type Cell = string | number | null | FormulaCell;

export function isFormula(cell: Cell): cell is FormulaCell {
  return typeof cell === "object" && cell !== null;
}

/** A live cell that the record has a number or a word for; without one the cell stays empty. */
export function liveWhere(is: number | string | null | undefined, formula: string): Cell {
  return is === null || is === undefined ? null : { formula, is };
}
