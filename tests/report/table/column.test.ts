import { expect, test } from "vitest";
import { type Column, namedRows } from "../../../src/report/table/column.ts";

type Loop = { tag: string; error: number | null };

const columns: readonly Column<Loop>[] = [
  { heading: "Tag", name: "tag", text: ({ tag }) => tag, cell: ({ tag }) => `the loop ${tag}` },
  { heading: "On a page alone", text: () => "seen" },
  { heading: "Error", name: "error", value: ({ error }) => error ?? "", text: ({ error }) => `${error} mm` },
  { heading: "Sign", name: "sign", cell: () => null },
];

test("a terminal and a CSV have the columns with a name: their value, else their text, else nothing", () => {
  const rows = namedRows(columns, [
    { tag: "LT-1", error: 0.125 },
    { tag: "LT-2", error: null },
  ]);
  expect(rows).toEqual([
    ["tag", "error", "sign"],
    ["LT-1", 0.125, ""],
    ["LT-2", "", ""],
  ]);
});

test("of no rows the names stand alone", () => {
  expect(namedRows(columns, [])).toEqual([["tag", "error", "sign"]]);
});
