import { expect, test } from "vitest";
import { recordChanges } from "../../../src/proof/record-changes.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import type { Amendment, Change } from "../../../src/record/amendment-schema.ts";
import { renderPage } from "../../../src/report/page.tsx";
import { otherRows, resultRows, typedRows } from "../../../src/report/texts/amendment-texts.ts";
import { demoRecord } from "../demo-records.ts";

const record = demoRecord("LT-310");
const noDrawings = { errorWide: undefined, errorNarrow: undefined, stages: [], others: [], absent: [] };

function amendment(changes: readonly Change[]): Amendment {
  const replaces = { calibration: "C-2026-015", revision: 1, sha256: "ab".repeat(32) };
  return { replaces, reason: "a <slip>", by: "Tom Sample", at: "2026-11-25T14:05:00+01:00", changes: [...changes] };
}

const told = (rows: readonly { what: string; before: string; after: string }[]) =>
  rows.map(({ what, before, after }) => `${what}: ${before} → ${after}`);

test("a cell is told at its line with the digits that were typed", () => {
  const [first] = record.inputs.rows.readings;
  const change = { place: "inputs.rows.readings[0].cells.signal", before: '"4,12"', after: '"4,120"' };
  expect(told(typedRows(record, amendment([change])))).toEqual([`readings, line ${first?.line}: signal: 4,12 → 4,120`]);
});

test("a row that was added or taken away is told with its cells", () => {
  const added = { place: "inputs.rows.readings[1]", before: null, after: '{"reference":"40","signal":"10.41"}' };
  const gone = { place: "inputs.rows.readings[7]", before: '{"reference":"50"}', after: null };
  const line = record.inputs.rows.readings[1]?.line;
  expect(told(typedRows(record, amendment([added, gone])))).toEqual([
    `readings, line ${line}: a row more: – → reference 40; signal 10.41`,
    "readings, row 8 of before: a row less: reference 50 → –",
  ]);
});

test("results come first and figures under the names of the page, with as many digits as tell them apart", () => {
  const changes = [
    { place: "phases.asFound.zeroError.percentSpan", before: "0.7816497", after: "0.7816683" },
    { place: "phases.asFound.inaccuracy.positive", before: "0.951", after: "1.9875" },
    { place: "phases.asLeft.hysteresis.percentSpan", before: "0.1", after: null },
    { place: "phases.asFound.verdict", before: '"pass"', after: '"fail"' },
    { place: "nextDue", before: null, after: '"2027-03-04"' },
  ];
  expect(told(resultRows(amendment(changes)))).toEqual([
    "As found: result: pass → fail",
    "Next due: – → 2027-03-04",
    "As found: zero error, % of span: 0.7816 → 0.7817",
    "As found: inaccuracy, positive, % of span: 0.951 → 1.99",
    "As left: hysteresis, % of span: 0.100 → –",
  ]);
});

test("every other field is told by its path, those along a list by their places from 1", () => {
  const changes = [
    { place: "phases.asFound.readings[].errorDistance", before: '{"0":1.25,"11":-2}', after: '{"0":1.5,"11":null}' },
    { place: "phases.asFound.points[].budget.lines[].value", before: null, after: '{"0.2":true}' },
    { place: "warnings", before: "[]", after: null },
  ];
  expect(told(otherRows(amendment(changes)))).toEqual([
    "phases.asFound.readings[].errorDistance: 1: 1.25000; 12: -2 → 1: 1.50000; 12: not determined",
    "phases.asFound.points[].budget.lines[].value: – → 1.3: yes",
    "warnings: none → –",
  ]);
});

test("no change is lost between the three tables, and none is told twice", () => {
  const { asFound } = record.phases;
  if (asFound === undefined) throw new TypeError("LT-310 was read as found");
  const after = {
    ...record,
    phases: {
      ...record.phases,
      asFound: { ...asFound, readings: asFound.readings.slice(1), verdict: null, zeroError: null },
    },
    inputs: { ...record.inputs, rows: { ...record.inputs.rows, readings: record.inputs.rows.readings.slice(1) } },
  };
  const changes = recordChanges(record, after);
  const of = amendment(changes);
  const places = [...typedRows(after, of), ...resultRows(of), ...otherRows(of)].map(({ place }) => place);
  expect(places.toSorted()).toEqual(changes.map(({ place }) => place).toSorted());
  expect(new Set(places).size).toBe(changes.length);
});

test("the page of a later revision shows it near its top, and names the revision in heading, title and print", () => {
  const change = { place: "phases.asFound.verdict", before: '"pass"', after: '"fail"' };
  const page = renderPage(sealRecord({ ...record, revision: 2, amendment: amendment([change]) }), noDrawings);
  const text = page.replace(/<script[\s\S]*<\/script>/u, "");
  expect(text).toContain("<title>LT-310 · calibration record C-2026-015, revision 2</title>");
  expect(text).toContain("Calibration record, amendment 1 ");
  expect(text).toContain("<dd><bdi>C-2026-015, revision 2");
  expect(text).toContain("Amendment 1 to record C-2026-015</h3>");
  expect(text).toContain("It replaces revision 1 (fingerprint");
  expect(text).toContain("<dd><bdi>a &lt;slip>");
  expect(text).toContain("2026-11-25 14:05:00 +01:00");
  expect(text.indexOf("replaces revision")).toBeLessThan(text.indexOf("error-title"));
});

test("the page of a first issue has no such part", () => {
  const page = renderPage(sealRecord(record), noDrawings);
  expect(page).not.toContain("amendment-title");
  expect(page).toContain("<dd><bdi>C-2026-015");
});
