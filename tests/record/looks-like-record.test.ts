import { expect, test } from "vitest";
import { recordJson } from "../../src/jobs/records/write-record.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { looksLikeRecord } from "../../src/record/looks-like-record.ts";
import { renderLabels } from "../../src/report/label-sheet.tsx";
import { renderPage } from "../../src/report/page.tsx";
import { renderRegister } from "../../src/report/register-page.tsx";
import { sampleRecord } from "../charts/sample-record.ts";
import { register } from "../report/sample-register.ts";

const record = sealRecord(sampleRecord({ points: 3, cycles: 1 }));
const page = renderPage(record, { errorWide: undefined, errorNarrow: undefined, stages: [], others: [], absent: [] });

test("a page of a record and its JSON do, and a register and a sheet of labels do not", () => {
  expect(looksLikeRecord(page)).toBe(true);
  expect(looksLikeRecord(recordJson(record))).toBe(true);
  expect(looksLikeRecord("<title>Register</title>")).toBe(false);
  expect(looksLikeRecord(renderLabels([record], { isSheet: true, skipped: 0 }))).toBe(false);
  expect(looksLikeRecord(renderRegister(register, undefined).page)).toBe(false);
  expect(looksLikeRecord("")).toBe(false);
});

test("a page that was cut off, from its title on or before its data, still does", () => {
  for (let length = page.indexOf("</title>") + 8; length < page.length; length += 997) {
    expect(looksLikeRecord(page.slice(0, length)), String(length)).toBe(true);
  }
  expect(looksLikeRecord(page.slice(page.indexOf("<body>")))).toBe(true);
});

test("a page or a JSON with any one place damaged still does", () => {
  const json = recordJson(record);
  for (const text of [page, json]) {
    const places = ["calibration record", "spanwright-record", 'id="record"', "figureBasis"];
    for (const index of places.map((words) => text.indexOf(words)).filter((found) => found !== -1)) {
      expect(looksLikeRecord(`${text.slice(0, index)}#${text.slice(index + 1)}`)).toBe(true);
    }
  }
});

test("a text that speaks of records is none", () => {
  expect(looksLikeRecord('<p>the form spanwright-record/1, id=record, {\\"figureBasis\\":1}</p>')).toBe(false);
});
