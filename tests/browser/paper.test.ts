import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { figureDefinition } from "../../src/record/figure-definitions.ts";
import { sourceWords } from "../../src/report/texts/source-texts.ts";
import { describeWithProgram } from "../outside/needs-program.ts";
import { opened } from "./browser.ts";
import { demoPages, onDisk } from "./demo-pages.ts";
import { figureTexts, sheetRows, uncuttable } from "./in-page.mjs";

type Word = { text: string; left: number; right: number; top: number; bottom: number };
type PaperPage = { width: number; height: number; words: readonly Word[] };

/** Paper and the margins of the page's style, in points and in pixels of CSS (1 mm = 96/25.4 px). */
const papers = [
  {
    format: "A4",
    width: 595,
    height: 842,
    usableHeightPixels: ((297 - 24) * 96) / 25.4,
    usableWidthPixels: ((210 - 24) * 96) / 25.4,
  },
  {
    format: "Letter",
    width: 612,
    height: 792,
    usableHeightPixels: ((279.4 - 24) * 96) / 25.4,
    usableWidthPixels: ((215.9 - 24) * 96) / 25.4,
  },
] as const;

const cases = demoPages.flatMap((demo) =>
  papers.map((paper) => ({ label: `${demo.label} on ${paper.format}`, demo, paper })),
);

describeWithProgram("chromium", "a page on paper", (chromium) => {
  describeWithProgram("pdftotext", "as printed", (pdftotext) => {
    const folder = mkdtempSync(join(tmpdir(), "spanwright-paper-"));
    afterAll(() => rmSync(folder, { recursive: true }));

    const printouts = new Map<string, ReturnType<typeof print>>();
    function printed(one: (typeof cases)[number]) {
      const known = printouts.get(one.label) ?? print(one);
      printouts.set(one.label, known);
      return known;
    }

    async function print({ demo, paper }: (typeof cases)[number]) {
      const viewport = { width: Math.floor(paper.usableWidthPixels), height: 1000 };
      const { page } = await opened(chromium, onDisk(folder, demo), { viewport });
      await page.emulateMedia({ media: "print" });
      const boxes = await page.evaluate(uncuttable);
      const rows = await page.evaluate(sheetRows);
      const figures = await page.evaluate(figureTexts);
      const pdf = join(folder, `${demo.record.instrument.tag}-${paper.format}.pdf`);
      writeFileSync(pdf, await page.pdf({ format: paper.format, printBackground: true }));
      return { pages: pagesOf(pdftotext, pdf), boxes, rows, figures };
    }

    test.each(cases)("$label: no row, picture or box is cut", async (one) => {
      const { boxes } = await printed(one);
      expect(boxes.length).toBeGreaterThan(40);
      for (const { name, height, breakInside } of boxes) {
        expect(breakInside, name).toBe("avoid");
        expect(height, name).toBeLessThan(one.paper.usableHeightPixels);
      }
    });

    test.each(cases)("$label: each row of the working stands whole on one page", async (one) => {
      const { pages, rows } = await printed(one);
      const readings = Object.values(one.demo.record.phases).flatMap((phase) => phase?.readings ?? []);
      expect(rows).toHaveLength(readings.length);
      for (const row of rows) {
        const cells = row.filter((cell) => cell !== "").map((cell) => cell.replace(/\s+/gu, ""));
        const places = pages.filter(({ words }) => linesOf(words).some((line) => holdsInOrder(line, cells)));
        expect(places.length, cells.join(" ")).toBeGreaterThanOrEqual(1);
      }
    });

    test.each(cases)(
      "$label: each picture stands with its title, its axes and its caption on one page",
      async (one) => {
        const { pages, figures } = await printed(one);
        expect(figures.length).toBeGreaterThanOrEqual(2);
        const texts = pages.map(({ words }) => new Set(words.map(({ text }) => text)));
        for (const figure of figures) {
          const wholeOn = texts.filter((words) => figure.every((word) => words.has(word)));
          expect(wholeOn.length, figure.slice(0, 8).join(" ")).toBeGreaterThanOrEqual(1);
        }
      },
    );

    test.each(cases)("$label: what the figures are is printed, though a telephone keeps it folded", async (one) => {
      const { pages } = await printed(one);
      const text = pages.map(({ words }) => textOf(words)).join(" ");
      for (const key of ["linearity.terminal", "error", "expandedUncertainty", "specificRisk"] as const) {
        const { source } = figureDefinition(key);
        // A line may end behind a hyphen of a source.
        expect(text.replaceAll(" ", ""), key).toContain(sourceWords(source).replaceAll(" ", ""));
      }
    });

    test.each(cases)("$label: everything stands on the paper, inside its margins", async (one) => {
      const { pages } = await printed(one);
      for (const { width, height, words } of pages) {
        expect(
          Math.abs(width - one.paper.width),
          "a point, for Chromium rounds A4 to hundredths of an inch",
        ).toBeLessThan(1.5);
        expect(Math.abs(height - one.paper.height)).toBeLessThan(1.5);
        const margin = (12 / 25.4) * 72 - 1;
        for (const { text, left, right } of words) {
          expect(left, text).toBeGreaterThanOrEqual(margin);
          expect(right, text).toBeLessThanOrEqual(width - margin);
        }
      }
    });
  });
});

/** The words of a PDF with their boxes, as pdftotext of poppler finds them. */
function pagesOf(pdftotext: string, pdf: string): readonly PaperPage[] {
  const found = execFileSync(pdftotext, ["-bbox", pdf, "-"], { encoding: "utf8", maxBuffer: 1e8 });
  return found
    .split("<page ")
    .slice(1)
    .map((page) => ({
      width: Number(/width="([\d.]+)"/u.exec(page)?.[1]),
      height: Number(/height="([\d.]+)"/u.exec(page)?.[1]),
      words: [
        ...page.matchAll(/<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)</gu),
      ].map(([, left, top, right, bottom, text = ""]) => ({
        ...{ left: Number(left), top: Number(top), right: Number(right), bottom: Number(bottom) },
        text: text.replaceAll("&amp;", "&").replaceAll("&lt;", "<").replaceAll("&gt;", ">"),
      })),
    }));
}

/** Words whose middles lie within two points of each other are a line. */
function linesOf(words: readonly Word[]): readonly (readonly string[])[] {
  const lines: Word[][] = [];
  for (const word of [...words].sort((a, b) => middleOf(a) - middleOf(b))) {
    const line = lines.at(-1);
    if (line?.[0] !== undefined && middleOf(word) - middleOf(line[0]) < 2) line.push(word);
    else lines.push([word]);
  }
  return lines.map((line) => line.sort((a, b) => a.left - b.left).map(({ text }) => text));
}

function middleOf({ top, bottom }: Word): number {
  return (top + bottom) / 2;
}

/** Whether the line, without its blanks, is the cells one behind the other; the sign of a failed row may stand before the last. */
function holdsInOrder(line: readonly string[], cells: readonly string[]): boolean {
  return line.join("").replace("▸", "").includes(cells.join(""));
}

function textOf(words: readonly Word[]): string {
  return words.map(({ text }) => text).join(" ");
}
