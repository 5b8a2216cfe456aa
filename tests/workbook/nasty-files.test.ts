import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { checked, withFile } from "./smallest-workbook.ts";

const folder = new URL("./nasty/", import.meta.url);

/** Line, reference and signal of each reading, and the remark where there is one; "told" is code, line and column. */
type Expected = { read: string; rows: readonly (readonly (string | number)[])[]; told?: readonly string[] };

const fromLine = (first: number, step = 1): Expected["rows"] =>
  [0, 25, 50, 75, 100].map((reference, index) => [first + index * step, reference, 4.01 + 4 * index]);

/** The five readings that every file but a few holds, in whatever disguise. */
const five = fromLine(2);
const remarked = (...remarks: readonly string[]) =>
  five.map((row, index) => (remarks[index] === undefined ? row : [...row, remarks[index]]));
const refused = (code: string, read = "utf-8 null point"): Expected => ({ read, rows: [], told: [code] });

const plain = 'utf-8 "," point';

const expected: Readonly<Record<string, Expected>> = {
  "bytes-of-a-picture": refused("tables/encoding"),
  "choices-as-people-write-them": { read: plain, rows: five },
  "comma-quoted-decimal-comma": { read: 'utf-8 "," comma', rows: five },
  "control-characters": {
    read: plain,
    rows: [
      [2, 0, 4.01, "a␀b␛[31m"],
      [3, 25, 8.01, "\ufffdgnp.exe\ufffd"],
      [4, 50, 12.01, "del␡ \ufffd"],
      [5, 75, 16.01, "tab\tand\nnewline"],
      [7, 100, 20.01],
    ],
    told: [2, 3, 4].map((line) => `tables/control-character ${line}:remark`),
  },
  "cr-only": { read: plain, rows: five },
  crlf: { read: plain, rows: five },
  "date-like-number": {
    read: plain,
    rows: five.filter((_, index) => index !== 1 && index !== 2),
    told: ["tables/cell-not-number 3:signal", "tables/cell-not-number 4:signal"],
  },
  "delimiter-line": {
    read: 'utf-8 ";" comma',
    rows: fromLine(3).slice(0, 4),
    told: ["tables/cell-not-number 7:signal"],
  },
  "duplicate-header": { read: plain, rows: five, told: ["tables/column-twice 1:Signal"] },
  "empty-file": refused("tables/empty", plain),
  "empty-rows-above-header": {
    read: plain,
    rows: fromLine(4).slice(0, 4),
    told: ["tables/cell-not-number 8:signal"],
  },
  "empty-rows-between": {
    read: plain,
    rows: fromLine(4, 3).slice(0, 4),
    told: ["tables/cell-not-number 16:signal"],
  },
  "grouped-thousands": { read: plain, rows: five.slice(1), told: ["tables/cell-not-number 2:signal"] },
  "header-in-capitals-and-spaces": { read: plain, rows: five },
  "header-over-two-lines": {
    read: plain,
    rows: fromLine(3).slice(0, 4),
    told: ["tables/column-unknown 1:targ\net", "tables/cell-not-number 7:signal"],
  },
  "lone-surrogate": {
    read: 'utf-16le "\\t" point',
    rows: remarked("half \ufffd"),
    told: ["tables/control-character 2:remark"],
  },
  "long-remark": { read: plain, rows: remarked("x".repeat(10_000)), told: ["tables/cell-long 2:remark"] },
  "mixed-decimal-marks": {
    read: 'utf-8 ";" point',
    rows: five.filter((_, index) => index !== 2),
    told: ["tables/decimal-mark-mixed 4:signal", "tables/cell-not-number 4:signal"],
  },
  "no-newline-at-end": { read: plain, rows: five },
  "one-column": {
    read: plain,
    rows: [],
    told: [...Array(3).fill("tables/column-missing 1"), "model/nothing-measured 2"],
  },
  "only-a-bom": refused("tables/empty", plain),
  "only-a-header": refused("tables/empty", plain),
  "prototype-cells": { read: plain, rows: remarked("__proto__", "constructor") },
  "prototype-names": {
    read: plain,
    rows: five,
    told: ["tables/column-unknown 1:__proto__", "tables/column-unknown 1:constructor"],
  },
  "quote-inside-a-field": { read: plain, rows: remarked('5" pipe', 'say "ok"') },
  "quoted-newline": {
    read: plain,
    rows: [
      [2, 0, 4.01, "one\ntwo\nthree"],
      [5, 25, 8.01],
      [6, 50, 12.01],
      [7, 75, 16.01],
    ],
    told: ["tables/cell-not-number 8:signal"],
  },
  "quoted-newline-crlf": {
    read: plain,
    rows: [
      [2, 0, 4.01, "one\ntwo"],
      [4, 25, 8.01],
      [5, 50, 12.01],
      [6, 75, 16.01],
    ],
    told: ["tables/cell-not-number 7:signal"],
  },
  "ragged-row-long": { read: plain, rows: five.filter((_, index) => index !== 2), told: ["tables/row-long 4"] },
  "ragged-row-short": {
    read: plain,
    rows: remarked("a").filter((_, index) => index !== 3),
    told: ["tables/row-short 5"],
  },
  "semicolon-commas-like-thousands": { read: 'utf-8 ";" comma', rows: five },
  "semicolon-decimal-comma": { read: 'utf-8 ";" comma', rows: five },
  "semicolon-decimal-point": { read: 'utf-8 ";" point', rows: five },
  "signs-and-spaces": { read: plain, rows: [[2, -0.5, 4.01], ...five.slice(1)] },
  "spreadsheet-error-words": {
    read: plain,
    rows: five.filter((_, index) => index !== 1 && index !== 2),
    told: ["tables/cell-not-number 3:signal", "tables/cell-not-number 4:signal"],
  },
  "tab-decimal-comma": { read: 'utf-8 "\\t" comma', rows: five },
  "text-after-a-quote": { read: plain, rows: [], told: ["tables/quote 2"] },
  "thousands-or-decimals": { read: 'utf-8 "," comma', rows: five, told: ["tables/decimal-mark-ambiguous 2:signal"] },
  "thousands-point-and-decimal-comma": {
    read: 'utf-8 ";" comma',
    rows: five.slice(1),
    told: ["tables/cell-not-number 2:signal"],
  },
  "thousands-spaces": {
    read: plain,
    rows: [
      [2, 0, 0.00401, 1234],
      [3, 25, 8.01, 6234],
      [4, 50, 12.01, 11234],
      [5, 75, 16.01],
      [6, 100, 20.01, 27648],
    ],
    told: ["model/signal-outside-range 2:signal", "model/counts-unscaled 2:counts"],
  },
  "trailing-empty-columns": { read: plain, rows: five },
  "trailing-empty-rows": { read: plain, rows: five },
  "unclosed-quote": { read: plain, rows: five.slice(0, 2), told: ["tables/quote 4", "model/few-points 2"] },
  "unit-of-another-kind": {
    read: plain,
    rows: five.filter((_, index) => index !== 2 && index !== 3),
    told: ["tables/cell-unit-kind 4:signal", "tables/cell-unit-kind 5:reference", "model/few-points 2"],
  },
  "units-in-cells": { read: plain, rows: five },
  "unknown-header": { read: plain, rows: five, told: ["tables/column-unknown 1:refrence"] },
  "utf16-cut-in-half": refused("tables/encoding"),
  "utf16be-bom": { read: 'utf-16be "\\t" point', rows: remarked("Größe ± 東京") },
  "utf16le-bom": { read: 'utf-16le "\\t" point', rows: remarked("Größe ± 東京") },
  "utf16le-without-bom": refused("tables/encoding"),
  "utf8-bom": { read: plain, rows: five },
  "utf8-bom-and-then-windows-1252": refused("tables/encoding"),
  "value-under-no-name": {
    read: plain,
    rows: five.filter((_, index) => index !== 1),
    told: ["tables/column-unnamed 3"],
  },
  "windows-1252": { read: 'windows-1252 "," point', rows: remarked("Größe ±5 µm – “ok” 3 €") },
  "windows-1252-undefined-byte": refused("tables/encoding"),
};

const names = readdirSync(folder).filter((name) => name.endsWith(".csv"));

test("every nasty file has its expectation, and the other way round", () => {
  expect(names.toSorted()).toEqual(
    Object.keys(expected)
      .map((name) => `${name}.csv`)
      .toSorted(),
  );
});

test.each(Object.entries(expected))("%s", async (name, { read, rows, told = [] }) => {
  const bytes = new Uint8Array(readFileSync(new URL(`${name}.csv`, folder)));
  const { tables, workbook, problems } = await checked(withFile("readings.csv", bytes));
  const { encoding, delimiter, decimalMark } = tables.find(({ table }) => table === "readings")?.description ?? {};
  expect(`${encoding} ${JSON.stringify(delimiter)} ${decimalMark}`).toBe(read);
  expect(
    problems.map(({ code, place: { line, column } }) => `${code} ${[line, column].filter(Boolean).join(":")}`.trim()),
  ).toEqual(told);
  const found = workbook.readings.map(({ line, row: { reference, signal, remark, counts } }) =>
    [line, reference, rounded(signal), remark, counts].filter((value) => value !== undefined),
  );
  expect(found).toEqual(rows.map(([line, reference, signal, ...rest]) => [line, reference, rounded(signal), ...rest]));
});

/** 12 decimals: a converted unit or a sum may differ from the written number in the last place. */
function rounded(signal: unknown): number {
  return Number(Number(signal).toFixed(12));
}

test("a file polluted with names of prototypes leaves every other object as it was", () => {
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  expect(Object.keys(Object.prototype)).toEqual([]);
});
