import { beforeAll, expect, test } from "vitest";
import { reportedFrom } from "../jobs/reported-records.ts";
import { describeWithProgram } from "../outside/needs-program.ts";
import { smallestWorkbook } from "../workbook/smallest-workbook.ts";
import { opened } from "./browser.ts";

const [points, cycles] = [100, 10];
const count = points * cycles * 2;
/** The one reading that is far off. */
const outside = 1050;

/** So many readings, out and back, each a little off in a way that no two neighbours share. */
function manyReadings(points: number, cycles: number): string {
  const rows = ["calibration,phase,cycle,direction,point,reference,signal"];
  for (let cycle = 1; cycle <= cycles; cycle++) {
    for (const direction of ["rising", "falling"]) {
      for (let place = 0; place < points; place++) {
        const point = (100 * (direction === "rising" ? place : points - 1 - place)) / (points - 1);
        const off = rows.length === outside ? 0.5 : 0.01 * Math.sin(7 * rows.length);
        const signal = 4 + (16 * point) / 100 + off;
        rows.push(`C-1,as_found,${cycle},${direction},${point.toFixed(2)},${point.toFixed(2)},${signal.toFixed(4)}`);
      }
    }
  }
  return `${rows.join("\n")}\n`;
}

async function pageOf(readings: string): Promise<string> {
  const texts = Object.entries({ ...smallestWorkbook, "readings.csv": readings });
  const { files } = await reportedFrom(Object.fromEntries(texts.map(([name, text]) => [`book/${name}`, text])), "book");
  return String(files.get("out/LT-1/C-1.html") ?? "");
}

let html = "";
beforeAll(async () => {
  html = await pageOf(manyReadings(points, cycles));
}, 60_000);

const rowsOfSheet = /<table class="sheet">.*?<tbody>(?<rows>.*?)<\/table>/su;

test("a record of 2,000 readings is a page of less than 1.5 MB that holds each of them", () => {
  const bytes = Buffer.byteLength(html);
  expect(bytes).toBeGreaterThan(300_000);
  expect(bytes).toBeLessThan(1_500_000);
  const rows = rowsOfSheet.exec(html)?.groups?.rows ?? "";
  expect(rows.match(/<tr/gu)).toHaveLength(count);
});

test("so is a record of as many readings at 1,000 test points, each of which is a row of its tables", async () => {
  const page = await pageOf(manyReadings(count / 2, 1));
  expect(Buffer.byteLength(page)).toBeLessThan(1_500_000);
  expect(rowsOfSheet.exec(page)?.groups?.rows?.match(/<tr/gu)).toHaveLength(count);
}, 60_000);

test("of 100 test points those whose budgets read alike share a column", () => {
  const head = /<table class="plain is-wide budgets[^>]*>.*?<tbody>/su.exec(html)?.[0] ?? "";
  const headings = [...head.matchAll(/<th scope="col"[^>]*>(?<text>[^<]*)/gu)].map(({ groups }) => groups?.text ?? "");
  expect(headings.length).toBeLessThan(points / 2);
  const shared = headings.flatMap((text) => /^(?<many>\d+) points, /u.exec(text)?.groups?.many ?? []).map(Number);
  const single = headings.filter((text) => /, (?:rising|falling)$/u.test(text)).length;
  expect(shared.reduce((sum, many) => sum + many, single)).toBe(points);
});

describeWithProgram("chromium", "its working sheet", (chromium) => {
  test("is folded on the screen until all of it is asked for, and whole on paper", async () => {
    const { page } = await opened(chromium, "about:blank", { javaScriptEnabled: false });
    await page.setContent(html);
    const shown = () => page.locator(".sheet tbody tr:visible").count();
    expect(await shown()).toBe(21);
    expect(await page.locator(".sheet tbody tr:visible").last().textContent()).toMatch(/^1050/u);
    await page.getByLabel(`all ${count} rows`).check();
    expect(await shown()).toBe(count);
    await page.getByLabel(`all ${count} rows`).uncheck();
    await page.emulateMedia({ media: "print" });
    expect(await shown()).toBe(count);
  });
});
