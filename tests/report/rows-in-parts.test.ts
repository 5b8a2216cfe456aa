import { expect, test } from "vitest";
import { type PartedTable, packedRows, rowsInParts } from "../../src/report/rows-in-parts.tsx";
import { dataOf } from "./data-of.ts";

type Row = { name: string; size: number; link: string };
const rows = Array.from({ length: 501 }, (_, index): Row => ({ name: `<${index}>`, size: index, link: "x" }));
const table: PartedTable<Row> = {
  ...{ title: "Things", kind: "things", rows, fromBelow: (row) => ({ ...row, link: `../${row.link}` }) },
  columns: [
    { heading: "Name", isRowHeader: true, text: ({ name }) => name },
    { heading: "Link", under: "Name", text: ({ link }) => link },
    { heading: "Size", text: ({ size }) => `${size} cm`, sortBy: ({ size }) => -size },
  ],
};
const page = { name: "all", what: "All of them", style: "h1{color:red}" };

test("five hundred rows are a part, which is named by the places of its rows, or by its first and its last", () => {
  expect(rowsInParts(table, page).map(({ path, words }) => [path, words])).toEqual([
    ["all-parts/things-001.html", "rows 1 to 500"],
    ["all-parts/things-002.html", "rows 501 to 501"],
  ]);
  const named = rowsInParts({ ...table, nameOf: ({ name }) => name }, page);
  expect(named.map(({ words }) => words)).toEqual(["<0> to <499>", "<500> to <500>"]);
  expect(rowsInParts({ ...table, rows: [] }, page)).toEqual([]);
});

test("a part has its own rows, says which part it is and where the others are; names are text", () => {
  const [, last] = rowsInParts({ ...table, nameOf: ({ name }) => name }, page).map(({ render }) => render());
  expect(last).toContain("<h1>Things: <bdi>&lt;500> to &lt;500></bdi></h1>");
  expect(last).toContain('part 2 of 2; how all of them stand is said in <a href="../all.html">all.html</a>');
  expect(last).toMatch(
    /<th scope="row">&lt;500><span class="where">..\/x<\/span>(?:<\/th>)?<td data-value="-500">500 cm/u,
  );
  expect(last?.match(/<th scope="row">/gu)).toHaveLength(1);
  expect(last).toContain("h1{color:red}");
});

test("as data a row is its HTML, its state and what it is sorted by, a column that stands below another left out", () => {
  const closing = { ...rows[0]!, name: "</script>\n<script>" };
  const packed = packedRows({ ...table, rows: [...rows, closing], stateOf: ({ size }) => (size > 9 ? "large" : "") });
  const data = dataOf(packed);
  expect(data).toHaveLength(502);
  expect(data[10]?.slice(1)).toEqual(["large", "<10>", -10]);
  expect(data[501]?.[0]).toContain("&lt;/script>&#10;&lt;script>");
  expect(packed.match(/<\/script>/gu)).toHaveLength(1);
});
