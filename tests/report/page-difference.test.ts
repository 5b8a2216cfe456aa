import { describe, expect, test } from "vitest";
import { firstDifference, pageDifference } from "../../src/report/page-difference.ts";

const page = `<!doctype html>
<html><head><title>LT-1</title></head><body>
<main><p>before</p><h1>LT-1 <small>level</small></h1><p class="a">worst error 0.31 %</p>
<h2>Figures</h2><table><tr><td>0.13</td><td>0.2</td></tr></table></main>
<script type="application/json" id="record">{"a":1}</script>
</body></html>
`;

test("a page is the same as itself", () => {
  expect(pageDifference(page, page)).toBeUndefined();
});

describe("the first difference is told with its place and both texts", () => {
  test.each([
    ["a figure", ">0.13<", ">0.31<", 'under "Figures"', "0.13", "0.31"],
    [
      "a text below the first heading",
      "0.31 %",
      "0.13 %",
      'under "LT-1 level"',
      "worst error 0.31 %",
      "worst error 0.13 %",
    ],
    ["a text cut short", "before<", "befor<", "top of the page", "before", "befor"],
    ["a text taken out", ">0.2<", "><", 'under "Figures"', "0.2", "</td>"],
    ["an attribute", 'class="a"', 'class="b"', 'under "LT-1 level"', '<p class="a">', '<p class="b">'],
    ["the title", "<title>LT-1", "<title>LT-2", "head of the page", "LT-1", "LT-2"],
    ["the data", '"a":1', '"a":2', "data inside the page", '{"a":1}', '{"a":2}'],
    ["a tag", "<td>0.2", "<th>0.2", 'under "Figures"', "<td>", "<th>"],
  ])("%s", (_, from, to, place, expected, found) => {
    expect(pageDifference(page, page.replace(from, to))).toEqual({ place, expected, found });
  });

  test("the end, where something follows or something lacks", () => {
    expect(pageDifference(page, `${page}x`)).toEqual({ place: "end of the page", expected: "(nothing)", found: " x" });
    expect(pageDifference(page, page.slice(0, -9))?.place).toBe("end of the page");
  });

  test("line ends, where they are all that differs", () => {
    expect(pageDifference(page, page.replaceAll("\n", "\r\n"))?.place).toBe("every line");
    expect(pageDifference(page, page.replaceAll("\n", "\r\n").replace("0.13", "0.31"))?.place).toBe("head of the page");
  });

  test("a long text is told in part", () => {
    const long = `<body><p>${"a".repeat(500)}</p>`;
    const difference = pageDifference(long, `${long.slice(0, 250)}b${long.slice(251)}`);
    expect(difference?.expected).toBe("a".repeat(90));
    expect(difference?.found).toBe(`${"a".repeat(30)}b${"a".repeat(59)}`);
  });
});

test.each([
  ["", "", 0],
  ["abc", "abd", 2],
  ["ab", "abc", 2],
  ["abc", "", 0],
])("%j and %j part at %i", (one, other, index) => {
  expect(firstDifference(one, other)).toBe(index);
  expect(firstDifference(other, one)).toBe(index);
});
