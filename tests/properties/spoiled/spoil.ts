import type { Texts } from "../../workbook/smallest-workbook.ts";
import type { Draw } from "./draw.ts";
import { at, type Cells, type MadeLoop, type MadeWorkbook, type Tables } from "./made-workbook.ts";
import { slips, writings } from "./slips.ts";
import { filesOfTables, gridOf, marked, textOf, type Writing } from "./written-tables.ts";

/** A good workbook spoiled in one way. `mustBeTold`: what it says is not what was read, and something else shows that. */
export type Spoiled = { how: string; file: string; texts: Texts; mustBeTold: boolean };

type Ways = Readonly<Record<string, (made: MadeWorkbook, writing: Writing, draw: Draw) => Spoiled | undefined>>;

const numberColumns = ["point", "reference", "signal", "counts", "value"] as const;

function withTable({ tables }: MadeWorkbook, writing: Writing, name: string, rows: readonly Cells[]): Texts {
  return filesOfTables({ ...tables, [name]: rows } as Tables, writing);
}

function spoiled(
  made: MadeWorkbook,
  writing: Writing,
  name: string,
  rows: readonly Cells[],
  mustBeTold: boolean,
  how: string,
): Spoiled {
  return { how, file: `${name}.csv`, texts: withTable(made, writing, name, rows), mustBeTold };
}

/** A change of a number in percent of span. */
function percentOf(loop: MadeLoop, column: string, difference: number): number {
  const span = loop.upper - loop.lower;
  const spans: Readonly<Record<string, number>> = {
    signal: loop.signal[1] - loop.signal[0],
    counts: 27648,
    value: 100,
  };
  return Math.abs((100 * difference) / (spans[column] ?? span));
}

/** So far off, nobody who looks at the other numbers can take it for scatter, and no display for a step. */
function isPlain(loop: MadeLoop, column: string, percent: number): boolean {
  const step = percentOf(loop, column, 10 ** -(loop.decimals[column] ?? 0));
  const least = Math.max(1.5 * loop.tolerance, 14 * loop.scatter, 6 * step);
  return percent > (column === "point" || column === "trip" ? Math.max(2.5, least) : least);
}

function oneNumber(made: MadeWorkbook, draw: Draw) {
  const { readings = [] } = made.tables;
  const place = draw.whole(readings.length);
  const row = readings[place] as Cells;
  const column = draw.pick(numberColumns.filter((name) => row[name] !== undefined));
  return { readings, place, row, column, text: row[column] ?? "" };
}

const unitWords = (loop: MadeLoop, column: string) =>
  column === "signal" ? loop.signalUnit : column === "value" ? "%" : column === "counts" ? "" : loop.unit;

const otherFactors: Readonly<Record<string, readonly (readonly [string, number])[]>> = {
  mm: [
    ["cm", 10],
    ["m", 1000],
    ["in", 25.4],
    ["ft", 304.8],
  ],
  cm: [
    ["mm", 0.1],
    ["m", 100],
    ["in", 2.54],
    ["ft", 30.48],
  ],
  m: [
    ["mm", 0.001],
    ["cm", 0.01],
    ["in", 0.0254],
    ["ft", 0.3048],
  ],
  in: [
    ["mm", 1 / 25.4],
    ["cm", 1 / 2.54],
    ["m", 1 / 0.0254],
    ["ft", 12],
  ],
  ft: [
    ["mm", 1 / 304.8],
    ["cm", 1 / 30.48],
    ["m", 1 / 0.3048],
    ["in", 1 / 12],
  ],
};

const shorter = (value: number) => String(Number(value.toPrecision(6)));

export const ways: Ways = {
  "a slip in a reading": (made, writing, draw) => {
    const { readings, place, row, column, text } = oneNumber(made, draw);
    const slip = draw.pick(Object.keys(slips));
    const changed = slips[slip]?.(text, draw) ?? text;
    const percent = percentOf(made.loop, column, Number(changed) - Number(text));
    const must = Number.isNaN(percent) || isPlain(made.loop, column, percent);
    return spoiled(
      made,
      writing,
      "readings",
      readings.with(place, { ...row, [column]: changed }),
      must,
      `${slip}: ${column} ${text} as ${changed}`,
    );
  },
  "a slip in a trip": (made, writing, draw) => {
    const { trips = [] } = made.tables;
    const place = draw.whole(trips.length);
    const row = trips[place] as Cells;
    const slip = draw.pick(Object.keys(slips));
    const changed = slips[slip]?.(row.reference ?? "", draw) ?? "";
    const percent = percentOf(made.loop, "trip", Number(changed) - Number(row.reference));
    const must = Number.isNaN(percent) || percent > 3;
    return spoiled(
      made,
      writing,
      "trips",
      trips.with(place, { ...row, reference: changed }),
      must,
      `${slip}: trip ${row.reference} as ${changed}`,
    );
  },
  "another way to write a number": (made, writing, draw) => {
    const { readings, place, row, column, text } = oneNumber(made, draw);
    const way = draw.pick(Object.keys(writings));
    const written = writings[way]?.(text, unitWords(made.loop, column)) ?? text;
    const grid = marked(gridOf(readings), writing.mark).map((cells) => [...cells]);
    const index = grid[0]?.indexOf(column) ?? 0;
    (grid[place + 1] as string[])[index] = written;
    const isQuoted = draw.chance(0.6);
    const file = textOf(grid, writing.delimiter, isQuoted);
    const texts = { ...filesOfTables(made.tables, writing), "readings.csv": file };
    const must = /question|less|date|error|letter|O for/u.test(way) && written !== text;
    return {
      how: `${way}: ${column} ${row[column]} as ${written}${isQuoted ? "" : ", not quoted"}`,
      file: "readings.csv",
      texts,
      mustBeTold: must,
    };
  },
  "a decimal comma in a whole column": (made, writing, draw) => {
    const { readings = [] } = made.tables;
    const column = draw.pick(["reference", "signal", "value"].filter((name) => readings[0]?.[name]?.includes(".")));
    if (writing.delimiter !== "," || column === undefined) return undefined;
    const grid = gridOf(readings).map((cells, line) =>
      line === 0 ? cells : cells.with(index(cells), (cells[index(cells)] ?? "").replace(".", ",")),
    );
    function index(_: readonly string[]): number {
      return Object.keys(readings[0] ?? {}).indexOf(column as string);
    }
    const more = draw.chance(0.5) ? grid.map((cells, line) => [...cells, line === 0 ? "remark" : ""]) : grid;
    const texts = { ...filesOfTables(made.tables, writing), "readings.csv": textOf(more, ",", false) };
    return { how: `decimal commas in ${column}`, file: "readings.csv", texts, mustBeTold: true };
  },
  "a cell too many or too few": (made, writing, draw) => {
    const name = draw.pick(["readings", "trips", "standards", "instruments", "calibrations"]);
    const grid = marked(gridOf(made.tables[name] ?? []), writing.mark);
    const line = 1 + draw.whole(grid.length - 1);
    const cells = grid[line] ?? [];
    const place = draw.whole(cells.length);
    const changed = draw.chance(0.5) ? cells.toSpliced(place, 1) : cells.toSpliced(place, 0, cells[place] ?? "");
    const texts = {
      ...filesOfTables(made.tables, writing),
      [`${name}.csv`]: textOf(grid.with(line, changed), writing.delimiter),
    };
    return {
      how: `a cell ${changed.length > cells.length ? "more" : "less"} in ${name}`,
      file: `${name}.csv`,
      texts,
      mustBeTold: true,
    };
  },
  "one number in another unit": (made, writing, draw) => {
    const { readings, place, row } = oneNumber(made, draw);
    const { loop } = made;
    const isSignal = draw.chance(0.4);
    const column = isSignal ? "signal" : "reference";
    const [unit, factor] = isSignal ? draw.pick(signalFactors(loop)) : draw.pick(otherFactors[loop.unit] ?? []);
    const text = row[column] ?? "";
    const changed = shorter(Number(text) / factor);
    const must = isPlain(loop, column, percentOf(loop, column, Number(changed) - Number(text)));
    return spoiled(
      made,
      writing,
      "readings",
      readings.with(place, { ...row, [column]: changed }),
      must,
      `one ${column} in ${unit}: ${text} as ${changed}`,
    );
  },
  "a column in another unit": (made, writing, draw) => {
    const { readings = [] } = made.tables;
    const { loop } = made;
    const isSignal = draw.chance(0.4);
    const column = isSignal ? "signal" : "reference";
    const [unit, factor] = isSignal ? draw.pick(signalFactors(loop)) : draw.pick(otherFactors[loop.unit] ?? []);
    const withPoints = !isSignal && draw.chance(0.5);
    const rows = readings.map((row) => ({
      ...row,
      [column]: shorter(Number(row[column]) / factor),
      ...(withPoints && row.point !== undefined && { point: shorter(Number(row.point) / factor) }),
    }));
    return spoiled(
      made,
      writing,
      "readings",
      rows,
      true,
      `every ${column} in ${unit}${withPoints ? ", points too" : ""}`,
    );
  },
  "the range in another unit": (made, writing, draw) => {
    const { instruments: [row = {}] = [] } = made.tables;
    const [unit, factor] = draw.pick(otherFactors[made.loop.unit] ?? []);
    const [lower, upper] = ["range_lower", "range_upper"].map((name) => shorter(Number(row[name]) / factor));
    return spoiled(
      made,
      writing,
      "instruments",
      [{ ...row, range_lower: lower ?? "", range_upper: upper ?? "" }],
      true,
      `range in ${unit}`,
    );
  },
  "trips in another unit": (made, writing, draw) => {
    const { trips = [] } = made.tables;
    const [unit, factor] = draw.pick(otherFactors[made.loop.unit] ?? []);
    const one = draw.chance(0.5) ? draw.whole(trips.length) : undefined;
    const rows = trips.map((row, place) =>
      one === undefined || one === place ? { ...row, reference: shorter(Number(row.reference) / factor) } : row,
    );
    const place = at(made.loop, 30);
    const must = percentOf(made.loop, "trip", place / factor - place) > 3;
    return spoiled(made, writing, "trips", rows, must, `${one === undefined ? "all trips" : "one trip"} in ${unit}`);
  },
  "numbers of two rows exchanged": (made, writing, draw) => {
    const { readings, place, row, column } = oneNumber(made, draw);
    const other = draw.whole(readings.length);
    const partner = readings[other] as Cells;
    const difference = percentOf(made.loop, column, Number(row[column]) - Number(partner[column]));
    const must = row.phase === partner.phase && isPlain(made.loop, column, difference);
    const rows = readings
      .with(place, { ...row, [column]: partner[column] ?? "" })
      .with(other, { ...partner, [column]: row[column] ?? "" });
    return spoiled(made, writing, "readings", rows, must, `${column} of rows ${place} and ${other} exchanged`);
  },
  "two numbers of a row exchanged": (made, writing, draw) => {
    const { readings, place, row } = oneNumber(made, draw);
    const present = numberColumns.filter((name) => row[name] !== undefined && name !== "point");
    const one = draw.pick(present);
    const two = draw.pick(present.filter((name) => name !== one));
    const far = [one, two].map((name) => percentOf(made.loop, name, Number(row[one]) - Number(row[two])));
    const must = far.some((percent, index) => isPlain(made.loop, [one, two][index] as string, percent));
    return spoiled(
      made,
      writing,
      "readings",
      readings.with(place, { ...row, [one]: row[two] ?? "", [two]: row[one] ?? "" }),
      must,
      `${one} and ${two} exchanged in a row`,
    );
  },
  "a row twice": (made, writing, draw) => {
    const { readings = [] } = made.tables;
    const place = draw.whole(readings.length);
    const row = readings[place] as Cells;
    const to = draw.chance(0.5) ? place : draw.whole(readings.length);
    return spoiled(
      made,
      writing,
      "readings",
      readings.toSpliced(to, 0, row),
      true,
      `row ${place} again before row ${to}`,
    );
  },
  "a row once more in another cycle": (made, writing, draw) => {
    if (made.loop.cycles < 2 || !made.loop.hasPoint) return undefined;
    const { readings = [] } = made.tables;
    const place = draw.whole(readings.length);
    const row = readings[place] as Cells;
    const cycle = String((Number(row.cycle) % made.loop.cycles) + 1);
    return spoiled(
      made,
      writing,
      "readings",
      readings.toSpliced(place + 1, 0, { ...row, cycle }),
      true,
      `row ${place} again in cycle ${cycle}`,
    );
  },
  "a cycle copied": (made, writing, draw) => {
    const { cycles, points } = made.loop;
    if (cycles < 2) return undefined;
    const { readings = [] } = made.tables;
    const phase = draw.pick(made.loop.phases);
    const [from, to] = draw.chance(0.5) ? [1, 2] : [cycles, 1];
    const source = readings.filter((row) => row.phase === phase && row.cycle === String(from));
    let next = 0;
    const rows = readings.map((row) => {
      if (row.phase !== phase || row.cycle !== String(to)) return row;
      next += 1;
      return { ...(source[next - 1] as Cells), cycle: String(to) };
    });
    return spoiled(made, writing, "readings", rows, points > 0, `cycle ${from} ${phase} copied as cycle ${to}`);
  },
  "a direction wrong": (made, writing, draw) => {
    const { readings = [] } = made.tables;
    const turned = (row: Cells) => ({ ...row, direction: row.direction === "rising" ? "falling" : "rising" });
    const place = draw.whole(readings.length);
    const kind = draw.pick(["one", "run", "all"] as const);
    const own = readings[place] as Cells;
    const isOfRun = (row: Cells) =>
      row.phase === own.phase && row.cycle === own.cycle && row.direction === own.direction;
    const rows = readings.map((row, index) =>
      kind === "all" || (kind === "one" ? index === place : isOfRun(row)) ? turned(row) : row,
    );
    return spoiled(made, writing, "readings", rows, true, `${kind} direction turned at row ${place}`);
  },
  "a phase wrong": (made, writing, draw) => {
    const { readings = [] } = made.tables;
    const perPhase = readings.length / made.loop.phases.length;
    const other = (row: Cells) => ({ ...row, phase: row.phase === "as_found" ? "as_left" : "as_found" });
    if (made.loop.phases.length === 2 && draw.chance(0.4)) {
      return spoiled(made, writing, "readings", readings.map(other), true, "phases exchanged");
    }
    const place = draw.whole(readings.length);
    const isInside = place % perPhase > 0 && place % perPhase < perPhase - 1;
    return spoiled(
      made,
      writing,
      "readings",
      readings.with(place, other(readings[place] as Cells)),
      isInside,
      `phase turned at row ${place}`,
    );
  },
  "a trip's direction wrong": (made, writing, draw) => {
    const { trips = [] } = made.tables;
    const place = draw.whole(trips.length);
    const isAll = draw.chance(0.5);
    const turned = (row: Cells) => ({ ...row, direction: row.direction === "approach" ? "recede" : "approach" });
    const rows = trips.map((row, index) => (isAll || index === place ? turned(row) : row));
    return spoiled(
      made,
      writing,
      "trips",
      rows,
      true,
      `${isAll ? "all directions" : `direction ${place}`} of trips turned`,
    );
  },
  "a header misspelled": (made, writing, draw) => {
    const name = draw.pick(["readings", "trips", "standards", "instruments", "calibrations", "outputs"]);
    const grid = marked(gridOf(made.tables[name] ?? []), writing.mark);
    const header = grid[0] ?? [];
    const place = draw.whole(header.length);
    const word = header[place] ?? "";
    const changed = draw.chance(0.8) ? misspelled(word, draw) : draw.pick(["note", "colour", "kg", "x1"]);
    const texts = {
      ...filesOfTables(made.tables, writing),
      [`${name}.csv`]: textOf(grid.with(0, header.with(place, changed)), writing.delimiter),
    };
    return { how: `header ${word} as ${changed} in ${name}`, file: `${name}.csv`, texts, mustBeTold: changed !== word };
  },
  "columns in another order": (made, writing, draw) => {
    const grid = marked(gridOf(made.tables.readings ?? []), writing.mark);
    const order = (grid[0] ?? [])
      .map((_, index) => ({ index, key: draw.unit() }))
      .toSorted((one, other) => one.key - other.key);
    const turned = grid.map((cells) => order.map(({ index }) => cells[index] ?? ""));
    const texts = { ...filesOfTables(made.tables, writing), "readings.csv": textOf(turned, writing.delimiter) };
    return { how: "columns of the readings in another order", file: "readings.csv", texts, mustBeTold: false };
  },
  "two headers exchanged": (made, writing, draw) => {
    const grid = marked(gridOf(made.tables.readings ?? []), writing.mark);
    const header = grid[0] ?? [];
    const present = ["reference", "signal", "value", "counts"].filter((name) => header.includes(name));
    const one = draw.pick(present);
    const two = draw.pick(present.filter((name) => name !== one));
    const turned = header.map((name) => (name === one ? two : name === two ? one : name));
    const texts = {
      ...filesOfTables(made.tables, writing),
      "readings.csv": textOf(grid.with(0, turned), writing.delimiter),
    };
    // Where the range is 0 to 100, the controller's percent are the same numbers as the distances.
    const isAlike =
      [one, two].toSorted().join() === "reference,value" && made.loop.lower === 0 && made.loop.upper === 100;
    return { how: `headers ${one} and ${two} exchanged`, file: "readings.csv", texts, mustBeTold: !isAlike };
  },
  "a tolerance too wide or too fine": (made, writing, draw) => {
    const { instruments: [row = {}] = [] } = made.tables;
    const factor = draw.pick([0.001, 10, 12, 30, 100]);
    const tolerance = shorter(made.loop.tolerance * factor);
    const isFine = Number(tolerance) < percentOf(made.loop, "signal", 0.001);
    const must = Number(tolerance) > 10 || isFine;
    return spoiled(made, writing, "instruments", [{ ...row, tolerance }], must, `tolerance ${tolerance} % of span`);
  },
  "a tolerance of another basis": (made, writing, draw) => {
    const { instruments: [row = {}] = [] } = made.tables;
    const amount = draw.pick([2, 5, 10]);
    const must = percentOf(made.loop, "tolerance", amount) > 10;
    return spoiled(
      made,
      writing,
      "instruments",
      [{ ...row, tolerance: String(amount), tolerance_basis: "distance" }],
      must,
      `tolerance ${amount} ${made.loop.unit}`,
    );
  },
  "a standard of another quantity": (made, writing, draw) => {
    const { standards = [] } = made.tables;
    const place = draw.whole(standards.length);
    const row = standards[place] as Cells;
    const quantity = draw.pick(
      ["distance", "current", "voltage", "resistance", "length", "temperature"].filter((word) => word !== row.quantity),
    );
    return spoiled(
      made,
      writing,
      "standards",
      standards.with(place, { ...row, quantity }),
      true,
      `quantity ${quantity} for ${row.uncertainty_unit}`,
    );
  },
  "a day that is none": (made, writing, draw) => {
    const { calibrations: [row = {}] = [] } = made.tables;
    const day = draw.pick([
      "2026-02-30",
      "30 February",
      "2026-3-4",
      "03/04/2026",
      "31/04/2026",
      "2026-13-01",
      "March",
      "2026-03-04T",
    ]);
    return spoiled(made, writing, "calibrations", [{ ...row, performed_on: day }], true, `performed on ${day}`);
  },
  "a name misspelled": (made, writing, draw) => {
    const [name, column] = draw.pick([
      ["calibrations", "tag"],
      ["calibrations", "standards"],
      ["readings", "calibration"],
      ["trips", "output"],
      ["trips", "calibration"],
    ] as const);
    const rows = made.tables[name] ?? [];
    const place = draw.whole(rows.length);
    const row = rows[place] as Cells;
    const changed = misspelled(row[column] ?? "", draw);
    return spoiled(
      made,
      writing,
      name,
      rows.with(place, { ...row, [column]: changed }),
      !isSameList(changed, row[column] ?? ""),
      `${column} ${row[column]} as ${changed}`,
    );
  },
};

/** Spaces around the names of a list are no names. */
function isSameList(one: string, other: string): boolean {
  const names = (text: string) =>
    text
      .split(";")
      .map((name) => name.trim())
      .join(";");
  return names(one) === names(other);
}

/** In a loop of mA: A, and V over 250 Ω and 500 Ω; in one of V: mV. */
function signalFactors(loop: MadeLoop): readonly (readonly [string, number])[] {
  return loop.signalUnit === "mA"
    ? [
        ["A", 1000],
        ["V over 250 Ω", 4],
        ["V over 500 Ω", 2],
        ["µA", 0.001],
      ]
    : [["mV", 0.001]];
}

/** One letter left out, twice, exchanged with its neighbour, or another one. */
function misspelled(word: string, draw: Draw): string {
  const place = draw.whole(word.length - 1);
  const letters = [...word];
  switch (draw.whole(4)) {
    case 0:
      return letters.toSpliced(place, 1).join("");
    case 1:
      return letters.toSpliced(place, 0, letters[place] ?? "").join("");
    case 2:
      return letters
        .with(place, letters[place + 1] ?? "")
        .with(place + 1, letters[place] ?? "")
        .join("");
    default:
      return letters.with(place, draw.pick([..."abcdefghijklmnopqrstuvwxyz"])).join("");
  }
}
