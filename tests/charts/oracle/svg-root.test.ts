import { expect, test } from "vitest";
import { withRoot } from "./svg-root.ts";

const words = { idPrefix: "error-wide", className: "chart", title: "Title", description: "Description" };
const drawn = (body: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" class="marks" width="900" height="340.5" viewBox="0 0 900 340.5">${body}</svg>`;

test("the root has a role, a name, a description and no size of its own", () => {
  expect(withRoot(drawn("<g/>"), words)).toBe(
    '<svg xmlns="http://www.w3.org/2000/svg" class="chart" viewBox="0 0 900 340.5" role="img" aria-label="Title"' +
      ' aria-describedby="error-wide-description" fill="none"><desc id="error-wide-description">Description</desc></svg>',
  );
});

test("hostile words stay text", () => {
  const hostile = `</desc><script>alert("1")</script>' & <b`;
  const svg = withRoot(drawn(""), { ...words, title: hostile, description: hostile });
  expect(svg).not.toContain("<script");
  expect(svg).toContain('aria-label="&lt;/desc&gt;&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt;&#39; &amp; &lt;b"');
});

test("ids are numbered by appearance and begin with the prefix, and what refers to them follows", () => {
  const svg = withRoot(drawn('<clipPath id="clip7"/><g clip-path="url(#clip7)"/><clipPath id="clip12"/>'), words);
  expect(svg).toContain(
    '<clipPath id="error-wide-1"/><g clip-path="url(#error-wide-1)"/><clipPath id="error-wide-2"/>',
  );
});

test("text that is no SVG is refused", () => {
  expect(() => withRoot("<p>", words)).toThrow("no svg element");
});

test("the font of the texts is said once, and a text is never taken for an attribute", () => {
  const text = "id=&quot;clip1&quot; url(#clip1) translate(1.23456,2)";
  const svg = withRoot(
    drawn(`<g><text transform="translate(1.23456,-7e-9)" font-family="Inter" font-size="13px">${text}</text></g>`),
    words,
  );
  expect(svg).toContain(' font-family="Inter" font-size="13px"><desc');
  expect(svg).toContain(`<text x="1.2" y="0">${text}</text>`);
});
