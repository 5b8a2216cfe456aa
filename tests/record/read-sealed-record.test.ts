import { expect, test } from "vitest";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { readSealedRecord } from "../../src/record/read-sealed-record.ts";
import { renderPage } from "../../src/report/page.tsx";
import { sampleRecord } from "../charts/sample-record.ts";

const record = sealRecord(sampleRecord({ points: 3, cycles: 1 }));
const noDrawings = { errorWide: undefined, errorNarrow: undefined, stages: [], others: [], absent: [] };

test("the record comes out of its page and out of its JSON, with the keys in the order of the file", () => {
  for (const text of [
    renderPage(record, noDrawings),
    JSON.stringify(record),
    ` \n${JSON.stringify(record, null, 2)}`,
  ]) {
    const read = readSealedRecord(text, "a.html");
    expect("record" in read && JSON.stringify(read.record)).toBe(JSON.stringify(record));
  }
});

test("a text in the record that looks like the end of its element does no harm", () => {
  const odd = sealRecord({ ...record, figureBasis: '</script><script id="record">{}\u2028<!--' });
  const read = readSealedRecord(renderPage(odd, noDrawings), "a.html");
  expect("record" in read && read.record.figureBasis).toBe(odd.figureBasis);
});

const { figureBasis: _basis, ...without } = record;

test.each([
  ["a page of something else", "<!doctype html><p>hello", "this is no calibration record: no record is embedded in it"],
  ["broken JSON", "{", "the record in it cannot be read: it is no JSON"],
  [
    "another form",
    '{"schema":"spanwright-record/9"}',
    'the record is of the form "spanwright-record/9"; this program reads spanwright-record/1',
  ],
  [
    "another form, with who wrote it",
    '{"schema":"spanwright-record/2","software":{"name":"spanwright","version":"3.1.0"}}',
    'the record is of the form "spanwright-record/2"; this program reads spanwright-record/1; spanwright 3.1.0 wrote it and reads it',
  ],
  [
    "no form, and no software that could be",
    '{"software":null}',
    "the record is of the form undefined; this program reads spanwright-record/1",
  ],
  ["no form", "{}", "the record is of the form undefined; this program reads spanwright-record/1"],
  ["a field less", JSON.stringify(without), "the record does not have the form spanwright-record/1, at figureBasis"],
  [
    "a field more",
    JSON.stringify({ ...record, colour: "red" }),
    "the record does not have the form spanwright-record/1, at the whole",
  ],
])("%s is a doubt about the file", (_, text, says) => {
  expect(readSealedRecord(text, "a.json")).toEqual({ doubts: [{ about: "file", place: "a.json", says }] });
});

test("what the seal says is not asked here", () => {
  const other = { ...record, seal: { ...record.seal, sha256: "0".repeat(64) } };
  expect(readSealedRecord(JSON.stringify(other), "a.json")).toEqual({ record: other });
});
