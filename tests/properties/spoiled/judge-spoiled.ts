import { judged } from "../../workbook/full-workbook.ts";
import type { Texts } from "../../workbook/smallest-workbook.ts";
import { drawFrom } from "./draw.ts";
import { type MadeLoop, madeWorkbook } from "./made-workbook.ts";
import { type NumberColumn, readingsText, saidLines } from "./read-by-hand.ts";
import { type Spoiled, ways } from "./spoil.ts";
import { filesOfTables, type Writing } from "./written-tables.ts";

/** What came of a spoiled workbook: told at a place of the spoiled file, harmless, or neither. */
export type Outcome = { seed: number; way: string; how: string; outcome: "told" | "harmless" | "silent"; why: string };

const writings: readonly Writing[] = [
  { delimiter: ",", mark: "." },
  { delimiter: ",", mark: "." },
  { delimiter: ";", mark: "," },
  { delimiter: "\t", mark: "," },
  { delimiter: ";", mark: "." },
];

/** What people do most often. */
const oftenest = ["a slip in a reading", "another way to write a number", "a slip in a trip"] as const;

/** One spoiled workbook; nothing where the way does not suit the workbook, or the good one is not without a word. */
export async function judgeSpoiled(seed: number): Promise<Outcome | "not good" | undefined> {
  const draw = drawFrom(seed);
  const made = madeWorkbook(draw);
  const writing = draw.pick(writings);
  const good = await judged(filesOfTables(made.tables, writing));
  if (good.problems.length > 0) return "not good";
  const way = draw.chance(0.4) ? draw.pick(oftenest) : draw.pick(Object.keys(ways));
  const spoiled = ways[way]?.(made, writing, draw);
  if (spoiled === undefined) return undefined;
  const found = await judged(spoiled.texts);
  const told = found.problems.filter(({ place }) => isOf(place.file, spoiled));
  const common = { seed, way, how: spoiled.how };
  if (told.length > 0) return { ...common, outcome: "told", why: told.map(({ code }) => code).join(" ") };
  const wrong = wrongNumber(spoiled.texts, writing, made.loop, found);
  if (wrong !== undefined) return { ...common, outcome: "silent", why: wrong };
  if (spoiled.mustBeTold) return { ...common, outcome: "silent", why: "something else shows it, and nothing was said" };
  return { ...common, outcome: "harmless", why: "" };
}

/** Told where it was spoiled; a range in another unit shows at the readings, and a limit that they break at the range. */
function isOf(file: string, { file: spoiledFile }: Spoiled): boolean {
  const pair = ["instruments.csv", "readings.csv"];
  return file === spoiledFile || (pair.includes(file) && pair.includes(spoiledFile));
}

const keys: Readonly<Record<NumberColumn, "point" | "reference" | "signal" | "signalAtCard" | "counts" | "value">> = {
  ...{
    point: "point",
    reference: "reference",
    signal: "signal",
    signal_at_card: "signalAtCard",
    counts: "counts",
    value: "value",
  },
};

/** The first number of the readings that is not what its cell says to somebody else, a cell that was dropped among them. */
function wrongNumber(
  texts: Texts,
  writing: Writing,
  loop: MadeLoop,
  { cases }: Awaited<ReturnType<typeof judged>>,
): string | undefined {
  const unitOf = (column: string) =>
    column === "signal" ? loop.signalUnit : column === "value" ? "%" : column === "counts" ? undefined : loop.unit;
  const read = new Map(cases.flatMap(({ readings }) => readings.map(({ line, row }) => [line, row] as const)));
  for (const { line, said } of saidLines(readingsText(texts), writing, unitOf)) {
    const row = read.get(line);
    if (row === undefined) return `line ${line} was not read`;
    for (const [column, { text, number }] of said) {
      const key = keys[column as NumberColumn];
      if (text === "" || key === undefined) continue;
      const value = row[key];
      const isSame =
        value !== undefined && number !== undefined && Math.abs(value - number) <= 1e-9 * Math.max(1, Math.abs(number));
      if (!isSame) return `line ${line}: ${column} says ${text} (${number}) and was read as ${value}`;
    }
  }
  return undefined;
}
