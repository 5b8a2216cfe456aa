import { expect, test } from "vitest";
import { readXml } from "../../../src/workbook/files/xml-reader.ts";

function told(xml: string): readonly string[] {
  const said: string[] = [];
  readXml(xml, {
    open: (name, attributes) => said.push(`<${name} ${attributes("a:b")}`),
    close: (name) => said.push(`>${name}`),
    text: (text) => said.push(text),
  });
  return said;
}

test("elements, attributes and texts are told in their order, with the entities that XML names", () => {
  const xml = `\ufeff<?xml version="1.0"?><r a:b='1 > "0"'><!-- <no/> --><e/>x &amp; &#x41;&#66; &own;<![CDATA[<&amp;]]></r >`;
  expect(told(xml)).toEqual(['<r 1 > "0"', "<e ", ">e", "x & AB &own;", "<&amp;", ">r"]);
});

test("an attribute is found by its whole name", () => {
  expect(told('<r xa:b="0" a:bc="1" a:b = "2"/>')[0]).toBe("<r 2");
});

test.each([
  "<a",
  "<a></b>",
  "<a><b></a>",
  "<a>",
  "</a>",
  '<a b="></a>',
  "<!DOCTYPE a><a/>",
  "<!-- <a/>",
  "<a>".repeat(300),
  '<a b="',
])("%s is not well-formed", (xml) => {
  expect(() => told(xml)).toThrow(SyntaxError);
});
