import { expect, test } from "vitest";
import { newItem, newMark } from "../../../src/charts/drawing/scene.ts";
import { svgOf } from "../../../src/charts/drawing/svg-root.ts";

const words = { idPrefix: "error-wide", className: "chart", title: "Title", description: "Description" };
const group = { marktype: "group", clip: false, interactive: true };

function emptyScene() {
  const root = newMark(group, undefined);
  root.items = [newItem(root, {}, 0)];
  return { root, size: { width: 900, height: 340.5 }, origin: [0, 0] as const };
}

test("the root has a role, a name, a description and no size of its own", () => {
  expect(svgOf(emptyScene(), words)).toBe(
    '<svg xmlns="http://www.w3.org/2000/svg" class="chart" viewBox="0 0 900 340.5" role="img" aria-label="Title"' +
      ' aria-describedby="error-wide-description" fill="none"><desc id="error-wide-description">Description</desc></svg>',
  );
});

test("hostile words stay text", () => {
  const hostile = `</desc><script>alert("1")</script>' & <b`;
  const svg = svgOf(emptyScene(), { ...words, title: hostile, description: hostile });
  expect(svg).not.toContain("<script");
  expect(svg).toContain('aria-label="&lt;/desc&gt;&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt;&#39; &amp; &lt;b"');
});
