import { posix } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { complainOf } from "../../src/cli/console.ts";
import { alignedTable } from "../../src/cli/print-table.ts";
import { reportCalibrations } from "../../src/jobs/report-calibrations.ts";
import { summaryRows } from "../../src/jobs/summary-rows.ts";
import { recordSchema } from "../../src/record/record-schema.ts";
import { openBrowser } from "../browser/browser.ts";
import { contentsOf } from "../browser/in-page.mjs";
import { recordingConsole } from "../cli/recording-console.ts";
import { describeWithProgram } from "../outside/needs-program.ts";
import { type HostileText, hiddenCharacters, hostileTexts, isBlank, shownText } from "./hostile-texts.ts";
import { type HostileColumn, hostileColumns, hostileWorkbook } from "./hostile-workbook.ts";
import { inFolder, memoryDisk } from "./memory-disk.ts";

async function reported(column: HostileColumn) {
  const disk = memoryDisk(inFolder("book", hostileWorkbook(column)));
  const { written, reading } = await reportCalibrations(disk, "book", {
    out: "out",
    today: "2026-11-25",
    firstLook: {},
    softwareVersion: "0.0.0",
  });
  const console = recordingConsole();
  complainOf(reading.problems, console);
  console.print(alignedTable(summaryRows(written)));
  return { written, disk, terminal: [...console.printed, ...console.complained].join("\n") };
}

/** Names of standards stand in a list, so that a mark between two of them cannot stand in one. */
function isRefused(column: HostileColumn, hostile: HostileText): boolean {
  if (isBlank(hostile)) return column.isRequired;
  return column.name === "standard" && /[;+|,]/u.test(shownText(hostile));
}

/** Texts that the record keeps and the page has no place for yet. */
const notOnPage: ReadonlySet<string> = new Set([
  "instruments.decision_rule",
  "outputs.output",
  "outputs.wire",
  "outputs.pin",
  ...["measured", "unit", "low", "high", "item", "remark"].map((name) => `loop_checks.${name}`),
  ...["candidate", "connector", "pins"].map((name) => `candidates.${name}`),
]);

/** No folder above, none below, nothing hidden, nothing reserved, no name too long for a disk. */
function requireSafePath(path: string): void {
  expect(posix.normalize(path)).toBe(path);
  const parts = path.split("/");
  expect(parts).toHaveLength(3);
  expect(parts[0]).toBe("out");
  for (const part of parts.slice(1)) {
    expect(part).toMatch(/^[A-Za-z0-9_][A-Za-z0-9._-]*$/u);
    expect(part).not.toMatch(/^(?:con|prn|aux|nul)(?:\.|$)/iu);
    expect(part.length).toBeLessThan(100);
  }
}

const textColumns = hostileColumns.filter(({ isText }) => isText);
const otherColumns = hostileColumns.filter(({ isText }) => !isText);

describeWithProgram("chromium", "a hostile text in a table stays a text", (chromium) => {
  let browser: Browser;
  let parser: Page;
  beforeAll(async () => {
    browser = await openBrowser(chromium);
    parser = await browser.newPage();
  });
  afterAll(() => browser.close());

  test.each(textColumns)("in $label", async (column) => {
    const { written, disk, terminal } = await reported(column);
    expect(terminal).not.toMatch(hiddenCharacters);
    for (const path of disk.written.keys()) requireSafePath(path);
    expect(disk.written.size).toBe(2 * written.length);
    const accepted = hostileTexts.filter((hostile) => !isRefused(column, hostile));
    expect(written, terminal.slice(0, 3000)).toHaveLength(accepted.length);
    const pages = written.map(({ page }) => disk.written.get(page) ?? "");
    const contents = await parser.evaluate(contentsOf, pages.map(withoutFonts));
    for (const [index, hostile] of accepted.entries()) {
      const { scripts, active, actingAttributes, text, data } = contents[index] ?? {};
      expect({ scripts, active, actingAttributes }, hostile.name).toEqual({
        scripts: ["application/json#record"],
        active: [],
        actingAttributes: [],
      });
      const json = disk.written.get(written[index]?.page.replace(/html$/u, "json") ?? "") ?? "";
      expect(JSON.parse(data ?? ""), hostile.name).toEqual(JSON.parse(json));
      expect(recordSchema.parse(JSON.parse(json)), hostile.name).toEqual(written[index]?.record);
      expect(pages[index], hostile.name).not.toMatch(hiddenCharacters);
      const isShown = text?.includes(shownText(hostile)) ?? false;
      expect(isShown || isBlank(hostile) || notOnPage.has(column.label), hostile.name).toBe(true);
    }
  });

  test.each(otherColumns)("in $label, which takes no text", async (column) => {
    const { written, disk, terminal } = await reported(column);
    expect(terminal).not.toMatch(hiddenCharacters);
    for (const path of disk.written.keys()) requireSafePath(path);
    expect(written.length).toBeLessThanOrEqual(1);
  });
});

/** The embedded fonts are most of a page, and the same on each. */
function withoutFonts(page: string): string {
  return page.replace(/base64,[A-Za-z0-9+/=]+/gu, "base64,");
}
