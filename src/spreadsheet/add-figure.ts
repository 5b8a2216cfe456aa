import type { Cell } from "./cell.ts";

/** Writes one figure as a row and gives its address: label, the cell, its unit, the place where it is, how it follows. */
export type AddFigure = (label: string, cell: Cell, unit: string, where?: Cell, how?: string) => string;
