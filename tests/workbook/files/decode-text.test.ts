import { expect, test } from "vitest";
import { decodeText as decode } from "../../../src/workbook/files/decode-text.ts";

function decodeText(bytes: Uint8Array) {
  const decoded = decode(bytes);
  return decoded && { text: [...decoded.pieces()].join(""), encoding: decoded.encoding };
}

const bytes = (...values: readonly number[]) => new Uint8Array(values);

// Windows-1252 as the WHATWG Encoding Standard indexes it (https://encoding.spec.whatwg.org/index-windows-1252.txt),
// without the five bytes that it gives to C1 controls and that Windows leaves undefined.
test.each([
  [0x80, "\u20ac"],
  [0x85, "\u2026"],
  [0x8a, "\u0160"],
  [0x8c, "\u0152"],
  [0x8e, "\u017d"],
  [0x91, "\u2018"],
  [0x96, "\u2013"],
  [0x99, "\u2122"],
  [0x9e, "\u017e"],
  [0x9f, "\u0178"],
  [0xa0, "\u00a0"],
  [0xb5, "\u00b5"],
  [0xff, "\u00ff"],
])("byte %i of Windows-1252 is %s", (byte, character) => {
  expect(decodeText(bytes(0x61, byte))).toEqual({ text: `a${character}`, encoding: "windows-1252" });
});

test.each([0x81, 0x8d, 0x8f, 0x90, 0x9d])("byte %i is in no text", (byte) => {
  expect(decodeText(bytes(0x61, 0xe9, byte))).toBeUndefined();
});

test("the decoder of the platform agrees on every byte that is defined, where it knows Windows-1252", () => {
  const all = Array.from({ length: 128 }, (_, index) => index + 128).filter(
    (byte) => ![0x81, 0x8d, 0x8f, 0x90, 0x9d].includes(byte),
  );
  // A table read from the Encoding Standard; some releases of Node fall back to Latin-1 here.
  const platform = new TextDecoder("windows-1252").decode(bytes(...all));
  if (platform.startsWith("\u20ac")) expect(decodeText(bytes(...all))?.text).toBe(platform);
  expect(decodeText(bytes(...all))?.text).toHaveLength(123);
});

test("strict UTF-8 goes before Windows-1252", () => {
  expect(decodeText(bytes(0xc2, 0xb1))).toEqual({ text: "±", encoding: "utf-8" });
  expect(decodeText(bytes(0xb1))).toEqual({ text: "±", encoding: "windows-1252" });
});

test("a byte order mark is no part of the text", () => {
  expect(decodeText(bytes(0xef, 0xbb, 0xbf, 0x61))).toEqual({ text: "a", encoding: "utf-8" });
  expect(decodeText(bytes(0xff, 0xfe, 0x61, 0x00))).toEqual({ text: "a", encoding: "utf-16le" });
  expect(decodeText(bytes(0xfe, 0xff, 0x00, 0x61))).toEqual({ text: "a", encoding: "utf-16be" });
});

test("a file full of NULs is no text; a single NUL is the cell's problem", () => {
  expect(decodeText(bytes(0x61, 0x00, 0x62, 0x00))).toBeUndefined();
  expect(decodeText(bytes(...Array(20).fill(0x61), 0x00))?.text).toHaveLength(21);
});

test("no bytes are an empty text", () => {
  expect(decodeText(bytes())).toEqual({ text: "", encoding: "utf-8" });
});

test("a long text comes in pieces, and a character that two of them share comes whole", () => {
  const text = `a${"\u00e9".repeat(1_500_000)}\ud83d\ude42`;
  const pieces = [...(decode(new TextEncoder().encode(text))?.pieces() ?? [])];
  expect(pieces.length).toBeGreaterThan(1);
  expect(pieces.join("")).toBe(text);
  const cut = Buffer.concat([Buffer.alloc(2_097_151, "a"), Buffer.from([0xc3, 0xb1])]);
  expect(decodeText(cut)?.text.endsWith("a\u00f1")).toBe(true);
  expect(decodeText(cut.subarray(0, -1))).toMatchObject({ encoding: "windows-1252" });
});
