import { execFileSync } from "node:child_process";
import { deflateRawSync, gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { embeddedJson, holdsPackedRecord, recordElement, withPlainRecord } from "../../src/record/record-element.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { sampleRecord } from "../charts/sample-record.ts";

const record: CalibrationRecord = {
  ...sampleRecord({ tag: "</script><!--<script>\u2028\u2029 µ漢" }),
  figureBasis: "< & >",
};
const packed = (bytes: Uint8Array) =>
  `<script type="application/gzip" data-encoding="base64" id="record">${Buffer.from(bytes).toString("base64")}</script>`;

test("a record as JSON cannot close its element, and reads back to itself", () => {
  const written = embeddedJson(record);
  expect(written).not.toMatch(/[<\u2028\u2029]/u);
  expect(JSON.parse(written)).toEqual(record);
});

test("a packed record unpacks to its JSON, in the midst of a page", () => {
  const page = `<p>before</p>\n${recordElement(record)}\n</body>`;
  expect(page.length).toBeLessThan(embeddedJson(record).length / 3);
  expect(withPlainRecord(page)).toBe(
    `<p>before</p>\n<script type="application/json" id="record">${embeddedJson(record)}</script>\n</body>`,
  );
  expect(holdsPackedRecord(page)).toBe(true);
  expect(holdsPackedRecord(withPlainRecord(page))).toBe(false);
});

test("neither the system nor the time that packed it stands in the header (RFC 1952, 2.3)", () => {
  const header = Buffer.from(/>([^<]*)</u.exec(recordElement(record))?.[1] ?? "", "base64").subarray(0, 10);
  expect([...header.subarray(0, 8)]).toEqual([0x1f, 0x8b, 8, 0, 0, 0, 0, 0]);
  expect(header[9]).toBe(255);
});

test("the shell unpacks it: GNU coreutils' base64 and gzip, without this program", () => {
  const base64 = /id="record">([^<]*)</u.exec(recordElement(record))?.[1] ?? "";
  const bytes = execFileSync("base64", ["-d"], { input: base64 });
  expect(JSON.parse(execFileSync("gunzip", [], { input: bytes }).toString("utf8"))).toEqual(record);
});

test.each([
  ["no base64", '<script type="application/gzip" data-encoding="base64" id="record">%%%</script>'],
  ["not packed by gzip", packed(deflateRawSync("{}"))],
  ["cut short", packed(gzipSync(embeddedJson(record)).subarray(0, 200))],
  ["what would close its element", packed(gzipSync('{"a":"</script><script>alert(1)"}'))],
  ["no UTF-8", packed(gzipSync(Buffer.from([0x22, 0xff, 0x22])))],
  ["more than any record: 17 MB of blanks", packed(gzipSync(Buffer.alloc(17 * 1024 * 1024, 32)))],
])("%s stays as it is", (_, page) => {
  expect(withPlainRecord(page)).toBe(page);
  expect(holdsPackedRecord(page)).toBe(true);
});
