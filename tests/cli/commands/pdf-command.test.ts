import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PDFDict, PDFDocument, PDFHexString, PDFName, PDFString } from "@cantoo/pdf-lib";
import { afterAll, beforeAll, expect, test } from "vitest";
import { madeDemo } from "../../made-demo.ts";
import { describeWithProgram } from "../../outside/needs-program.ts";
import { filesBelow, type Run, spanwright, temporaryFolder } from "../built-command.ts";

/** A folder of the demonstration's record of LT-640. */
function folderOfRecord(folder = temporaryFolder()): string {
  cpSync(join(madeDemo(), "LT-640"), join(folder, "LT-640"), { recursive: true });
  return folder;
}

describeWithProgram("pdfdetach", "a PDF file", (pdfdetach) =>
  describeWithProgram("chromium", "of a page that an installed browser printed", (chromium) => {
    /** Printed once for both that look at it. */
    const folder = mkdtempSync(join(tmpdir(), "spanwright-pdf-"));
    let run: Run;
    beforeAll(() => {
      run = spanwright("pdf", join(folderOfRecord(folder), "LT-640", "C-2026-047.html"), "--browser", chromium);
    });
    afterAll(() => rmSync(folder, { recursive: true }));

    test("lies beside the page, as a PDF file, and nothing else is left there", () => {
      expect(run).toEqual({ exitCode: 0, output: `${join(folder, "LT-640", "C-2026-047.pdf")}\n`, complaints: "" });
      expect(filesBelow(folder)).toEqual([...["html", "json", "pdf"].map((kind) => `LT-640/C-2026-047.${kind}`)]);
      expect(readFileSync(join(folder, "LT-640/C-2026-047.pdf")).subarray(0, 5).toString("latin1")).toBe("%PDF-");
      const inside = join(temporaryFolder(), "inside.json");
      execFileSync(pdfdetach, ["-save", "1", "-o", inside, join(folder, "LT-640/C-2026-047.pdf")]);
      expect(readFileSync(inside, "utf8")).toBe(readFileSync(join(folder, "LT-640/C-2026-047.json"), "utf8"));
      expect(spanwright("verify", inside)).toMatchObject({ exitCode: 0, complaints: "" });
    });

    test("has a title, a language, tags and an outline with every annex, as another reader finds them", async () => {
      const path = join(folder, "LT-640/C-2026-047.pdf");
      const told = execFileSync(pdfdetach.replace(/pdfdetach$/u, "pdfinfo"), [path], { encoding: "utf8" });
      expect(told).toMatch(/^Title: +LT-640 · calibration record C-2026-047$/mu);
      expect(told).toMatch(/^Tagged: +yes$/mu);
      // ISO 32000-1, 14.9.2 and 12.3.3: the language is in the catalogue, and so is the root of the outline.
      const { catalog, context } = await PDFDocument.load(readFileSync(path));
      expect(String(catalog.get(PDFName.of("Lang")))).toBe("(en)");
      const outline = catalog.lookup(PDFName.of("Outlines"), PDFDict);
      const titles = [...context.enumerateIndirectObjects()]
        .flatMap(([, found]) => (found instanceof PDFDict && found.has(PDFName.of("Dest")) ? [found] : []))
        .flatMap((found) => found.lookup(PDFName.of("Title")) ?? [])
        .map((title) => (title instanceof PDFHexString || title instanceof PDFString ? title.decodeText() : ""));
      expect(outline.has(PDFName.of("First"))).toBe(true);
      for (const letter of ["A Working", "B Figures in full", "I Basis of the result", "J Glossary"]) {
        expect(titles.map((title) => title.replace(/\s+/gu, " "))).toContain(letter);
      }
    });

    test.each([
      ["A4", 595, 842],
      ["letter", 612, 792],
    ])("on %s, and the certificate alone, as it is asked for", async (paper, width, height) => {
      const folder = folderOfRecord();
      const run = spanwright("pdf", folder, "--browser", chromium, "--paper", paper, "--certificate");
      expect(run.exitCode, run.complaints).toBe(0);
      const document = await PDFDocument.load(readFileSync(join(folder, "LT-640/C-2026-047.pdf")));
      expect(document.getPages().map((side) => [side.getWidth(), side.getHeight()].map(Math.round))).toEqual([
        [width, height],
      ]);
    });
  }),
);

test("a browser that is none is told, and no file is left", () => {
  const folder = folderOfRecord();
  const page = join(folder, "LT-640", "C-2026-047.html");
  const run = spanwright("pdf", page, "--browser", join(folder, "no-such-browser"));
  expect(run.exitCode).toBe(2);
  expect(run.complaints).toMatch(/the page was not printed: spawn .*no-such-browser ENOENT; accepted: a browser/u);
  expect(filesBelow(folder)).toEqual([...["html", "json"].map((kind) => `LT-640/C-2026-047.${kind}`)]);
});

test("a file that is no record is told", () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "notes.html"), "<p>notes</p>");
  const run = spanwright("pdf", join(folder, "notes.html"), "--browser", "unused");
  expect(run).toMatchObject({ exitCode: 2, output: "" });
  expect(run.complaints).toMatch(/notes\.html: this is no record/u);
});

test("a paper that is none is told", () => {
  const run = spanwright("pdf", "gone.html", "--paper", "A5");
  expect(run.exitCode).toBe(2);
  expect(run.complaints).toMatch(/--paper cannot be read; read "A5"; accepted: A4 or Letter/u);
});
