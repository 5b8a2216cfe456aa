import { expect, test, vi } from "vitest";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { readSealedRecord, sealedRecordReader } from "../../src/record/read-sealed-record.ts";
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
    "a form that came later",
    '{"schema":"spanwright-record/99"}',
    "the record is of form 99; this program reads forms 1 to 2",
  ],
  [
    "a form that came later, with who wrote it",
    '{"schema":"spanwright-record/99","software":{"name":"spanwright","version":"3.1.0"}}',
    "the record is of form 99; this program reads forms 1 to 2; spanwright 3.1.0 wrote it and reads it",
  ],
  ["an object", "{}", "this is JSON, but no record: it is an object without any field"],
  [
    "another object",
    '{"software":null,"b":1,"c":1,"d":1}',
    'this is JSON, but no record: it has no schema; it begins with "software", "b", "c"',
  ],
  [
    "an object of another form",
    '{"schema":"spanwright-recorc/1"}',
    'this is JSON, but no record: its schema is "spanwright-recorc/1"',
  ],
  ["a list", "[1]", "this is JSON, but no record: it is a list"],
  ["null", "null\n", "this is JSON, but no record: it is no object"],
  ["a field less", JSON.stringify(without), "the record does not have form 2, at figureBasis"],
  [
    "a field more where no seal covers it",
    JSON.stringify({ ...record, seal: { ...record.seal, colour: "red" } }),
    "the record does not have form 2, at seal",
  ],
])("%s is a doubt about the file", (_, text, says) => {
  expect(readSealedRecord(text, "a.json")).toEqual({ doubts: [{ about: "file", place: "a.json", says }] });
});

test("a field that this program does not know is kept, and listed", () => {
  const later = { ...record, colour: "red", instrument: { ...record.instrument, mast: { height: 3 } } };
  expect(readSealedRecord(JSON.stringify(later), "a.json")).toEqual({
    ...{ record: later, written: later, form: 2 },
    unknownFields: ["instrument.mast", "colour"],
  });
});

test("what the seal says is not asked here", () => {
  const other = { ...record, seal: { ...record.seal, sha256: "0".repeat(64) } };
  expect(readSealedRecord(JSON.stringify(other), "a.json")).toMatchObject({ record: other, unknownFields: [] });
});

test("JSON larger than any record is told before it is read, and JSON of more parts before its fields are asked for", () => {
  const said = (text: string) => {
    const read = readSealedRecord(text, "a.json");
    return "doubts" in read ? read.doubts[0]?.says : "read";
  };
  const blanks = " ".repeat(16 * 1024 * 1024);
  expect(said(`{}${blanks}`)).toBe("its JSON is larger than any record's: 16777218 characters");
  expect(said(`<p>${blanks.repeat(3)}`)).toBe("this is larger than any record: 50331651 characters");
  const parts = (count: number) => `{"schema":"spanwright-record/2","phases":[${"{},".repeat(count - 3)}[]]}`;
  expect(said(parts(100_001))).toBe("this is no record: its JSON has more than 100000 objects and lists");
  expect(said(parts(100_000))).toContain("the record has no seal");
});

test("JSON nested without end is told, and goes no further", () => {
  const deep = `${"[".repeat(200_000)}${"]".repeat(200_000)}`;
  for (const text of [deep, `{"schema":"spanwright-record/2","extra":${deep}}`]) {
    expect(readSealedRecord(text, "a.json")).toEqual({
      doubts: [
        { about: "file", place: "a.json", says: "this is no record: its JSON is nested deeper than 100 levels" },
      ],
    });
  }
});

test("a page and the JSON beside it are read once, and what differs in anything is read anew", () => {
  const read = sealedRecordReader();
  const json = JSON.stringify(record);
  const ofPage = read(renderPage(record, noDrawings), "a.html");
  const parse = vi.spyOn(JSON, "parse");
  expect(read(`${json}\n`, "a.json")).toBe(ofPage);
  expect(parse).not.toHaveBeenCalled();
  for (const other of [`${json}\n\n`, ` ${json}`, json.replace("{", "{ ")]) {
    const again = read(other, "b.json");
    expect(again).not.toBe(ofPage);
    expect(again).toEqual(ofPage);
  }
  expect(parse).toHaveBeenCalledTimes(3);
  parse.mockRestore();
  for (const damaged of [`${json}\u00a0`, `${json}\ufeff`, json.slice(0, -1)]) {
    expect(read(damaged, "c.json")).toEqual({
      doubts: [{ about: "file", place: "c.json", says: "the record in it cannot be read: it is no JSON" }],
    });
  }
});
