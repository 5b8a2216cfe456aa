import { expect, test } from "vitest";
import { fingerprintOf, fingerprintWords } from "../../src/proof/fingerprint-words.ts";

test("there is one plain word for each value of a byte, no two alike", () => {
  expect(fingerprintWords).toHaveLength(256);
  expect(new Set(fingerprintWords).size).toBe(256);
  for (const word of fingerprintWords) expect(word).toMatch(/^[a-z]{3,9}$/u);
  expect(fingerprintWords.toSorted()).toEqual(fingerprintWords);
});

// The digest of "abc", FIPS 180-4.
test("four bytes are said in words, eight printed in digits", () => {
  expect(fingerprintOf("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")).toBe(
    "plum indigo basil puffin · ba78 16bf 8f01 cfea",
  );
  expect(fingerprintOf("0".repeat(64))).toBe("acorn acorn acorn acorn · 0000 0000 0000 0000");
  expect(fingerprintOf("f".repeat(64))).toBe("zinc zinc zinc zinc · ffff ffff ffff ffff");
});

test("another first byte is another word", () => {
  const words = Array.from({ length: 256 }, (_, byte) => {
    const digits = byte.toString(16).padStart(2, "0");
    return fingerprintOf(digits.padEnd(64, "0")).split(" ")[0];
  });
  expect(words).toEqual(fingerprintWords);
});

test.each(["", "BA78", "0".repeat(63), "0".repeat(65), "g".repeat(64)])("%j is no digest", (text) => {
  expect(() => fingerprintOf(text)).toThrow(RangeError);
});
