import { deflateRawSync, inflateRawSync } from "node:zlib";
import type { RawRow, RawRows } from "./raw-table.ts";

/** Characters of rows that are packed together: few enough that a row alone is soon had, enough that they pack well. */
const blockCharacters = 8192;

/** So many blocks at the beginning are not packed: a table of one or two thousand rows is had without that work. */
const plainBlocks = 8;

/**
 * Rows of a table as they were read; those beyond its beginning packed (RFC 1951) a block at a time, and in each block a column at a time, which halves
 * it: some 7 bytes a reading in the place of some 400. Each row is made anew when it is asked for, and none but those of the
 * last block is held.
 */
export class PackedRows implements RawRows {
  readonly #plain: (readonly RawRow[])[] = [];
  /** Packed blocks one behind the other, and where each of them ends. */
  #bytes = new Uint8Array(blockCharacters);
  readonly #ends: number[] = [];
  /** The place of the first row of each block. */
  readonly #firsts: number[] = [];
  #last: { block: number; rows: readonly RawRow[] } = { block: -1, rows: [] };
  #open: RawRow[] = [];
  #openCharacters = 0;
  #length = 0;

  get length(): number {
    return this.#length;
  }

  /** Adds a row at the end. */
  push(row: RawRow): void {
    this.#open.push(row);
    for (const { length } of row.cells) this.#openCharacters += length + 1;
    this.#length += 1;
    if (this.#openCharacters >= blockCharacters) this.#close();
  }

  /** No row comes any more: what was kept for those that might come is let go. */
  end(): this {
    if (this.#open.length > 0) this.#close();
    this.#bytes = this.#bytes.slice(0, this.#ends.at(-1) ?? 0);
    return this;
  }

  at(index: number): RawRow | undefined {
    if (index < 0 || index >= this.#length) return undefined;
    const block = this.#blockOf(index);
    return this.#rowsOf(block)[index - (this.#firsts[block] ?? 0)];
  }

  *[Symbol.iterator](): Iterator<RawRow> {
    for (let index = 0; index < this.#length; index += 1) yield this.at(index) as RawRow;
  }

  #close(): void {
    this.#firsts.push(this.#length - this.#open.length);
    if (this.#plain.length < plainBlocks) this.#plain.push(this.#open);
    else this.#pack(this.#open);
    this.#open = [];
    this.#openCharacters = 0;
  }

  #pack(rows: readonly RawRow[]): void {
    const packed = deflateRawSync(JSON.stringify(columnsOf(rows)));
    const start = this.#ends.at(-1) ?? 0;
    const end = start + packed.length;
    if (end > this.#bytes.length) this.#bytes = grown(this.#bytes, end);
    this.#bytes.set(packed, start);
    this.#ends.push(end);
  }

  /** The last block that begins at the row or before it; most often that of the row before. */
  #blockOf(index: number): number {
    const { block, rows } = this.#last;
    const first = this.#firsts[block] ?? 0;
    if (index >= first && index < first + rows.length) return block;
    let [low, high] = [0, this.#firsts.length];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((this.#firsts[middle] as number) <= index) low = middle;
      else high = middle;
    }
    return low;
  }

  #rowsOf(block: number): readonly RawRow[] {
    const plain = this.#plain[block];
    if (plain !== undefined) return plain;
    if (this.#last.block === block) return this.#last.rows;
    const number = block - plainBlocks;
    const packed = this.#bytes.subarray(this.#ends[number - 1] ?? 0, this.#ends[number]);
    const rows = rowsOfColumns(JSON.parse(inflateRawSync(packed).toString("utf8")) as Columns);
    this.#last = { block, rows };
    return rows;
  }
}

/** How much farther down each row stands than the one before, and how many cells it has; then the cells, column by column. */
type Columns = { steps: readonly number[]; counts: readonly number[]; columns: readonly (readonly string[])[] };

function columnsOf(rows: readonly RawRow[]): Columns {
  const columns: string[][] = [];
  for (const { cells } of rows) {
    for (const [place, cell] of cells.entries()) {
      const column = columns[place];
      if (column === undefined) columns[place] = [cell];
      else column.push(cell);
    }
  }
  const steps = rows.map(({ line }, index) => line - (rows[index - 1]?.line ?? 0));
  return { steps, counts: rows.map(({ cells }) => cells.length), columns };
}

function rowsOfColumns({ steps, counts, columns }: Columns): readonly RawRow[] {
  const taken = columns.map(() => 0);
  let line = 0;
  return counts.map((count, index): RawRow => {
    line += steps[index] ?? 0;
    const cells = columns.slice(0, count).map((column, place) => {
      const at = taken[place] as number;
      taken[place] = at + 1;
      return column[at] as string;
    });
    return { line, cells };
  });
}

/** With room for what comes: a part more than is needed, so that bytes are seldom copied. */
function grown(bytes: Uint8Array, needed: number): Uint8Array<ArrayBuffer> {
  const more = new Uint8Array(Math.ceil(needed * 1.5));
  more.set(bytes);
  return more;
}
