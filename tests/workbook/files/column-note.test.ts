import { expect, test } from "vitest";
import { tableColumns } from "../../../src/model/table-columns.ts";
import { type TableName, tableNames } from "../../../src/model/table-names.ts";
import { readCell } from "../../../src/workbook/cells/read-cell.ts";
import { columnNote, fixedWords, takesSeveral } from "../../../src/workbook/files/column-note.ts";

function column(table: TableName, name: string) {
  const found = tableColumns(table).find((one) => one.name === name);
  if (found === undefined) throw new RangeError(`${table} has no column ${name}`);
  return found;
}

test.each<[TableName, string, string]>([
  ["instruments", "range_lower", "Needed. "],
  ["instruments", "tolerance", "A number, or a tolerance in words in the unit that tolerance_basis says."],
  ["instruments", "temperature_compensated", "One of yes, no."],
  ["calibrations", "air_temperature", "A number in °C, or with its own unit: K, °F."],
  ["calibrations", "performed_on", "A date, or year-month-day such as 2026-03-04."],
  ["calibrations", "standards", "Words, several with ; between them."],
  ["calibrations", "adjustment", "; several with ; between them."],
  ["readings", "cycle", "A whole number from 1 on."],
  ["readings", "counts", "A number without a unit."],
  ["readings", "time", "A time of day, or as 2026-03-04T14:05 or 14:05:30."],
  ["loop_checks", "measured", "A number, or words."],
])("the note of %s.%s says %s", (table, name, said) => {
  expect(columnNote(column(table, name))).toContain(said);
});

test("every note is a sentence or two that says what is meant, and fits beside its cell", () => {
  for (const one of tableNames.flatMap((table) => tableColumns(table))) {
    expect(columnNote(one)).toMatch(/^[A-Z].*\.\n[A-Z0-9].*\.$/su);
    expect(columnNote(one)).not.toMatch(/undefined|\.\./u);
  }
});

test("every word of a list is taken by the reader, and a list has room in a file: 255 characters, no comma in a word", () => {
  for (const one of tableNames.flatMap((table) => tableColumns(table))) {
    const words = fixedWords(one) ?? [];
    for (const word of words) expect(readCell(word, one, "point", undefined)).toHaveProperty("value");
    expect(words.join(",").length).toBeLessThanOrEqual(255);
    expect(words.filter((word) => word.includes(","))).toEqual([]);
  }
  expect(takesSeveral(column("calibrations", "adjustment"))).toBe(true);
  expect(takesSeveral(column("readings", "phase"))).toBe(false);
  expect(fixedWords(column("readings", "remark"))).toBeUndefined();
});
