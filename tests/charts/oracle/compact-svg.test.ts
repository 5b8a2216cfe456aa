import { expect, test } from "vitest";
import { compactContent } from "./compact-svg.ts";
import { svgText, svgTree } from "./svg-tree.ts";

const compact = (body: string, shared = {}) =>
  compactContent(svgTree(`<svg>${body}</svg>`).children, shared)
    .map(svgText)
    .join("");

test("groups dissolve: every mark stands at its own place, neighbours of one style are one path", () => {
  const tick = (x: number) =>
    `<line transform="translate(${x},0)" x2="0" y2="4" stroke="#525d6a" stroke-width="1" opacity="1"/>`;
  expect(compact(`<g class="axis" transform="translate(10,20)"><g>${tick(1)}${tick(3)}</g></g>`)).toBe(
    '<path stroke="#525d6a" d="M11 20v4m2-4v4"/>',
  );
});

test("what is not seen goes: no stroke and no fill, no length, not displayed", () => {
  const unseen =
    '<path class="background" d="M0,0h0v0h0Z"/><path d="" stroke="#000000"/>' +
    '<path d="M0,0h1" fill="none" stroke-width="3"/><path d="M0,0h1" stroke="#000000" display="none"/>';
  expect(compact(unseen)).toBe("");
});

test("filled marks with an edge stay apart where they touch, for each hides what lies under it", () => {
  const mark = (x: number) => `<path transform="translate(${x},0)" d="M0,0h2v2Z" fill="#1557a6" stroke="#ffffff"/>`;
  expect(compact(mark(0) + mark(1))).toBe(
    '<g fill="#1557a6" stroke="#ffffff"><path d="M0 0h2v2z"/><path d="M1 0h2v2z"/></g>',
  );
  expect(compact(mark(0) + mark(1) + mark(20))).toBe(
    '<g fill="#1557a6" stroke="#ffffff"><path d="M0 0h2v2zm20 0h2v2z"/><path d="M1 0h2v2z"/></g>',
  );
});

test("texts say their place; what the root says is not said again", () => {
  const text = (y: number) =>
    `<text text-anchor="end" transform="translate(-8,${y})" font-size="13px" font-weight="400" fill="#1b2430">+${y}</text>`;
  expect(compact(text(1) + text(2.126), { "font-size": "13px" })).toBe(
    '<g text-anchor="end" fill="#1b2430"><text x="-8" y="1">+1</text><text x="-8" y="2.1">+2.126</text></g>',
  );
});

test("a title along an axis keeps its turn, at the place where it stands", () => {
  // After a quarter turn to the left, up the page is to the left of it.
  expect(compact('<text transform="translate(40,50) rotate(-90) translate(0,-3)" fill="#1b2430">error</text>')).toBe(
    '<text fill="#1b2430" transform="translate(37,50)rotate(-90)">error</text>',
  );
});

test("a group that is clipped stays one, with the place to which its clip belongs", () => {
  const clipped = '<g clip-path="url(#clip1)" transform="translate(5,6)"><path d="M1,1h2" stroke="#000000"/></g>';
  expect(compact(`<g transform="translate(1,1)">${clipped}</g><clipPath id="clip1"><rect x="0"/></clipPath>`)).toBe(
    '<g clip-path="url(#clip1)" transform="translate(6,7)"><path stroke="#000000" d="M1 1h2"/></g>' +
      '<clipPath id="clip1"><rect x="0"/></clipPath>',
  );
});

test("what vega is not known to write is refused, not drawn wrongly", () => {
  expect(() => compact('<path transform="scale(2)" d="M0,0h1" stroke="#000000"/>')).toThrow("scale is not known");
});
