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
