import { expect, test } from "vitest";
import {
  type DecidedLine,
  type FiledLine,
  ledgerText,
  lineHash,
  noLine,
  readLedgerLine,
} from "../../src/filing/ledger-line.ts";

const filed: FiledLine = Object.freeze({
  number: 1,
  at: "2026-11-25T10:00:00.000+01:00",
  action: "filed",
  path: "LT-1/2026-03-04_C-1_r1.html",
  fileSha256: "a".repeat(64),
  sealSha256: "b".repeat(64),
  tag: "LT-1",
  calibration: "C-1",
  revision: 1,
  previous: noLine,
});
const decided: DecidedLine = Object.freeze({
  ...filed,
  number: 2,
  action: "decided",
  by: "A. Example",
  decision: "no impact, because the tank was empty",
});

test("a line is canonical JSON: keys in order, no space, nothing that is not there", () => {
  expect(ledgerText(filed)).toBe(
    `{"action":"filed","at":"2026-11-25T10:00:00.000+01:00","calibration":"C-1","fileSha256":"${"a".repeat(64)}",` +
      `"number":1,"path":"LT-1/2026-03-04_C-1_r1.html","previous":"${noLine}","revision":1,` +
      `"sealSha256":"${"b".repeat(64)}","tag":"LT-1"}`,
  );
});

test.each([filed, { ...filed, by: "A. Example", paper: "binder 7, page 3" }, decided])(
  "what was written is read again: %j",
  (line) => {
    expect(readLedgerLine(ledgerText(line))).toEqual(line);
  },
);

test.each<[string, object]>([
  ["no action", { ...filed, action: undefined }],
  ["an action that there is not", { ...filed, action: "removed" }],
  ["a number that is not whole", { ...filed, number: 1.5 }],
  ["number 0", { ...filed, number: 0 }],
  ["a number as text", { ...filed, number: "1" }],
  ["a time without an offset", { ...filed, at: "2026-11-25T10:00:00" }],
  ["a path that leads out", { ...filed, path: "../x.html" }],
  ["a path that begins at the root", { ...filed, path: "/etc/x.html" }],
  ["a path with a folder more", { ...filed, path: "a/b/c.html" }],
  ["a hidden file", { ...filed, path: "a/.c.html" }],
  ["a hash that is too short", { ...filed, fileSha256: "ab" }],
  ["a hash in capitals", { ...filed, sealSha256: "B".repeat(64) }],
  ["an empty tag", { ...filed, tag: " " }],
  ["revision 0", { ...filed, revision: 0 }],
  ["a key more", { ...filed, colour: "red" }],
  ["a decision on a filed line", { ...filed, decision: "x" }],
  ["an inherited name as a key", { ...filed, toString: "x" }],
  ["a decision without words", { ...decided, decision: "" }],
  ["a decision of nobody", { ...decided, by: undefined }],
])("a line with %s is none", (_, line) => {
  expect(readLedgerLine(JSON.stringify(line))).toBeUndefined();
});

test.each(["", "{", "null", "[]", "7", '"filed"'])("%j is no line", (text) => {
  expect(readLedgerLine(text)).toBeUndefined();
});

// FIPS 180-4, "abc": https://csrc.nist.gov/CSRC/media/Projects/Cryptographic-Standards-and-Guidelines/documents/examples/SHA256.pdf
test("a line's hash is the SHA-256 of its UTF-8 bytes without the newline", () => {
  expect(lineHash("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
});
