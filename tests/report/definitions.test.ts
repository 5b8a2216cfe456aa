import { expect, test } from "vitest";
import { assembleOverTheYears } from "../../src/assembly/years/assemble-over-the-years.ts";
import { figureDefinitions } from "../../src/record/figure-definitions.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { unsealedSummary } from "../../src/record/record-summary.ts";
import { sourceWords } from "../../src/report/texts/source-texts.ts";
import { demoRecord, demoRecords } from "./demo-records.ts";
import { drawnPage } from "./drawn-page.ts";

const records = [...demoRecords, withDraws("ZT-201"), withHistory("LT-310")];

const pages = new Map(
  await Promise.all(records.map(async (record) => [record.instrument.tag, textsOf(await drawnPage(record))] as const)),
);

/** A record whose budgets were checked by drawing, as `--monte-carlo` makes it. */
function withDraws(tag: string): CalibrationRecord {
  const record = structuredClone(demoRecord(tag));
  record.instrument.tag = `${tag} with draws`;
  const monteCarlo = { draws: 1e6, standardUncertainty: 1, halfWidth: 2, low: -2, high: 2, agrees: true, reason: null };
  Object.assign(record.phases.asFound?.points[0] ?? {}, { monteCarlo });
  return record;
}

/** A record that was made beside a folder of filed ones. */
function withHistory(tag: string): CalibrationRecord {
  const record = structuredClone(demoRecord(tag));
  record.instrument.tag = `${tag} with history`;
  const before = { ...unsealedSummary(record), sha256: "a".repeat(64), calibration: "C-0", performedOn: "2025-01-07" };
  return { ...record, ...assembleOverTheYears({ ...record, history: [before] }) };
}

type PageTexts = { whole: string; lists: readonly string[] };

/** What is read of a page and of each list of definitions in it. */
function textsOf(page: string): PageTexts {
  const lists = [...page.matchAll(/<dl class="definitions">.*?<\/dl>/gsu)].map(([html]) => readable(html));
  return { whole: readable(/<main>.*<\/main>/su.exec(page)?.[0] ?? ""), lists };
}

function readable(html: string): string {
  return html
    .replace(/<\/?(?:sub|strong)>/gu, "")
    .replace(/<[^>]+>/gu, " ")
    .replaceAll("&lt;", "<")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&")
    .replace(/\s+/gu, " ");
}

function timesIn(text: string, part: string): number {
  return text.split(part).length - 1;
}

test.each(figureDefinitions.map(({ key, ...definition }) => ({ key, definition })))(
  "$key stands on a page of the demo with its formula and its source",
  ({ definition: { name, meaning, formula, source } }) => {
    const found = [...pages.values()].filter(({ whole, lists }) =>
      lists.some(
        (list) =>
          [name, formula.replaceAll("_", ""), sourceWords(source)].every((part) => list.includes(part)) &&
          whole.includes(meaning),
      ),
    );
    expect(found.length).toBeGreaterThan(0);
  },
);

test("no page says the meaning or the formula of a figure twice", () => {
  for (const [tag, { whole }] of pages) {
    for (const { key, meaning, formula } of figureDefinitions) {
      expect(timesIn(whole, meaning), `${tag} ${key}`).toBeLessThanOrEqual(1);
      if (formula.length > 30) expect(timesIn(whole, formula), `${tag} ${key}`).toBeLessThanOrEqual(1);
    }
  }
});

test("'from memory' stands once on a page, and its mark at every source that it is true of", () => {
  for (const [tag, { whole }] of pages) {
    expect(timesIn(whole, "from memory"), tag).toBe(1);
    expect(timesIn(whole, "terms; ANSI/ISA-51.1-1979 (R1993)*"), tag).toBeGreaterThan(2);
  }
});

test("a page explains only what it shows", () => {
  const { lists = [] } = pages.get("ZT-201") ?? {};
  const words = lists.join(" ");
  for (const absent of ["Wiring share", "Input card share", "Speed of sound", "Burden", "Budget by drawing"]) {
    expect(words).not.toContain(absent);
  }
  for (const present of ["Operating distance", "Global false accept", "Expanded uncertainty"]) {
    expect(words).toContain(present);
  }
});
