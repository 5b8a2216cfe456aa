import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { describeWithProgram } from "../../outside/needs-program.ts";
import { filesBelow, spanwright, temporaryFolder } from "../built-command.ts";

describeWithProgram("chromium", "a page printed to PDF by an installed browser", (chromium) => {
  test("lies beside the page, as a PDF file, and nothing else is left there", () => {
    const folder = temporaryFolder();
    spanwright("report", "data-demo", "--tag", "LT-640", "--out", folder);
    const page = join(folder, "LT-640", "C-2026-047.html");
    const run = spanwright("pdf", page, "--browser", chromium);
    expect(run).toEqual({ exitCode: 0, output: `${join(folder, "LT-640", "C-2026-047.pdf")}\n`, complaints: "" });
    expect(filesBelow(folder)).toEqual([
      ...["html", "json", "pdf"].map((kind) => `LT-640/C-2026-047.${kind}`),
      "index.html",
    ]);
    const pdf = readFileSync(join(folder, "LT-640/C-2026-047.pdf")).toString("latin1");
    expect(pdf.slice(0, 5)).toBe("%PDF-");
    // Tagged, with an outline, a title and a language (ISO 32000-1, 14.8, 12.3.3, 14.3.3, 14.9.2).
    for (const part of ["/MarkInfo", "/Outlines", "/Title", "/Lang"]) expect(pdf).toContain(part);
  });

  test.each([
    ["A4", "595", "842"],
    ["letter", "612", "792"],
  ])("on %s, and the certificate alone, as it is asked for", (paper, width, height) => {
    const folder = temporaryFolder();
    spanwright("report", "data-demo", "--tag", "LT-640", "--out", folder);
    const run = spanwright("pdf", folder, "--browser", chromium, "--paper", paper, "--certificate");
    expect(run.exitCode, run.complaints).toBe(0);
    const pdf = readFileSync(join(folder, "LT-640/C-2026-047.pdf")).toString("latin1");
    const [, ...box] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/u.exec(pdf) ?? [];
    expect(box.map((side) => String(Math.round(Number(side))))).toEqual([width, height]);
    expect(pdf).toMatch(/\/Type \/Pages\s+\/Count 1\b/u);
  });
});

test("a browser that is none is told, and no file is left", () => {
  const folder = temporaryFolder();
  spanwright("report", "data-demo", "--tag", "LT-640", "--out", folder);
  const page = join(folder, "LT-640", "C-2026-047.html");
  const run = spanwright("pdf", page, "--browser", join(folder, "no-such-browser"));
  expect(run.exitCode).toBe(2);
  expect(run.complaints).toMatch(/the page was not printed: spawn .*no-such-browser ENOENT; accepted: a browser/u);
  expect(filesBelow(folder)).toEqual([...["html", "json"].map((kind) => `LT-640/C-2026-047.${kind}`), "index.html"]);
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
