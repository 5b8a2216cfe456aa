/** The places of rows in their table by what they belong to: ranges, for rows of one name mostly stand together. */
export class RowsByOwner {
  readonly #rangesByOwner = new Map<string | undefined, number[]>();
  #count = 0;

  /** Adds a row that stands behind those that were added of its owner. */
  add(owner: string | undefined, index: number): void {
    this.#count += 1;
    const ranges = this.#rangesByOwner.get(owner);
    if (ranges === undefined) this.#rangesByOwner.set(owner, [index, index + 1]);
    else if (ranges.at(-1) === index) ranges[ranges.length - 1] = index + 1;
    else ranges.push(index, index + 1);
  }

  get count(): number {
    return this.#count;
  }

  /** In the order in which they were first added. */
  owners(): Iterable<string | undefined> {
    return this.#rangesByOwner.keys();
  }

  has(owner: string | undefined): boolean {
    return this.#rangesByOwner.has(owner);
  }

  countOf(owner: string | undefined): number {
    const ranges = this.#rangesByOwner.get(owner) ?? [];
    return ranges.reduce((sum, place, index) => (index % 2 === 0 ? sum - place : sum + place), 0);
  }

  *placesOf(owner: string | undefined): Iterable<number> {
    const ranges = this.#rangesByOwner.get(owner) ?? [];
    for (let at = 0; at < ranges.length; at += 2) {
      for (let place = ranges[at] as number; place < (ranges[at + 1] as number); place += 1) yield place;
    }
  }

  /** All of them in the order of the table. */
  places(): readonly number[] {
    return [...this.owners()].flatMap((owner) => [...this.placesOf(owner)]).toSorted((one, other) => one - other);
  }
}
