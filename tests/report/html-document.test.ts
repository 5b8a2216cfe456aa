import { expect, test } from "vitest";
import { htmlDocument } from "../../src/report/html-document.ts";

const parts = { title: "LT-1", contentSecurityPolicy: "default-src 'none'", style: "p{margin:0}", body: "<p>text</p>" };

test("a page is one document with its language, policy, title, fonts and style before its body", () => {
  const page = htmlDocument(parts);
  expect(page).toMatch(/^<!doctype html>\n<html lang="en"><head><meta charset="utf-8">\n/u);
  expect(page).toContain(`content="default-src 'none'"`);
  expect(page).toMatch(
    /<style>@font-face\{.*p\{margin:0\}<\/style>\n<\/head><body>\n<p>text<\/p>\n<\/body><\/html>\n$/u,
  );
});

test("scripts come last, where there are any", () => {
  expect(htmlDocument({ ...parts, scripts: "<script>1</script>" })).toMatch(
    /<p>text<\/p>\n<script>1<\/script>\n<\/body><\/html>\n$/u,
  );
});

test("a title that is markup is text", () => {
  expect(htmlDocument({ ...parts, title: "</title><b>" })).toContain("<title>&lt;/title&gt;&lt;b&gt;</title>");
});
