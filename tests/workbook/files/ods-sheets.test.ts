import { expect, test } from "vitest";
import { odsSheets } from "../../../src/workbook/files/ods-sheets.ts";
import { odsOf, odsRow } from "../ods-of.ts";
import { zipOfParts } from "../zip-of.ts";

const cellsOf = (spreadsheet: string) =>
  odsSheets(odsOf(spreadsheet))[0]?.rows.map(({ line, cells }) => [line, ...cells]);

test("rows are found in groups and below repeated headers, and keep their numbers", () => {
  const rows = [
    `<table:table-header-rows>${odsRow("a", "b")}</table:table-header-rows>`,
    `<table:table-row table:number-rows-repeated="3"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>`,
    `<table:table-row-group><table:table-row-group>${odsRow("1", "2")}</table:table-row-group>${odsRow("3", "4")}</table:table-row-group>`,
    `<table:table-row table:number-rows-repeated="1048000"><table:table-cell/></table:table-row>`,
  ];
  expect(cellsOf(`<table:table table:name="x">${rows.join("")}</table:table>`)).toEqual([
    [1, "a", "b"],
    [5, "1", "2"],
    [6, "3", "4"],
  ]);
});

test("what repeats stands in each of its cells and rows", () => {
  const cell =
    '<table:table-cell table:number-columns-repeated="2" office:value-type="float" office:value="7"><text:p>7</text:p></table:table-cell>';
  const rows = `<table:table-row table:number-rows-repeated="2"><table:table-cell/>${cell}</table:table-row>`;
  expect(cellsOf(`<table:table table:name="x">${rows}</table:table>`)).toEqual([
    [1, "", "7", "7"],
    [2, "", "7", "7"],
  ]);
});

test("notes, pictures and earlier contents are no text of a cell; breaks, spaces and links are", () => {
  const note = "<office:annotation><dc:creator>me</dc:creator><text:p>note</text:p></office:annotation>";
  const text =
    "<text:p>a<text:s text:c='2'/><text:span>b</text:span><text:a>c</text:a></text:p><text:p>d<text:line-break/>e</text:p>";
  const changes = `<table:tracked-changes><table:deletion>${odsRow("gone")}</table:deletion></table:tracked-changes>`;
  const shapes = "<table:shapes><draw:frame><text:p>shape</text:p></draw:frame></table:shapes>";
  const row = `<table:table-row><table:table-cell office:value-type="string">${note}${text}</table:table-cell></table:table-row>`;
  expect(cellsOf(`${changes}<table:table table:name="x">${shapes}${row}</table:table>`)).toEqual([[1, "a  bc\nd\ne"]]);
});

test("hidden sheets, columns and rows and merged cells are known", () => {
  const style =
    '<style:style style:name="ta1" style:family="table"><style:table-properties table:display="false"/></style:style>';
  const sheet = [
    '<table:table table:name="x" table:style-name="ta1">',
    '<table:table-column/><table:table-column table:visibility="collapse" table:number-columns-repeated="2"/>',
    odsRow("a", "b", "c"),
    odsRow("1").replace("table:table-row", 'table:table-row table:visibility="filter"'),
    '<table:table-row><table:table-cell table:number-rows-spanned="2" table:number-columns-spanned="3" office:value-type="string"><text:p>m</text:p></table:table-cell><table:covered-table-cell table:number-columns-repeated="2"/></table:table-row>',
    "</table:table>",
  ].join("");
  const [found] = odsSheets(odsOf(sheet, style));
  expect(found).toMatchObject({ name: "x", isHidden: true });
  expect([...(found?.hiddenColumns ?? [])]).toEqual([1, 2]);
  expect([...(found?.hiddenLines ?? [])]).toEqual([2]);
  expect(found?.merged).toEqual([{ first: { line: 3, index: 0 }, last: { line: 4, index: 2 } }]);
});

test("what repeats without end is told by where it would reach, and broken content throws", () => {
  const row = odsRow("x").replace("table:table-row", 'table:table-row table:number-rows-repeated="9000000"');
  expect(() => odsSheets(odsOf(`<table:table table:name="x">${row}</table:table>`))).toThrow(RangeError);
  expect(() => odsSheets(odsOf("<table:table>"))).toThrow(SyntaxError);
  expect(() => odsSheets(zipOfParts({ mimetype: "x" }))).toThrow(SyntaxError);
});
