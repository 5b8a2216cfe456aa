import type { TableRow } from "../model/calibration-case.ts";
import type { RowsByOwner } from "./rows-by-owner.ts";

/** The rows of a table that no problem stops. None is held: each is read anew from its text when it is asked for. */
export class KeptRows<Row> {
  readonly #rows: RowsByOwner;
  readonly #read: (place: number) => TableRow<Row>;

  constructor(rows: RowsByOwner, read: (place: number) => TableRow<Row>) {
    this.#rows = rows;
    this.#read = read;
  }

  /** The same rows with something changed in each of them. */
  with(change: (row: TableRow<Row>) => TableRow<Row>): KeptRows<Row> {
    return new KeptRows(this.#rows, (place) => change(this.#read(place)));
  }

  get length(): number {
    return this.#rows.count;
  }

  /** Whether any row belongs to that tag, standard or calibration. */
  has(owner: string): boolean {
    return this.#rows.has(owner);
  }

  /** Those that belong to that tag, standard or calibration, in the order of the table. */
  of(owner: string): readonly TableRow<Row>[] {
    return Array.from(this.#rows.placesOf(owner), this.#read);
  }

  *[Symbol.iterator](): Iterator<TableRow<Row>> {
    for (const place of this.#rows.places()) yield this.#read(place);
  }
}
