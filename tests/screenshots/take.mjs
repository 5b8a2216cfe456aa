/**
 * Takes the pictures of this folder anew, and docs/record.png, after `npm run demo`. They are looked at, not compared.
 *
 *   node tests/screenshots/take.mjs
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

const here = fileURLToPath(new URL(".", import.meta.url));
const page = pathToFileURL(join(here, "../../reports/LT-310/C-2026-015.html")).href;
const index = pathToFileURL(join(here, "../../reports/index.html")).href;
const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox", "--disable-gpu"] });

const onScreen = [
  { name: "screen-1280.png", address: page, width: 1280, height: 1440 },
  { name: "night-1280.png", address: page, width: 1280, height: 900, colorScheme: "dark" },
  { name: "telephone-390.png", address: page, width: 390, height: 1400 },
  { name: "telephone-390-contents.png", address: `${page}#annex-c`, width: 390, height: 900 },
  { name: "index-1280.png", address: index, width: 1280, height: 900 },
];
for (const { name, address, width, height, colorScheme = "light" } of onScreen) {
  const opened = await browser.newPage({ viewport: { width, height }, colorScheme });
  await opened.goto(address);
  await opened.screenshot({ path: join(here, name) });
  await opened.close();
}

const folder = mkdtempSync(join(tmpdir(), "spanwright-screenshots-"));

// An entry sheet on a telephone, with the first readings of a run typed.
const command = join(here, "../../dist/cli.js");
const demo = join(here, "../../data-demo");
const asked = ["--tag", "LT-310", "--calibration", "LT-310-EXAMPLE", "--cycles", "1", "--out", folder];
execFileSync(process.execPath, [command, "sheet", demo, ...asked]);
const sheetPage = await browser.newPage({ viewport: { width: 390, height: 860 }, deviceScaleFactor: 2 });
await sheetPage.goto(pathToFileURL(join(folder, "LT-310_LT-310-EXAMPLE_sheet.html")).href);
await sheetPage.locator("#as_found input[data-column=signal]").first().focus();
for (const text of ["4,012", "8,020", "12,031", "16,052", "20,01"]) {
  await sheetPage.keyboard.type(text);
  if (text !== "20,01") await sheetPage.keyboard.press("Enter");
}
await sheetPage.waitForTimeout(1500);
await sheetPage.locator("#as_found").evaluate((section) => section.scrollIntoView());
await sheetPage.screenshot({ path: join(here, "../../docs/entry-sheet.png") });
await sheetPage.close();

const opened = await browser.newPage();
await opened.goto(page);
writeFileSync(join(folder, "page.pdf"), await opened.pdf({ format: "A4", printBackground: true }));
await browser.close();
const sheet = (first, out, ...options) =>
  execFileSync("pdftoppm", [
    ...["-png", "-r", "90", "-f", String(first), "-l", String(first), "-singlefile", ...options],
    ...[join(folder, "page.pdf"), out],
  ]);
sheet(1, join(here, "printed-certificate-grey"), "-gray");
sheet(2, join(here, "printed-annex-a"));
sheet(1, join(here, "../../docs/record"));
rmSync(folder, { recursive: true });
