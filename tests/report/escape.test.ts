import { expect, test } from "vitest";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { embeddedRecord, escapedText, styleString } from "../../src/report/escape.ts";
import { sampleRecord } from "../charts/sample-record.ts";

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

test("the record as JSON cannot close its element, and reads back to itself", () => {
  const record: CalibrationRecord = {
    ...sampleRecord({ tag: "</script><!--<script>\u2028\u2029" }),
    figureBasis: "< & >",
  };
  const written = embeddedRecord(record);
  expect(written).not.toMatch(/[<\u2028\u2029]/u);
  expect(JSON.parse(written)).toEqual(record);
});
