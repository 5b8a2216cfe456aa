import { expect, test } from "vitest";
import { fontFaces } from "../../../src/report/style/font-faces.ts";

const faces = [
  ...fontFaces().matchAll(/@font-face\{[^}]*font-weight:(\d+)[^}]*url\(data:font\/woff2;base64,([^)]+)\)/gu),
];

test("two weights of the font are embedded, and nothing is fetched", () => {
  expect(faces.map(([, weight]) => weight)).toEqual(["400", "600"]);
  expect(fontFaces().match(/url\(/gu)).toHaveLength(2);
});

test("each is a font file of the kind that it says: it begins with the signature wOF2 (W3C WOFF 2.0, 4.1)", () => {
  for (const [, , base64 = ""] of faces) {
    expect(Buffer.from(base64, "base64").subarray(0, 4).toString("latin1")).toBe("wOF2");
  }
});
