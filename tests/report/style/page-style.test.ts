import { expect, test } from "vitest";
import { pageStyle } from "../../../src/report/style/page-style.ts";

test("the style fetches nothing and cannot end its element", () => {
  expect(pageStyle).not.toMatch(/url\(|@import|<\//u);
});

test("its brackets close", () => {
  expect(pageStyle.match(/\{/gu)?.length).toBe(pageStyle.match(/\}/gu)?.length);
});

test("on paper no row, picture or box is cut, and each page is numbered", () => {
  const print = pageStyle.slice(pageStyle.indexOf("@media print"));
  expect(print).toMatch(/tr,figure,[^{]*\{break-inside:avoid\}/u);
  expect(pageStyle).toContain('content:"page " counter(page) " of " counter(pages)');
});
