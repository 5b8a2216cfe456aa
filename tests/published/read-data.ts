import { readFileSync } from "node:fs";
import Papa from "papaparse";

/** Reads the columns of a published table as numbers: `tests/published/<source>/data.csv` by column name. */
export function readColumns(source: string): Readonly<Record<string, readonly number[]>> {
  const { data, errors, meta } = Papa.parse<Record<string, string>>(readText(source, "data.csv"), {
    header: true,
    delimiter: ",",
    skipEmptyLines: true,
  });
  if (errors.length > 0) throw new Error(`${source}: ${errors[0]?.message}`);
  return Object.freeze(
    Object.fromEntries((meta.fields ?? []).map((field) => [field, numbersOf(source, field, data)] as const)),
  );
}

/** Reads a JSON file of `tests/published/<source>/`, by default its expected.json. */
export function readExpected<Expected>(source: string, file = "expected.json"): Expected {
  return JSON.parse(readText(source, file)) as Expected;
}

/** Log relative error, the number of correct significant digits: −log10(|q − c| / |c|); 17 where they are equal. */
export function correctDigits(computed: number, certified: number): number {
  if (computed === certified) return 17;
  return -Math.log10(Math.abs(computed - certified) / Math.abs(certified));
}

function readText(source: string, file: string): string {
  return readFileSync(new URL(`./${source}/${file}`, import.meta.url), "utf8");
}

function numbersOf(source: string, field: string, rows: readonly Record<string, string>[]): readonly number[] {
  return Object.freeze(
    rows.map((row) => {
      const text = row[field]?.trim() ?? "";
      const value = Number(text);
      if (text === "" || !Number.isFinite(value)) throw new Error(`${source}: "${text}" in ${field} is not a number`);
      return value;
    }),
  );
}
