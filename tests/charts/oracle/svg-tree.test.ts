import { expect, test } from "vitest";
import { svgText, svgTree } from "./svg-tree.ts";

test("elements, attributes and texts come back as they were", () => {
  const svg = '<svg width="9" height="4"><g class="a b"><path d="M0,0"/><text x="1">a &lt; b</text></g></svg>';
  const tree = svgTree(svg);
  expect(tree.attributes).toEqual({ width: "9", height: "4" });
  expect(tree.children[0]?.children.map(({ name, text }) => [name, text])).toEqual([
    ["path", ""],
    ["text", "a &lt; b"],
  ]);
  expect(svgText(tree)).toBe(svg);
});

test("what is no SVG, or does not nest, is refused", () => {
  expect(() => svgTree("no element")).toThrow("no svg element");
  expect(() => svgTree("<svg><g></svg></g>")).toThrow("svg ends where it is not open");
  expect(() => svgTree("<svg><g></g>")).toThrow("no svg element");
});
