import { expect, test } from "vitest";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { indexRow } from "../../src/report/columns/index-columns.tsx";
import { renderIndex } from "../../src/report/index-page.tsx";
import { dataOf, drawnIn } from "./data-of.ts";
import { demoRecords } from "./demo-records.ts";

const rows = demoRecords.map((record) => indexRow(sealRecord(record), `${record.instrument.tag}/x.html`));
const { page } = renderIndex(rows);

test("every record is a row with a link, and they are counted by their word", () => {
  for (const { tag } of rows) expect(page).toContain(`<a href="${tag}/x.html"><bdi>${tag}</bdi></a>`);
  expect(page).toContain(`<h1>${rows.length} records</h1>`);
  const failed = rows.filter(({ overall }) => overall === "fail").length;
  expect(page).toContain(`<strong>${failed}</strong> fail`);
});

test("it reads without its script, which alone shows the search", () => {
  expect(page).toContain('<p id="find" class="find" hidden>');
  expect(page).toMatch(/script-src 'sha256-[^']+'/u);
});

test("the order of the rows is that of the tags, whatever the order in which they were read", () => {
  expect(renderIndex(rows.toReversed()).page).toBe(page);
});

test("names are text, never markup", () => {
  const odd = renderIndex(rows.slice(0, 1).map((row) => ({ ...row, tag: "<b>x</b>" }))).page;
  expect(odd).not.toContain("<b>x");
  expect(odd).toContain("&lt;b>x");
});

test("of more than a thousand records the page draws the first 200, and has all as data and in parts", () => {
  const [row] = rows;
  const many = Array.from({ length: 1001 }, (_, index) => ({ ...row!, tag: `T-${index}`, page: `T-${index}/x.html` }));
  const whole = renderIndex(many.slice(1));
  expect([drawnIn(whole.page), whole.parts.length, dataOf(whole.page).length]).toEqual([1000, 0, 0]);
  const long = renderIndex(many);
  expect([drawnIn(long.page), long.parts.length, dataOf(long.page).length]).toEqual([200, 3, 1001]);
  expect(dataOf(long.page)[1000]?.slice(1, 3)).toEqual([row!.overall, "T-1000"]);
  const inParts = long.parts.flatMap(({ render }) => [...render().matchAll(/href="\.\.\/(T-\d+)\/x\.html"/gu)]);
  expect(inParts.map(([, tag]) => tag)).toEqual(many.map(({ tag }) => tag));
  for (const { path } of long.parts) expect(long.page).toContain(`<a href="${path}">`);
});
