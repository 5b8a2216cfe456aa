import { expect, test } from "vitest";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { renderPage } from "../../src/report/page.tsx";
import { demoRecord } from "./demo-records.ts";

const noDrawings = { errorWide: undefined, errorNarrow: undefined, stages: [], others: [], absent: [] };

function sectionOf(record: CalibrationRecord): string {
  const page = renderPage(sealRecord(record), noDrawings);
  const from = page.indexOf('aria-labelledby="replacement-title"');
  if (from < 0) return "";
  return page.slice(from, page.indexOf("<h2", from));
}

/** The texts of each row of the matrix, cell by cell. */
function matrixOf(section: string): readonly (readonly string[])[] {
  const table = section.slice(section.indexOf("<table"), section.indexOf("</table>"));
  return table
    .split("<tr")
    .slice(1)
    .map((row) =>
      row
        .split(/(?=<t[hd])/u)
        .slice(1)
        .map((cell) =>
          cell
            .replace(/<[^>]+>/gu, " ")
            .replace(/\s+/gu, " ")
            .trim(),
        ),
    );
}

test("demands are rows and candidates columns, best first, each cell with its result in words and its reason", () => {
  const record = demoRecord("ZT-407");
  const [heading = [], ...rows] = matrixOf(sectionOf(record));
  expect(heading).toEqual([
    "What the loop needs",
    "candidate C fits",
    "candidate B fits with changes",
    "candidate A does not fit",
  ]);
  expect(rows).toHaveLength(record.candidates?.fits[0]?.cells.length ?? 0);
  for (const row of rows) {
    expect(row).toHaveLength(heading.length);
    for (const cell of row.slice(1))
      expect(cell).toMatch(/^(?:fits|fits with a change|does not fit|cannot be told) : \S/u);
  }
  const farEnd = rows.find(([demand]) => demand?.startsWith("range, far end"));
  expect(farEnd?.at(-1)).toBe("does not fit : 8 mm out of reach: the last 2 mm of the range");
});

test("the changes and the reasons stand above the matrix, and so does that nothing is recommended", () => {
  const section = sectionOf(demoRecord("ZT-407"));
  const above = section.slice(0, section.indexOf("<table"));
  expect(above).toContain("It recommends none of them");
  expect(above).toContain("<li>connector: another cable, plug or adapter");
  expect(above).toContain("<li>accuracy: its own error: 0.07 mm where 0.064 mm at most is allowed");
});

test("what is typed of a candidate stays a text", () => {
  const record = structuredClone(demoRecord("ZT-407"));
  const [first] = record.candidates?.fits ?? [];
  if (first?.cells[0]) Object.assign(first.cells[0], { offers: "<img src=x>", reason: "a & b" });
  if (first) first.candidate = "<script>alert(1)</script>";
  const section = sectionOf(record);
  expect(section).not.toMatch(/<(?:script|img)/u);
  expect(section).toContain("&lt;script>alert(1)&lt;/script>");
  expect(section).toContain("&lt;img src=x>");
});

test("four candidates stand in two tables, and a loop without any has no such part", () => {
  const record = structuredClone(demoRecord("ZT-407"));
  const [first] = record.candidates?.fits ?? [];
  if (first) record.candidates?.fits.push({ ...first, row: 9, candidate: "candidate D" });
  const section = sectionOf(record);
  expect(section.match(/<table/gu)).toHaveLength(2);
  expect(section).toContain("Candidates against the loop, part 2");
  expect(sectionOf(demoRecord("ZT-201"))).toBe("");
});
