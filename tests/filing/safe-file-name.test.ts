import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { safeFileName } from "../../src/filing/safe-file-name.ts";

test("../../x becomes x with the digits of its digest", () => {
  expect(safeFileName("../../x")).toBe("x-9cdf6a50");
});

test.each(["LT-310", "C-2026-014", "a.b_c", "x".repeat(60), "console", "com10"])("%s is safe already", (text) => {
  expect(safeFileName(text)).toBe(text);
});

describe("what is not safe keeps its letters and gets a digest", () => {
  test.each([
    ["LT 310", /^LT-310-[0-9a-f]{8}$/u],
    ["Füllstand/1", /^Fullstand-1-[0-9a-f]{8}$/u],
    [".hidden", /^hidden-[0-9a-f]{8}$/u],
    ["ends.", /^ends-[0-9a-f]{8}$/u],
    ["x".repeat(61), /^x{60}-[0-9a-f]{8}$/u],
    ["", /^x-[0-9a-f]{8}$/u],
    ["..", /^x-[0-9a-f]{8}$/u],
    ["水位", /^x-[0-9a-f]{8}$/u],
    ["CON", /^x-[0-9a-f]{8}$/u],
    ["nul.csv", /^x-[0-9a-f]{8}$/u],
    ["com¹", /^x-[0-9a-f]{8}$/u],
    ["C:\\x", /^C-x-[0-9a-f]{8}$/u],
    ["a\u0000b\n", /^a-b-[0-9a-f]{8}$/u],
  ])("%j", (text, name) => {
    expect(safeFileName(text)).toMatch(name);
  });
});

test("texts that look alike once made safe keep apart", () => {
  const names = ["LT 1", "LT/1", "LT-1", "LT:1"].map(safeFileName);
  expect(new Set(names).size).toBe(4);
});

test("any text at all becomes one plain name of at most 69 characters, always the same", () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.string(), fc.string({ unit: "binary" }), fc.constantFrom("..", "/", "~", "aux.x")),
      (text) => {
        const name = safeFileName(text);
        expect(name).toMatch(/^[A-Za-z0-9_][A-Za-z0-9._-]{0,68}$/u);
        expect(name).not.toMatch(/^(?:con|prn|aux|nul|com\d|lpt\d)(?:\.|$)|[.-]$/iu);
        expect(safeFileName(text)).toBe(name);
      },
    ),
    { seed: 20260504 },
  );
});

test("a million points or hyphens inside a text take no longer than other letters", () => {
  const start = performance.now();
  expect(safeFileName(`a${".-".repeat(500_000)}a`)).toMatch(/^a-[0-9a-f]{8}$/u);
  expect(performance.now() - start).toBeLessThan(1_000);
});
