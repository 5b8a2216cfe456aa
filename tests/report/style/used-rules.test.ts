import { expect, test } from "vitest";
import { pageStyle } from "../../../src/report/style/page-style.ts";
import { usedRules } from "../../../src/report/style/used-rules.ts";

const html = '<main class="leaf"><p class="small note">a</p></main>';

test("a rule for a class that a page does not have goes, in a list of selectors that one alone", () => {
  expect(usedRules(".small{color:red}\n.large{color:blue}\n.large,.note b{margin:0}\n", html)).toBe(
    ".small{color:red}.note b{margin:0}",
  );
  expect(usedRules(".leaf .large{color:red}\n.leaf .small.note{margin:0}", html)).toBe(".leaf .small.note{margin:0}");
});

test("rules without a class stay, and those that say what a page must not have", () => {
  const style = "p,a:focus{margin:0}\n.leaf:not(.large){margin:0}\n:root{--ink:#fff}";
  expect(usedRules(style, html)).toBe(style.replaceAll("\n", ""));
});

test("rules for paper and for widths are gone through too; what is said of a printed page stays", () => {
  const style =
    '@page{margin:9mm;\n @bottom-right{content:"page " counter(page)}}\n@media print{\n .large{margin:0}\n .small{margin:1pt}\n}';
  expect(usedRules(style, html)).toBe(
    '@page{margin:9mm;@bottom-right{content:"page " counter(page)}}@media print{.small{margin:1pt}}',
  );
});

test("a page that has every class keeps the whole style", () => {
  const names = [...pageStyle.matchAll(/\.([a-z][\w-]*)/gu)].map(([, name]) => name).join(" ");
  const count = (style: string) => style.match(/\{[^{}]*\}/gu)?.length;
  expect(count(usedRules(pageStyle, `<p class="${names}">`))).toBe(count(pageStyle));
});
