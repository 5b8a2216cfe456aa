import { expect, test } from "vitest";
import { charactersOutsideFont, fontFaces } from "../../../src/report/style/font-faces.ts";

const face =
  /@font-face\{[^}]*font-weight:(\d+)[^}]*unicode-range:([^;]*);[^}]*url\(data:font\/woff2;base64,([^)]+)\)/gu;
const facesFor = (text: string) => [...fontFaces(text).matchAll(face)];

test("two weights are embedded, further letters only where a text has some, and nothing is fetched", () => {
  const weights = (text: string) => facesFor(text).map(([, weight]) => weight);
  expect(weights("LT-310 −0.5 ± 0.1 √2")).toEqual(["400", "600"]);
  expect(weights("Größe")).toEqual(["400", "600", "400", "600"]);
  expect(weights("Łódź")).toEqual(["400", "600", "400", "600", "400", "600"]);
  expect(weights("χ²")).toEqual(["400", "600", "400"]);
  expect(fontFaces("Łódź").match(/url\(/gu)).toHaveLength(6);
});

test("each is a font file of the kind that it says: it begins with the signature wOF2 (W3C WOFF 2.0, 4.1)", () => {
  for (const [, , , base64 = ""] of facesFor("öŁχ")) {
    expect(Buffer.from(base64, "base64").subarray(0, 4).toString("latin1")).toBe("wOF2");
  }
});

test("a face is used for its own letters alone, as CSS names them", () => {
  const [latin, , latin1] = facesFor("ö").map(([, , range = ""]) => range.split(","));
  expect(latin?.[0]).toBe("U+20-7E");
  expect(latin).toContain("U+2190-2193");
  expect(latin1?.some((range) => latin?.includes(range))).toBe(false);
});

test("one hyphen only: what is copied from a page is the hyphen that was typed", () => {
  const [latin] = facesFor("").map(([, , range]) => range);
  // U+00AD, U+2010 and U+2011 have the glyph of U+002D, and a printed page would give any of them back.
  expect(latin).not.toMatch(/U\+(?:AD|2010|2011)\b/u);
});

test("what the font lacks is told, once, in the order of the text", () => {
  expect(charactersOutsideFont("LT-310 槽 液位 槽\u200b Größe Łódź αβγ")).toEqual(["槽", "液", "位"]);
  expect(charactersOutsideFont("خزان")).toEqual(["خ", "ز", "ا", "ن"]);
});
