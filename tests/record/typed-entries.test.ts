import { expect, test } from "vitest";
import { typedEntries } from "../../src/record/typed-entries.ts";

const row = (line: number, cells: Record<string, string>) => ({ file: "readings.csv", line, cells });

test("sheets once, the first and the last moment, and what was typed again with its line", () => {
  const readings = [
    row(2, { typed_in: "S-1-aa", typed_at: "2026-11-27T10:12:00+01:00" }),
    row(3, {
      typed_in: "S-1-aa",
      typed_at: "2026-11-27T10:44:00+01:00",
      typed_before: "signal 12.54 until 2026-11-27T10:44:00+01:00",
    }),
  ];
  expect(typedEntries({ inputs: { rows: { readings } } })).toEqual({
    sheets: ["S-1-aa"],
    first: "2026-11-27T10:12:00+01:00",
    last: "2026-11-27T10:44:00+01:00",
    again: [{ table: "readings", line: 3, before: "signal 12.54 until 2026-11-27T10:44:00+01:00" }],
  });
});

test("rows that came from no sheet say nothing", () => {
  expect(typedEntries({ inputs: { rows: { readings: [row(2, { signal: "12" })] } } })).toBeUndefined();
});
