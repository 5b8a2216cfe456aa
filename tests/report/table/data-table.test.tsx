import { renderToString } from "preact-render-to-string";
import { expect, test } from "vitest";
import type { Column } from "../../../src/report/table/column.ts";
import { DataTable } from "../../../src/report/table/data-table.tsx";

type Line = { what: string; share: string; note?: string };

const lines: readonly Line[] = [
  { what: "scale <b>", share: "1.25" },
  { what: "meter", share: "30", note: "read twice" },
];

const columns: readonly Column<Line>[] = [
  { heading: "What", isRowHeader: true, text: ({ what }) => what },
  { heading: "Share", unit: "mm", kind: "decimal", text: ({ share }) => share },
  { heading: "Note", under: "What", text: ({ note }) => note ?? "" },
];

test("a column is a heading with its scope and its unit, a row has its header, and all of it is text", () => {
  expect(renderToString(<DataTable columns={columns} rows={lines} />)).toBe(
    '<table class="plain numeric"><thead><tr><th scope="col" class="text">What</th><th scope="col">Share, mm</th></tr></thead>' +
      '<tbody><tr><th scope="row">scale &lt;b></th><td>1.25</td></tr>' +
      '<tr><th scope="row">meter<span class="where">read twice</span></th>' +
      '<td><span style="padding-right:2.45ch;">30</span></td></tr></tbody></table>',
  );
});

test("where most cells are numbers the others say that they are none, and where most are not, the numbers do", () => {
  const both: readonly Column<Line>[] = [
    ...columns,
    { heading: "Remark", text: ({ note }) => note ?? "" },
    { heading: "Digits", kind: "number", text: ({ share }) => String(share.length) },
  ];
  const [mostly, partly] = [both, both.slice(0, 4)].map((shown) =>
    renderToString(<DataTable columns={shown} rows={lines.slice(1)} />),
  );
  expect(mostly).toContain('<td class="text">read twice</td><td>2</td>');
  expect(mostly).toContain('<th scope="col" class="text">Remark</th><th scope="col">Digits</th>');
  expect(partly).toContain('<td class="number">30</td><td>read twice</td>');
});

test("a foot stands under its column, over several where it says so, and lines up with them", () => {
  const footed: readonly Column<Line>[] = [
    { heading: "What", isRowHeader: true, text: ({ what }) => what, foot: { text: "Together" } },
    { heading: "First", text: () => "a", foot: { text: "of both", span: 2 } },
    { heading: "Second", text: () => "b" },
    { heading: "Share", kind: "decimal", text: ({ share }) => share, foot: { text: "31.3" } },
    { heading: "Last", text: () => "c" },
  ];
  expect(renderToString(<DataTable columns={footed} rows={lines} />)).toContain(
    '<tfoot><tr><th scope="row">Together</th><td colspan="2">of both</td>' +
      '<td class="number"><span style="padding-right:1ch;">31.3</span></td><td></td></tr></tfoot>',
  );
});

test("rows stand in groups under their titles; what cannot be told of a row lies over its cells", () => {
  const table = (
    <DataTable
      columns={columns}
      groups={[
        { title: "First", rows: lines.slice(0, 1) },
        { title: "Second", rows: lines.slice(1) },
      ]}
      instead={({ note }) => (note === undefined ? undefined : "not determined")}
    />
  );
  const html = renderToString(table);
  expect(html.match(/<tbody>/gu)).toHaveLength(2);
  expect(html).toContain('<th scope="rowgroup" colspan="2" class="group">First</th>');
  expect(html).toMatch(/meter<span class="where">read twice<\/span><\/th><td colspan="1" class="not-determined">/u);
});

test("a table may have no head, classes and states of its rows, and a place that scrolls, with its notes", () => {
  const table = (
    <DataTable
      label="Lines"
      caption="All lines"
      hasNoHead
      columns={columns}
      rows={lines}
      classOf={({ note }) => (note ? "noted" : undefined)}
      stateOf={({ what }) => what}
    >
      <p>below</p>
    </DataTable>
  );
  const html = renderToString(table);
  expect(html).toMatch(
    /^<section[^>]* aria-label="Lines"[^>]*><p class="sideways" tabindex="0">.*<\/p><table class="plain numeric"><caption>All lines<\/caption><tbody>/u,
  );
  expect(html).toContain('<tr class="noted" data-state="meter">');
  expect(html).toMatch(/<\/table><p>below<\/p><\/section>$/u);
});
