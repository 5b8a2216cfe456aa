import { expect, test } from "vitest";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { sealRecord } from "../../src/record/seal-record.ts";
import { renderLabels } from "../../src/report/label-sheet.tsx";
import { demoRecord } from "./demo-records.ts";

const sheet = { isSheet: true, skipped: 0 };
const labelsOf = (records: readonly CalibrationRecord[], form = sheet) =>
  renderLabels(records.map(sealRecord), form).replace(/^[\s\S]*<\/style>/u, "");
const textOf = (html: string) => html.replace(/<[^>]+>/gu, " ").replace(/\s+/gu, " ");
const due = demoRecord("LT-310");

test("a label says which loop, when, by whom, how it was left, when next, and which record", () => {
  const { fingerprint } = sealRecord(due).seal;
  expect(textOf(labelsOf([due]))).toContain(
    `LT-310 Calibrated 2026-03-17 by Ines Example As left: pass · next due 2026-09-17 Record C-2026-015, revision 1 ${fingerprint}`,
  );
});

test("a due date stands there only where somebody agreed to the interval", () => {
  const { nextDue: _, ...notAgreed } = due;
  expect(textOf(labelsOf([notAgreed]))).not.toMatch(/due|2026-09-17/u);
});

test("a sheet has 24 places, those that are used up stay empty, and more go on to the next", () => {
  const sheets = (count: number, skipped: number) =>
    labelsOf(
      Array.from({ length: count }, () => due),
      { isSheet: true, skipped },
    )
      .split('<section class="sheet"')
      .slice(1);
  const places = (html: string) => html.split('class="place"').length - 1;
  expect(sheets(24, 0).map(places)).toEqual([24]);
  expect(sheets(24, 2).map(places)).toEqual([24, 2]);
  expect(sheets(1, 2)[0]).toContain('<div class="place"></div><div class="place"></div><article class="place"');
});

test("a label a page ignores the places of a sheet", () => {
  expect(labelsOf([due, due], { isSheet: false, skipped: 5 }).split('<section class="single"')).toHaveLength(3);
});

test("a tag that is markup is text", () => {
  const hostile = { ...due, instrument: { ...due.instrument, tag: "<b>LT</b>" } };
  expect(labelsOf([hostile])).toContain("&lt;b>LT&lt;/b>");
});
