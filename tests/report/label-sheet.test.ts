import { expect, test } from "vitest";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { overallOf } from "../../src/record/overall-of.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { renderLabels } from "../../src/report/label-sheet.tsx";
import { ada, ines, signedBy } from "../proof/sample-signing.ts";
import { demoRecord } from "./demo-records.ts";

const sheet = { isSheet: true, skipped: 0 };
const labelsOf = (records: readonly CalibrationRecord[], form = sheet) =>
  renderLabels(records.map(sealRecord), form).replace(/^[\s\S]*<\/style>/u, "");
const textOf = (html: string) => html.replace(/<[^>]+>/gu, " ").replace(/\s+/gu, " ");
const due = demoRecord("LT-310");

test("a label says which loop, when, by whom, how it was left, when next, and which record", () => {
  const { fingerprint } = sealRecord(due).seal;
  expect(textOf(labelsOf([due]))).toContain(
    `LT-310 DRAFT As left: pass Calibrated 2026-03-17 by Ines Example Next due 2026-09-17 Record C-2026-015, revision 1 ${fingerprint}`,
  );
});

test("a record that is issued has no DRAFT on its label; one that still needs a signature has", () => {
  const performed = signedBy(sealRecord(due), [ines, "performed"]);
  expect(textOf(renderLabels([performed], sheet))).toContain("LT-310 DRAFT As left: pass");
  const issued = textOf(renderLabels([signedBy(performed, [ada, "authorised"])], sheet));
  expect(issued).toContain("LT-310 As left: pass");
  expect(issued).not.toContain("DRAFT");
});

test("a loop that was left out of tolerance says so in capitals, on a dark ground", () => {
  expect(labelsOf([demoRecord("ZT-407")])).toContain('<p class="state failed">As left: FAIL</p>');
  expect(labelsOf([due])).toContain('<p class="state">As left: pass</p>');
});

test("an output or a loop check that failed stands on the label of a loop that passes", () => {
  expect(labelsOf([demoRecord("LT-640")])).toContain(
    '<p class="state failed several">As found: FAIL · Q1, loop check</p>',
  );
});

test("a record that is not complete says so first and large, and that what was read is in tolerance", () => {
  const overall = { ...overallOf(due), word: "not complete" as const, complete: false };
  expect(labelsOf([{ ...due, overall }])).toContain(
    '<p class="state failed several">As left: NOT COMPLETE · in tolerance where it was read</p>',
  );
});

test("a fail that is not complete is a fail first, and says the rest after it", () => {
  const failed = demoRecord("ZT-407");
  const overall = { ...overallOf(failed), complete: false };
  expect(labelsOf([{ ...failed, overall }])).toContain(
    '<p class="state failed several">As left: FAIL · not complete</p>',
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
