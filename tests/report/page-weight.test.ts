import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { recordJson } from "../../src/jobs/records/write-record.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { withPlainRecord } from "../../src/record/record-element.ts";
import { demoRecords } from "./demo-records.ts";
import { drawnPage } from "./drawn-page.ts";

const bytesOf = (text: string) => new TextEncoder().encode(text).length;
const data = /<script type="application\/json" id="record">(?<json>[^<]*)<\/script>/u;
const mostOfUsualPage = 200_000;
/** Of a loop with outputs, or found out of tolerance, with a cause and a comparison of what a re-teach could do. */
const mostOfPage = 240_000;
const inDocs = readFileSync("docs/record.md", "utf8");

/** What the page on records says of a tag: kB of the page and of the JSON beside it. */
function documented(tag: string): readonly number[] {
  const last = new RegExp(`^\\| ${tag} .*\\| *(\\d+) \\+ (\\d+) *\\|$`, "mu").exec(inDocs) ?? [];
  return last.slice(1).map(Number);
}

test.each(demoRecords.map((record) => [record.instrument.tag, record] as const))(
  "the page of %s weighs what it may, and what the docs say",
  async (tag, record) => {
    const sealed = sealRecord(record);
    const page = await drawnPage(record);
    const json = recordJson(sealed);
    const embedded = data.exec(withPlainRecord(page))?.groups?.json ?? "";
    expect(bytesOf(page)).toBeLessThan(tag === "LT-310" ? mostOfUsualPage : mostOfPage);
    // Compact: one line, written as JSON.stringify writes it, once in the page.
    expect(json).toBe(`${JSON.stringify(JSON.parse(json))}\n`);
    expect(JSON.parse(embedded)).toEqual(JSON.parse(json));
    expect(withPlainRecord(page).match(/"spanwright-record\//gu)).toHaveLength(1);
    for (const [place, text] of [page, json].entries()) {
      const part = bytesOf(text) / 1000 / (documented(tag)[place] ?? 0);
      expect(part).toBeGreaterThan(0.9);
      expect(part).toBeLessThan(1.1);
    }
  },
);
