import { expect, test } from "vitest";
import { alignedTable } from "../../src/cli/print-table.ts";

test("columns are as wide as their widest cell, and nothing trails", () => {
  const rows = [
    ["tag", "worst"],
    ["LT-204", "+0.740"],
    ["A", ""],
  ];
  expect(alignedTable(rows)).toBe(["tag     worst", "──────  ──────", "LT-204  +0.740", "A"].join("\n"));
});

test("a character outside the basic plane counts once", () => {
  expect(
    alignedTable([
      ["a", "b"],
      ["😀", "c"],
    ]),
  ).toBe(["a  b", "─  ─", "😀  c"].join("\n"));
});

test("a cell with a line break in it makes no row of its own", () => {
  expect(
    alignedTable([
      ["tag", "b"],
      ["LT-1\r\nLT-9  filed\u2028x", "c\nd"],
    ]).split("\n"),
  ).toEqual(["tag                 b", "──────────────────  ───", "LT-1 LT-9  filed x  c d"]);
});

test("a cell that is far too wide is cut, but for the last, which may be a path", () => {
  const path = "p/".repeat(100);
  const [, , row] = alignedTable([
    ["a", "b"],
    ["x".repeat(100_000), path],
  ]).split("\n");
  expect(row).toBe(`${"x".repeat(99)}…  ${path}`);
});
