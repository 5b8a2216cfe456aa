import { expect, test } from "vitest";
import { type LedgerLine, ledgerText, readLedgerLine } from "../../src/filing/ledger-line.ts";
import { plainLine } from "../../src/filing/plain-line.ts";
import { sampleLines } from "./sample-lines.ts";

const [line] = sampleLines(1) as [ReturnType<typeof sampleLines>[number]];
const whole = {
  ...line,
  by: "Ada Specimen",
  paper: "binder 7, Größe Ω",
  signersSha256: line.fileSha256,
  rowSha256: line.sealSha256,
};

test.each([line, whole, { ...whole, tag: "ЛТ-1 日本", number: 20_000 }])("a line as it is written is plain", (one) => {
  expect(plainLine(ledgerText(one))).toEqual({ number: one.number, previous: one.previous, tag: one.tag });
});

test.each<[string, string]>([
  ["a quote in a word", ledgerText({ ...whole, by: 'A. "Ada" Specimen' })],
  ["a backslash in a tag", ledgerText({ ...line, tag: "LT\\1" })],
  ["a control character", ledgerText({ ...line, tag: "LT\u00011" })],
  ["a space before a tag", ledgerText({ ...line, tag: " LT-1" })],
  ["a space between", ledgerText(line).replace(":", ": ")],
  ["another order", ledgerText(line).replace(/^\{("action":"filed"),(.*)\}$/u, "{$2,$1}")],
])("what is written otherwise is left to the reader of every line: %s", (_, text) => {
  expect(plainLine(text)).toBeUndefined();
  expect(readLedgerLine(text)).toBeDefined();
});

test("other actions are not plain", () => {
  const decided = { ...line, action: "decided", by: "A", decision: "none" } as LedgerLine;
  expect(plainLine(ledgerText(decided))).toBeUndefined();
});

/** Those that JSON, numbers, hashes and names each take or refuse. */
const characters = ['"', "\\", ",", " ", "0", "a", "Z", "{", "}", "\u0001", "é"];

test("whatever one character makes of a line, what is plain is a line that says the same", () => {
  const text = ledgerText(whole);
  let plain = 0;
  for (let place = 0; place < text.length; place += 1) {
    for (const one of ["", ...characters]) {
      const changed = text.slice(0, place) + one + text.slice(place + 1);
      const found = plainLine(changed);
      if (found === undefined) continue;
      plain += 1;
      expect(readLedgerLine(changed), changed).toMatchObject({ action: "filed", ...found });
    }
  }
  expect(plain).toBeGreaterThan(1000);
});

test("a field that is missing, or stands there twice, makes no plain line", () => {
  const text = ledgerText(line);
  for (const field of text.slice(1, -1).split(",")) {
    expect(plainLine(text.replace(field, "").replace(",,", ",")), field).toBeUndefined();
    expect(plainLine(text.replace(field, `${field},${field}`)), field).toBeUndefined();
  }
});
