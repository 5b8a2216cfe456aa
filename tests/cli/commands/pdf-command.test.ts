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
    expect(filesBelow(folder)).toEqual(["html", "json", "pdf"].map((kind) => `LT-640/C-2026-047.${kind}`));
    expect(readFileSync(join(folder, "LT-640/C-2026-047.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
  });
});

test("a browser that is none is told, and no file is left", () => {
  const folder = temporaryFolder();
  spanwright("report", "data-demo", "--tag", "LT-640", "--out", folder);
  const page = join(folder, "LT-640", "C-2026-047.html");
  const run = spanwright("pdf", page, "--browser", join(folder, "no-such-browser"));
  expect(run.exitCode).toBe(2);
  expect(run.complaints).toMatch(/the page was not printed: spawn .*no-such-browser ENOENT; accepted: a browser/u);
  expect(filesBelow(folder)).toEqual(["html", "json"].map((kind) => `LT-640/C-2026-047.${kind}`));
});

test("a file that is no record is told", () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "notes.html"), "<p>notes</p>");
  const run = spanwright("pdf", join(folder, "notes.html"), "--browser", "unused");
  expect(run).toMatchObject({ exitCode: 2, output: "" });
  expect(run.complaints).toMatch(/notes\.html: this is no record/u);
});
