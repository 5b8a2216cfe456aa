import { posix } from "node:path";
import { gunzipSync } from "node:zlib";
import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { complainOf } from "../../src/cli/console.ts";
import { alignedTable } from "../../src/cli/print-table.ts";
import { summaryRows } from "../../src/jobs/records/summary-rows.ts";
import { sealedRecordSchema } from "../../src/record/record-schema.ts";
import { pageStyle } from "../../src/report/style/page-style.ts";
import { opened } from "../browser/browser.ts";
import { contentsOf } from "../browser/in-page.mjs";
import { recordingConsole } from "../cli/recording-console.ts";
import { howMany } from "../how-many.ts";
import { describeWithProgram } from "../outside/needs-program.ts";
import type { Texts } from "../workbook/smallest-workbook.ts";
import { type HostileText, hiddenCharacters, hostileTexts, isBlank, shownText } from "./hostile-texts.ts";
import { type HostileColumn, hostileColumns, hostileWorkbook } from "./hostile-workbook.ts";
import { inFolder, memoryDisk } from "./memory-disk.ts";
import { reportKept } from "./reported-records.ts";

async function reported(texts: Texts) {
  const disk = memoryDisk(inFolder("book", texts));
  const { written, reading } = await reportKept(disk, "book", {
    out: "out",
    today: "2026-11-25",
    firstLook: {},
    softwareVersion: "0.0.0",
  });
  const console = recordingConsole();
  complainOf(reading.problems, console);
  console.print(alignedTable(summaryRows(written)));
  const terminal = [...console.printed, ...console.complained].join("\n");
  expect(terminal).not.toMatch(hiddenCharacters);
  for (const path of disk.written.keys()) requireSafePath(path);
  expect(disk.written.size).toBe(2 * written.length);
  return { written, disk, terminal };
}

/** What the parsed pages say, after every check that holds for any page. */
async function harmlessTexts({ written, disk }: Awaited<ReturnType<typeof reported>>, parser: Page) {
  const pages = written.map(({ page }) => disk.written.get(page) ?? "");
  for (const page of pages) expect(page).not.toMatch(hiddenCharacters);
  const whole = `<!doctype html><style>${pageStyle}</style>`;
  const contents = await parser.evaluate(contentsOf, [whole, await harmlessPage(), ...pages].map(withoutFonts));
  const [styled, harmless, ...hostile] = contents;
  const known = new Set(selectorsOf(styled?.rules ?? []));
  expect(harmless?.frame).toEqual(["meta", "meta", "meta", "title", "style", "|", "a", "main", "script"]);
  expect(harmless?.rules.length).toBeGreaterThan(50);
  return hostile.map(({ frame, title, rules, scripts, active, actingAttributes, text, data }, index) => {
    expect({ scripts, active, actingAttributes }).toEqual({
      scripts: ["application/gzip#record"],
      active: [],
      actingAttributes: [],
    });
    expect(frame).toEqual(harmless?.frame);
    expect(selectorsOf(rules).filter((one) => !known.has(one) && !one.startsWith("CSSFontFaceRule"))).toEqual([]);
    const { tag } = written[index]?.record.instrument ?? {};
    const number = written[index]?.record.calibration.calibration;
    expect(title).toBe(oneBlank(`${tag} · calibration record ${number}`));
    const json = disk.written.get(written[index]?.page.replace(/html$/u, "json") ?? "") ?? "";
    expect(JSON.parse(unpacked(data))).toEqual(JSON.parse(json));
    expect(sealedRecordSchema.parse(JSON.parse(json))).toEqual(written[index]?.record);
    return text;
  });
}

const unpacked = (packed: string) => gunzipSync(Buffer.from(packed, "base64")).toString("utf8");

/** A page has of the style what it uses: of a list of selectors perhaps one. */
function selectorsOf(rules: readonly string[]): readonly string[] {
  return rules.flatMap((rule) => {
    const [kind, ...selectors] = rule.split(/ (?=[^ ])/u);
    return selectors
      .join(" ")
      .split(", ")
      .map((selector) => `${kind} ${selector}`);
  });
}

/** Names of standards stand in a list, so that a mark between two of them cannot stand in one. */
function isTaken({ name }: HostileColumn, hostile: HostileText): boolean {
  return !isBlank(hostile) && !(name === "standard" && /[;+|,]/u.test(shownText(hostile)));
}

/** Texts that the record keeps and the page has no place for yet. */
const notOnPage: ReadonlySet<string> = new Set([
  "instruments.decision_rule",
  "loop_checks.unit",
  ...["connector", "pins"].map((name) => `instruments.${name}`),
  // On the page of a loop that does not pass only, which these do.
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

const count = hostileTexts.length;
const textColumns = hostileColumns.filter(({ isText, isKey }) => isText && !isKey);
const keyColumns = hostileColumns.filter(({ isKey }) => isKey);
const otherColumns = hostileColumns.filter(({ isText }) => !isText);

/**
 * Some of these texts for one of these columns, others for the next: each text stands in at least one key and in many of
 * the columns that take no text, and all of them in each where MANY_CASES is set.
 */
function someFor(column: HostileColumn, columns: readonly HostileColumn[], texts: readonly HostileText[]) {
  const many = howMany(columns === keyColumns ? 4 : 3, texts.length);
  const first = columns.indexOf(column) * many;
  return Array.from({ length: many }, (_, place) => texts[(first + place) % texts.length] as HostileText);
}

/**
 * Each loop has another text in each column, so that every text has stood in every column after one round: without a
 * controller and with one, or half of the round without and half with one where not all cases are tried.
 */
function inTurn(column: HostileColumn, loop: number): HostileText | undefined {
  const place = textColumns.indexOf(column);
  const hostile = place === -1 ? undefined : hostileTexts[(loop + place) % count];
  return hostile && isBlank(hostile) && column.isRequired ? undefined : hostile;
}

describeWithProgram("chromium", "a hostile text in a table stays a text", (chromium) => {
  let parser: Page;
  beforeAll(async () => {
    parser = (await opened(chromium, "about:blank")).page;
  });

  test.each([false, true])("in every text cell in turn (with a controller: %s)", async (hasController) => {
    const loops = howMany(Math.ceil(count / 2), count);
    const first = hasController ? count - loops : 0;
    const reports = await reported(
      hostileWorkbook(loops, (column, loop) => inTurn(column, first + loop), hasController),
    );
    expect(reports.written, reports.terminal).toHaveLength(loops);
    const texts = await harmlessTexts(reports, parser);
    for (const [loop, text] of texts.entries()) {
      for (const column of textColumns.filter(({ label }) => !notOnPage.has(label))) {
        const hostile = inTurn(column, first + loop);
        if (hostile === undefined || isBlank(hostile) || (column.name === "value_unit" && !hasController)) continue;
        expect(text.includes(shownText(hostile)), `${hostile.name} in ${column.label}`).toBe(true);
      }
    }
  });

  test.each(keyColumns)("in $label, by which tables refer to each other", async (key) => {
    const all = hostileTexts.filter((hostile) => isTaken(key, hostile));
    expect(all.length).toBeGreaterThan(15);
    const taken = someFor(key, keyColumns, all);
    const reports = await reported(
      hostileWorkbook(taken.length, (column, loop) => (column === key ? taken[loop] : undefined)),
    );
    expect(reports.written, reports.terminal).toHaveLength(taken.length);
    for (const [loop, text] of (await harmlessTexts(reports, parser)).entries()) {
      const isShown = text.includes(shownText(taken[loop] ?? { name: "", text: "missing" }));
      expect(isShown || notOnPage.has(key.label), taken[loop]?.name).toBe(true);
    }
  });

  test.each(hostileColumns.filter(({ isText, isRequired, table }) => isText && isRequired && table !== "candidates"))(
    "a no-break space in $label is no name: it is told, and nothing is written",
    async (required) => {
      const blank = hostileTexts.filter(isBlank)[0];
      const { written, terminal } = await reported(
        hostileWorkbook(1, (column) => (column === required ? blank : undefined)),
      );
      expect(written).toEqual([]);
      expect(terminal).toMatch(new RegExp(`^wrong .*:2:${required.name}: nothing is written here`, "mu"));
    },
  );

  test.each(otherColumns)("in $label, which takes no text", async (other) => {
    const texts = someFor(other, otherColumns, hostileTexts);
    const { written, terminal } = await reported(
      hostileWorkbook(texts.length, (column, loop) => (column === other ? texts[loop] : undefined)),
    );
    expect(written.length, terminal).toBeLessThanOrEqual(1);
  });
});

/** A page of the same workbook with nothing hostile in it. */
async function harmlessPage(): Promise<string> {
  const { written, disk } = await reported(hostileWorkbook(1, () => undefined));
  return disk.written.get(written[0]?.page ?? "") ?? "";
}

/** A document's title as the DOM gives it: ASCII blanks made one (HTML Standard, document.title). */
function oneBlank(text: string): string {
  return text.replace(/[\t\n\f\r ]+/gu, " ").trim();
}

/** The embedded fonts are most of a page, and the same on each. */
function withoutFonts(page: string): string {
  return page.replace(/base64,[A-Za-z0-9+/=]+/gu, "base64,");
}
