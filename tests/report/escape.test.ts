import { expect, test } from "vitest";
import { escapedText, styleString } from "../../src/report/escape.ts";

test("text as HTML keeps its signs and holds none that HTML reads", () => {
  expect(escapedText(`<b title="a & b">it's</b>`)).toBe("&lt;b title=&quot;a &amp; b&quot;&gt;it&#39;s&lt;/b&gt;");
  expect(escapedText("±0.5 % → 😀")).toBe("±0.5 % → 😀");
});

test.each([
  ["plain LT-101, 0.5_a", '"plain LT-101, 0.5_a"'],
  ['"; }body{display:none}', '"\\22 \\3b  \\7d body\\7b display\\3a none\\7d "'],
  ["\\", '"\\5c "'],
  ["line\nbreak", '"line\\a break"'],
  ["</style>", '"\\3c \\2f style\\3e "'],
  ["µ😀", '"\\b5 \\1f600 "'],
])("%j as a string of CSS cannot end it", (text, written) => {
  expect(styleString(text)).toBe(written);
});

test("a string of CSS holds 120 characters at most, and no half of one", () => {
  expect(styleString("😀".repeat(200))).toBe(`"${"\\1f600 ".repeat(120)}"`);
});
