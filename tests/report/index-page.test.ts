import { expect, test } from "vitest";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { indexRow } from "../../src/report/columns/index-columns.tsx";
import { renderIndex } from "../../src/report/index-page.tsx";
import { demoRecords } from "./demo-records.ts";

const rows = demoRecords.map((record) => indexRow(sealRecord(record), `${record.instrument.tag}/x.html`));
const page = renderIndex(rows);

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
  expect(renderIndex(rows.toReversed())).toBe(page);
});

test("names are text, never markup", () => {
  const odd = renderIndex(rows.slice(0, 1).map((row) => ({ ...row, tag: "<b>x</b>" })));
  expect(odd).not.toContain("<b>x");
  expect(odd).toContain("&lt;b>x");
});
