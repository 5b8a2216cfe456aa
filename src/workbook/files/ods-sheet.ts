import { columnLetters } from "../../units/column-letters.ts";
import { type OdsCell, odsCellText } from "./ods-cell-text.ts";
import type { RawRow } from "./raw-table.ts";
import { mostSpannedCells } from "./refused-spreadsheet.ts";
import type { DoubtfulCell, MergedCells, SheetText } from "./sheet-text.ts";
import type { Attributes } from "./xml-reader.ts";

const isCell = (name: string) => name === "table:table-cell" || name === "table:covered-table-cell";

/** A sheet whose cells, those that repeat too, are more than may be read. */
export class TooWideSheet extends RangeError {
  constructor(
    readonly sheet: string,
    readonly corner: string,
  ) {
    super(`the sheet ${sheet} reaches to ${corner}`);
  }
}

/** One sheet of an .ods file while it is read. Rows stand alone or in groups, at any depth. */
export class OdsSheet {
  readonly #rows: RawRow[] = [];
  readonly #hiddenLines = new Set<number>();
  readonly #hiddenColumns = new Set<number>();
  readonly #merged: MergedCells[] = [];
  readonly #doubtful: DoubtfulCell[] = [];
  #column = 0;
  #line = 1;
  #repeatedRow = 1;
  #isRowHidden = false;
  #cells: string[] = [];
  /** Empty cells that come before the next one with a text; those at the end of a row are many, and nothing. */
  #emptyBefore = 0;
  #cell: OdsCell | undefined;
  #paragraphs = 0;
  #depthOfParagraph = 0;
  #filled = 0;

  constructor(
    readonly name: string,
    readonly isHidden: boolean,
  ) {}

  open(name: string, attributes: Attributes): void {
    if (name === "table:table-column") this.#addColumns(attributes);
    else if (name === "table:table-row") this.#beginRow(attributes);
    else if (isCell(name)) this.#beginCell(attributes);
    else if (this.#cell !== undefined) this.#openInCell(this.#cell, name, attributes);
  }

  close(name: string): void {
    if (isCell(name)) this.#endCell();
    else if (name === "table:table-row") this.#endRow();
    else if (name === "text:p") this.#depthOfParagraph -= 1;
  }

  text(text: string): void {
    if (this.#cell !== undefined && this.#depthOfParagraph > 0) this.#cell.shown += text;
  }

  done(): SheetText {
    return {
      ...{ name: this.name, isHidden: this.isHidden, rows: this.#rows, hiddenLines: this.#hiddenLines },
      ...{ hiddenColumns: this.#hiddenColumns, merged: this.#merged, doubtful: this.#doubtful },
    };
  }

  #addColumns(attributes: Attributes): void {
    const count = repeated(attributes("table:number-columns-repeated"));
    if (isInvisible(attributes)) {
      for (let index = 0; index < Math.min(count, mostColumns); index += 1)
        this.#hiddenColumns.add(this.#column + index);
    }
    this.#column += count;
  }

  #beginRow(attributes: Attributes): void {
    this.#repeatedRow = repeated(attributes("table:number-rows-repeated"));
    this.#isRowHidden = isInvisible(attributes);
    this.#cells = [];
    this.#emptyBefore = 0;
  }

  #beginCell(attributes: Attributes): void {
    this.#paragraphs = 0;
    this.#depthOfParagraph = 0;
    this.#cell = {
      type: attributes("office:value-type"),
      value:
        ["office:value", "office:date-value", "office:time-value", "office:boolean-value", "office:string-value"]
          .map(attributes)
          .find((value) => value !== "") ?? "",
      formula: attributes("table:formula").replace(/^[a-z]+:=?/u, ""),
      shown: "",
      repeated: repeated(attributes("table:number-columns-repeated")),
      rows: repeated(attributes("table:number-rows-spanned")),
      columns: repeated(attributes("table:number-columns-spanned")),
    };
  }

  #openInCell(cell: OdsCell, name: string, attributes: Attributes): void {
    if (name === "text:p") {
      if (this.#paragraphs > 0) cell.shown += "\n";
      this.#paragraphs += 1;
      this.#depthOfParagraph += 1;
    } else if (name === "text:s") cell.shown += " ".repeat(Math.min(repeated(attributes("text:c")), mostSpaces));
    else if (name === "text:tab") cell.shown += "\t";
    else if (name === "text:line-break") cell.shown += "\n";
  }

  #endCell(): void {
    const cell = this.#cell;
    if (cell === undefined) return;
    this.#cell = undefined;
    const { text, doubt } = odsCellText(cell);
    const here = { line: this.#line, index: this.#cells.length + this.#emptyBefore };
    if (doubt !== undefined) this.#doubtful.push({ ...here, ...doubt });
    if (cell.rows > 1 || cell.columns > 1) {
      this.#merged.push({
        first: here,
        last: { line: here.line + cell.rows - 1, index: here.index + cell.columns - 1 },
      });
    }
    if (text === "") {
      this.#emptyBefore += cell.repeated;
      return;
    }
    this.#countFilled(this.#emptyBefore + cell.repeated);
    for (; this.#emptyBefore > 0; this.#emptyBefore -= 1) this.#cells.push("");
    for (let count = 0; count < cell.repeated; count += 1) this.#cells.push(text);
  }

  #endRow(): void {
    const isFilled = this.#cells.some((cell) => cell.trim() !== "");
    if (isFilled) {
      this.#countFilled((this.#cells.length + costOfRow) * (this.#repeatedRow - 1));
      for (let count = 0; count < this.#repeatedRow; count += 1) {
        const line = this.#line + count;
        this.#rows.push({ line, cells: this.#cells });
        if (this.#isRowHidden) this.#hiddenLines.add(line);
      }
    }
    this.#line += this.#repeatedRow;
  }

  #countFilled(cells: number): void {
    this.#filled += cells;
    const corner = `${columnLetters(Math.min(mostColumns, this.#cells.length + cells) - 1)}${this.#line}`;
    if (this.#filled > mostSpannedCells) throw new TooWideSheet(this.name, corner);
  }
}

/** A row of its own takes the memory of so many cells. */
const costOfRow = 10;

const mostSpaces = 1000;
const mostColumns = 16_384;

function repeated(text: string): number {
  const count = Number(text);
  return Number.isInteger(count) && count > 1 ? count : 1;
}

function isInvisible(attributes: Attributes): boolean {
  return ["collapse", "filter"].includes(attributes("table:visibility"));
}
