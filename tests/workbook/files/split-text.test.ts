import fc from "fast-check";
import { expect, test } from "vitest";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { splitText } from "../../../src/workbook/files/split-text.ts";

function split(text: string, pieces: readonly string[] = [text]) {
  const problems = new ProblemList();
  const { header, rows, delimiter } = splitText(pieces, "readings", "readings.csv", problems);
  return { rows: header === undefined ? [] : [header, ...rows], delimiter, problems: problems.all };
}

test("the delimiter is the one with which the header names most known columns, not the one that occurs most", () => {
  // With commas every row has three cells; only the header tells.
  const text = "reference;signal\n0,5;4,01\n1,5;8,01\n2,5;12,01\n";
  expect(split(text).delimiter).toBe(";");
  expect(split(text).rows[1]).toEqual({ line: 2, cells: ["0,5", "4,01"] });
});

test.each([
  ["reference,signal\n", ","],
  ["reference;signal\n", ";"],
  ["reference\tsignal\n", "\t"],
  ["reference\n", ","],
  ["", ","],
  ["one;two\n", ";"],
])("the delimiter of %j is %j", (text, delimiter) => {
  expect(split(text).delimiter).toBe(delimiter);
});

test("lines are counted through empty rows, quoted newlines and every kind of line end", () => {
  const text = '\r\nreference,remark\r\n1,"a\r\nb"\r2,\n\n3,"c\n\nd"\n4,e';
  expect(split(text).rows).toEqual([
    { line: 2, cells: ["reference", "remark"] },
    { line: 3, cells: ["1", "a\nb"] },
    { line: 5, cells: ["2", ""] },
    { line: 7, cells: ["3", "c\n\nd"] },
    { line: 10, cells: ["4", "e"] },
  ]);
});

test("a first line sep=; states the delimiter and is no row", () => {
  expect(split("sep=;\nreference;signal\n")).toMatchObject({
    delimiter: ";",
    rows: [{ line: 2, cells: ["reference", "signal"] }],
  });
});

test("a malformed quotation mark is a problem at its line, and only its row is dropped", () => {
  const { rows, problems } = split('reference,remark\n1,ok\n2,"a"b,\n');
  expect(rows).toHaveLength(2);
  expect(problems).toMatchObject([{ code: "tables/quote", place: { file: "readings.csv", line: 3 } }]);
});

test("cells that were written with quotation marks come back as they were", () => {
  const cell = fc.string({ unit: fc.constantFrom("a", '"', ",", ";", "\n", " ", "\t", "é") });
  fc.assert(
    fc.property(fc.array(cell, { minLength: 1, maxLength: 5 }), (cells) => {
      const written = cells.map((text) => `"${text.replaceAll('"', '""')}"`).join(",");
      const { rows, problems } = split(`reference,signal,remark,time,point\n${written}\n`);
      expect(problems).toEqual([]);
      expect(rows[1]?.cells).toEqual(cells.some((text) => text.trim() !== "") ? cells : undefined);
    }),
    { seed: 20261125 },
  );
});

/** As of a file, the first piece holds the header, and more. */
const longBeginning = `reference,signal,remark\n1,2,"${"a".repeat(70_000)}"\n`;

test("a text in pieces is split as it is in one, wherever the pieces end", () => {
  const sign = fc.constantFrom("a", "1", '"', '""', ",", ";", "\n", "\r", "\r\n", " ", "\ufeff");
  fc.assert(
    fc.property(fc.array(sign), fc.array(fc.nat({ max: 40 })), (signs, cuts) => {
      const text = `${longBeginning}${signs.join("")}`;
      const places = [0, ...cuts.map((cut) => longBeginning.length + cut).toSorted((a, b) => a - b), text.length];
      const pieces = places.slice(1).map((place, index) => text.slice(places[index], place));
      expect(split(text, pieces)).toEqual(split(text));
    }),
    { seed: 20261128 },
  );
});
