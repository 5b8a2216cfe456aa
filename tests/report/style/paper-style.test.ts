import { expect, test } from "vitest";
import { pageStyle } from "../../../src/report/style/page-style.ts";
import { paperStyle } from "../../../src/report/style/paper-style.ts";

test("its brackets close, and the style of the page holds it at its end", () => {
  expect(paperStyle.match(/\{/gu)?.length).toBe(paperStyle.match(/\}/gu)?.length);
  expect(pageStyle.trimEnd().endsWith(paperStyle.trimEnd())).toBe(true);
});

test("type on paper is never smaller than 6.5 points, but for the widest sheet and formulas of the working", () => {
  const rules = [...paperStyle.matchAll(/^ ?([^{}\n]+)\{[^{}]*?font(?:-size)?:([\d.]+)pt/gmu)];
  expect(rules.length).toBeGreaterThan(20);
  const small = rules.filter(([, , size]) => Number(size) < 6.5).map(([, selector = ""]) => selector);
  expect(small).toEqual([".sheet.many", ".sheet.many .formulas td"]);
});

test("the folded budgets of switched outputs stay on the screen", () => {
  expect(paperStyle).toContain(".other-budgets{display:none}");
});
