import { expect, test } from "vitest";
import { hasHiddenCharacter, visibleText } from "../../src/problems/visible-text.ts";

test.each([
  ["NUL", "a\u0000b", "a␀b"],
  ["escape", "\u001b[31mred", "␛[31mred"],
  ["carriage return", "a\rb", "a␍b"],
  ["delete", "a\u007fb", "a␡b"],
  ["C1 control", "a\u0085b", "a\ufffdb"],
  ["right-to-left override", "a\u202eb", "a\ufffdb"],
  ["isolate", "a\u2066b\u2069", "a\ufffdb\ufffd"],
  ["half a surrogate pair", "a\ud800b", "a\ufffdb"],
])("%s becomes a visible sign", (_, text, shown) => {
  expect(hasHiddenCharacter(text)).toBe(true);
  expect(visibleText(text)).toBe(shown);
  expect(Object.is(visibleText(shown), shown)).toBe(true);
});

test.each(["tab\tand\nnewline", "Größe ± 5 µm, 東京, 😀", ""])("%j is left alone", (text) => {
  expect(hasHiddenCharacter(text)).toBe(false);
  expect(visibleText(text)).toBe(text);
});

test("U+FFFD in a file is told, though it shows: it stands where a character was lost", () => {
  expect(hasHiddenCharacter("Gr\ufffd\ufffde")).toBe(true);
});
