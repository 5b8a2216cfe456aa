import { expect, test } from "vitest";
import { compactHtml } from "../../src/report/compact-html.ts";

test("ends that the next element says are left out, others stay", () => {
  const table = "<table><thead><tr><th>a</th></tr></thead><tbody><tr><td>1</td><td></td></tr></tbody></table>";
  expect(compactHtml(table)).toBe("<table><thead><tr><th>a<tbody><tr><td>1<td></table>");
  expect(compactHtml("<dl><div><dt>a</dt><dd><strong>b</strong></dd></div></dl><ul><li>c</li></ul><p>d</p>")).toBe(
    "<dl><div><dt>a<dd><strong>b</strong></div></dl><ul><li>c</ul><p>d</p>",
  );
});

test("what a table gave is text, and stays as it is", () => {
  expect(compactHtml("<td>&lt;/td></td>")).toBe("<td>&lt;/td>");
});
