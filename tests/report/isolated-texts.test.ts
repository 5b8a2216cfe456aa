import { expect, test } from "vitest";
import { recordPage } from "../../src/jobs/records/write-record.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { isolatedTexts } from "../../src/report/isolated-texts.ts";
import { renderLabels } from "../../src/report/label-sheet.tsx";
import { reportedRecord } from "../jobs/reported-records.ts";
import { smallestWorkbook } from "../workbook/smallest-workbook.ts";

const typed = (...texts: readonly string[]) =>
  [
    { inputs: { rows: { instruments: [{ cells: Object.fromEntries(texts.map((text) => [text, text])) }] } } },
  ] as unknown as Parameters<typeof isolatedTexts>[1];

test("a text of a table that is written from right to left is kept to itself, in a sentence too", () => {
  expect(isolatedTexts("<p>Output خزان 1 trips at 4,2 mm.</p>", typed("خزان 1", "LT-1"))).toBe(
    "<p>Output <bdi>خزان 1</bdi> trips at 4,2 mm.</p>",
  );
  expect(isolatedTexts("<p>LT-1</p>", typed("LT-1"))).toBe("<p>LT-1</p>");
});

test("of two texts the longer is one; what a table has of signs is text", () => {
  expect(isolatedTexts("<p>אב ג &amp; אב</p>", typed("אב", "אב ג &"))).toBe(
    "<p><bdi>אב ג &amp;</bdi> <bdi>אב</bdi></p>",
  );
  expect(isolatedTexts("<p>א.ב</p><p>אxב</p>", typed("א.ב"))).toBe("<p><bdi>א.ב</bdi></p><p>אxב</p>");
});

test("attributes, drawings and what is isolated already stay as they are", () => {
  const html = '<p title="a > אב" id="x"><bdi>אב</bdi></p><svg><text>אב</text></svg>';
  expect(isolatedTexts(html, typed("אב"))).toBe(html);
});

test("on a page and on a label no such name stands bare, whatever the sentence", async () => {
  const names = { tag: "خزان-1", output: "ס1", standard: "מד-7", person: "فلان" };
  const replaced = Object.fromEntries(
    Object.entries(smallestWorkbook).map(([file, text]) => [
      file,
      text.replaceAll("LT-1", names.tag).replaceAll("GB-1", names.standard).replaceAll("T. Example", names.person),
    ]),
  );
  const { record } = await reportedRecord({
    ...replaced,
    "outputs.csv": `tag,output,set_point,set_point_tolerance,function\n${names.tag},${names.output},50,1,NO\n`,
  });
  for (const page of [await recordPage(sealRecord(record)), renderLabels([record], { isSheet: false, skipped: 0 })]) {
    const body = page.slice(page.indexOf("<body>")).replace(/<script.*?<\/script>|<svg.*?<\/svg>/gsu, "");
    expect(body).toContain(`<bdi>${names.tag}</bdi>`);
    const bare = body.replace(/<bdi>.*?<\/bdi>/gsu, "").replace(/<[a-z/](?:[^>"]|"[^"]*")*>/giu, "\n");
    expect(bare.split("\n").filter((text) => Object.values(names).some((name) => text.includes(name)))).toEqual([]);
  }
});
