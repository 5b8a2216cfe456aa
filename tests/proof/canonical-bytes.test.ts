import { expect, test } from "vitest";
import { canonicalBytes } from "../../src/proof/canonical-bytes.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { sampleRecord } from "../charts/sample-record.ts";
import { readExpected } from "../published/read-data.ts";

type Published = {
  sample: string;
  sampleBytes: string;
  keys: string;
  order: readonly string[];
  numbers: readonly (readonly [bits: string, text: string])[];
  notNumbers: readonly string[];
};

const published = readExpected<Published>("rfc8785");
const bytesOf = (value: unknown) => canonicalBytes(value as CalibrationRecord);
const textOf = (value: unknown) => new TextDecoder("utf-8", { fatal: true }).decode(bytesOf(value));
const doubleOf = (bits: string) => Buffer.from(bits, "hex").readDoubleBE();

// RFC 8785, 3.2.2 and 3.2.4, byte for byte.
test("the published sample gives the published bytes", () => {
  expect(Buffer.from(bytesOf(JSON.parse(published.sample))).toString("hex")).toBe(
    published.sampleBytes.replaceAll(" ", ""),
  );
});

// RFC 8785, 3.2.3: by UTF-16 units, so that an emoji stands before a Hebrew presentation form.
test("keys come in the published order", () => {
  const texts = [...textOf(JSON.parse(published.keys)).matchAll(/:"([^"]+)"/gu)].map(([, text]) => text);
  expect(texts).toEqual(published.order);
});

// RFC 8785, appendix B, table 1: exact.
test.each(published.numbers)("the double of the bits %s is written %s", (bits, text) => {
  expect(textOf({ number: doubleOf(bits) })).toBe(`{"number":${text}}`);
});

test.each(published.notNumbers)("the bits %s, which are no number of JSON, are refused", (bits) => {
  expect(() => bytesOf({ number: doubleOf(bits) })).toThrow(TypeError);
});

test.each([
  ["half of a surrogate pair", { text: "a\ud800" }],
  ["its other half", { text: "\udc00a" }],
  ["half of a pair in a key", { "\ud800": 1 }],
])("%s, which has no bytes, is refused", (_, value) => {
  expect(() => bytesOf(value)).toThrow(TypeError);
});

test("seal and signatures are no part of the content, whatever they say", () => {
  const record = sampleRecord({ points: 3, cycles: 1 });
  const sealed = sealRecord(record);
  const signed = { ...sealed, signOff: { signatures: [{ protected: "e30", signature: "AA" }] } };
  expect(bytesOf(sealed)).toEqual(bytesOf(record));
  expect(bytesOf(signed)).toEqual(bytesOf(record));
  expect(textOf(record).startsWith('{"calibration":{')).toBe(true);
});
