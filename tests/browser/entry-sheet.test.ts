import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import axe from "axe-core";
import puppeteer, { type Browser, type BrowserContext, type Page } from "puppeteer-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { spanwright, written } from "../cli/built-command.ts";
import { howMany } from "../how-many.ts";
import { describeWithProgram } from "../outside/needs-program.ts";
import { smallestWorkbook } from "../workbook/smallest-workbook.ts";

/** A loop with a switched output and no readings yet. */
const workbook = {
  ...smallestWorkbook,
  "outputs.csv": "tag,output,set_point,set_point_tolerance\nLT-1,Q1,60,1\n",
  "readings.csv": "calibration,phase,direction,reference,signal\n",
};

/** What the hand types, out and back, and the same as somebody writes it into tables. */
const typed = ["4,01", "8,01", "12,01", "16,01", "20,01", "20,02", "16,02", "12,02", "8,02", "4,02"] as const;
const places = [0, 25, 50, 75, 100, 100, 75, 50, 25, 0] as const;
const byHand = {
  ...workbook,
  "readings.csv": [
    "calibration,phase,cycle,direction,point,reference,signal",
    ...typed.map((text, index) => {
      const at = places[index] ?? "";
      return `C-1,as_found,1,${index < 5 ? "rising" : "falling"},${at},${at},${text.replace(",", ".")}`;
    }),
    "",
  ].join("\n"),
  "trips.csv":
    "calibration,phase,output,direction,cycle,reference\nC-1,as_found,Q1,approach,1,60.2\nC-1,as_found,Q1,recede,1,61.0\n",
  "loop_checks.csv": "calibration,item,result\nC-1,restored,pass\n",
};

const engines = [
  ["chromium", { browser: "chrome", args: ["--no-sandbox", "--disable-gpu"] }],
  ["firefox-esr", { browser: "firefox", args: [] }],
] as const;

/** A whole calibration is typed at both in Chromium, at the first one in Firefox, and at both there with all cases. */
const widths = [
  { width: 390, height: 844 },
  { width: 1280, height: 900 },
] as const;

/** The sheet, and the record of the tables that somebody else wrote: the same for all browsers, whose profiles are new. */
const shared = mkdtempSync(join(tmpdir(), "spanwright-sheet-"));
let address: string;
let byHandRecord: SealedRecord;
beforeAll(() => {
  const book = written(join(shared, "book"), workbook);
  const made = ["sheet", book, "--tag", "LT-1", "--cycles", "1", "--out", join(shared, "sheets")];
  expect(spanwright(...made)).toMatchObject({ exitCode: 0, complaints: "" });
  address = pathToFileURL(join(shared, "sheets/LT-1_C-1_sheet.html")).href;
  byHandRecord = reported(written(join(shared, "hand"), byHand));
}, 60_000);
afterAll(() => rmSync(shared, { recursive: true, force: true }));

function reported(book: string): SealedRecord {
  const out = `${book}-records`;
  expect(spanwright("report", book, "--out", out)).toMatchObject({ exitCode: 0 });
  return JSON.parse(readFileSync(join(out, "LT-1/C-1.json"), "utf8")) as SealedRecord;
}

for (const [program, settings] of engines) {
  describeWithProgram(program, `an entry sheet in ${program}`, (executablePath) => {
    let folder: string;
    let browser: Browser | undefined;

    /** A browser that has kept nothing yet, in a folder of its own. */
    async function launchedAnew(): Promise<Browser> {
      await ended();
      folder = mkdtempSync(join(tmpdir(), "spanwright-sheet-"));
      for (const name of ["profile", "saved"]) mkdirSync(join(folder, name));
      written(join(folder, "book"), workbook);
      browser = await launched();
      return browser;
    }

    async function ended(): Promise<void> {
      if (browser === undefined) return;
      await browser.close().catch(() => undefined);
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
    }
    afterAll(ended);

    /** What keeps nothing of what was typed before, for tests that do not end the browser. */
    const newContext = async () => (browser ?? (await launchedAnew())).createBrowserContext();

    function launched(): Promise<Browser> {
      return puppeteer.launch({
        ...settings,
        args: [...settings.args],
        executablePath,
        headless: true,
        userDataDir: join(folder, "profile"),
        extraPrefsFirefox: {
          "browser.download.folderList": 2,
          "browser.download.dir": join(folder, "saved"),
          "browser.download.useDownloadDir": true,
          "browser.helperApps.neverAsk.saveToDisk": "application/zip",
        },
      });
    }

    async function opened(
      within: Browser | BrowserContext,
      viewport: (typeof widths)[number] = widths[0],
      messages: string[] = [],
    ): Promise<Page> {
      const page = await within.newPage();
      page.on("console", (message) => messages.push(message.text()));
      page.on("pageerror", (fault) => messages.push(String(fault)));
      await page.setViewport(viewport);
      await page.goto(address);
      await until(page, "document.querySelector('#as_found input') !== null");
      return page;
    }

    /** The signals as they stand in the fields. */
    const signals = (page: Page): Promise<string[]> =>
      page.$$eval("#as_found input[data-column=signal]", (fields) => fields.map(({ value }) => value));

    async function focusSignal(page: Page, index: number): Promise<void> {
      const fields = await page.$$("#as_found input[data-column=signal]");
      await fields[index]?.focus();
    }

    const stateLine = (page: Page): Promise<string> => page.$eval(".state-line", (line) => line.textContent ?? "");

    /** Everything that was typed is on the disk when the line says so. */
    const kept = (page: Page) => until(page, "document.querySelector('.keeping').textContent.startsWith('Kept')");

    async function press(page: Page, words: string, within = "form"): Promise<void> {
      const buttons = await page.$$(`${within} button, .state-line button`);
      for (const button of buttons) {
        if ((await button.evaluate(({ textContent }) => textContent?.trim())) !== words) continue;
        await button.evaluate((one) => one.click());
        return;
      }
      throw new RangeError(`press: no button says ${words}`);
    }

    test.each(widths.filter((_, place) => howMany(place, 0) === 0 || program === "chromium"))(
      "a whole calibration is typed at $width px: killed, opened again, handed back, collected, reported",
      async (viewport) => {
        const messages: string[] = [];
        const first = await launchedAnew();
        let page = await opened(first, viewport, messages);
        await focusSignal(page, 0);
        for (const text of typed.slice(0, 4)) {
          await page.keyboard.type(text);
          await page.keyboard.press("Enter");
        }
        expect(await stateLine(page)).toMatch(/As found: 4 of 10, in tolerance so far.*not restored/u);
        await page.reload();
        await until(page, "document.querySelector('#as_found input') !== null");
        expect((await signals(page)).slice(0, 5)).toEqual([...typed.slice(0, 4), ""]);

        // Half a number, and the browser is gone.
        await focusSignal(page, 4);
        await page.keyboard.type("20,0");
        await kept(page);
        first.process()?.kill("SIGKILL");
        await new Promise((resolve) => setTimeout(resolve, 500));
        browser = await launched();
        page = await opened(browser, viewport, messages);
        expect((await signals(page)).slice(0, 5)).toEqual([...typed.slice(0, 4), "20,0"]);
        await focusSignal(page, 4);
        await page.keyboard.press("End");
        await page.keyboard.type("1");
        await page.keyboard.press("Enter");
        for (const text of typed.slice(5, 7)) {
          await page.keyboard.type(text);
          await page.keyboard.press("Enter");
        }

        // The rest comes from a spreadsheet, after a slip that is taken back.
        await page.keyboard.type("99");
        await page.keyboard.press("Tab");
        await press(page, "Take back");
        expect((await signals(page))[7]).toBe("");
        await focusSignal(page, 7);
        await page.evaluate((text) => {
          const data = new DataTransfer();
          data.setData("text/plain", text);
          // Firefox takes the text of an event made by a script from names of its own.
          const own = { dataType: "text/plain", data: text };
          const pasted = new ClipboardEvent("paste", { ...own, clipboardData: data, bubbles: true, cancelable: true });
          document.activeElement?.dispatchEvent(pasted);
        }, typed.slice(7).join("\n"));
        expect(await signals(page)).toEqual([...typed]);

        // The switched output, and the loop handed back.
        for (const [at, words] of [
          ["60,2", "Switched on approach"],
          ["61,0", "Switched on recede"],
        ] as const) {
          await page.$eval("[data-output='as_found/Q1']", (field) => (field as HTMLInputElement).select());
          await page.focus("[data-output='as_found/Q1']");
          await page.keyboard.type(at);
          await press(page, words);
        }
        const restored = await page.$$(".check");
        for (const one of restored) {
          if ((await one.$eval("legend", ({ textContent }) => textContent)) === "restored") {
            await one.$eval(".answer", (button) => (button as HTMLButtonElement).click());
          }
        }
        await until(page, "document.querySelector('.state-line').textContent.includes('10 of 10, pass')");
        expect(await stateLine(page)).not.toContain("not restored");

        // What the page says stands in the record that the command makes of what it hands back.
        const package_ = await saved(page);
        expect(spanwright("collect", package_, "--into", join(folder, "book"))).toMatchObject({
          exitCode: 0,
          output: expect.stringContaining("13 rows taken in, 0 filled up, 1 there already"),
        });
        const checked = spanwright("check", join(folder, "book"));
        expect([checked.exitCode, checked.complaints.match(/^wrong/mu)]).toEqual([0, null]);
        const record = reported(join(folder, "book"));
        expect(numbersOf(record)).toEqual(numbersOf(byHandRecord));
        expect(record.inputs.rows.readings[0]?.cells.typed_in).toMatch(/^S-[0-9a-f]{8}-[0-9a-f]{4}$/u);
        expect(messages).toEqual([]);
      },
    );

    async function saved(page: Page): Promise<string> {
      if (program === "chromium") {
        const session = await page.createCDPSession();
        await session.send("Browser.setDownloadBehavior", {
          behavior: "allow",
          downloadPath: join(folder, "saved"),
        });
      }
      await press(page, "Download all tables");
      for (let waited = 0; waited < 100; waited += 1) {
        const name = readdirSync(join(folder, "saved")).find((one) => one.endsWith(".zip"));
        if (name !== undefined && readFileSync(join(folder, "saved", name)).length > 0)
          return join(folder, "saved", name);
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
      throw new Error("no package was saved within ten seconds");
    }

    test("a second page of the same sheet is told in both, and the one that writes keeps everything", async () => {
      const context = await newContext();
      const first = await opened(context);
      await focusSignal(first, 0);
      await first.keyboard.type("4,01");
      await kept(first);
      const second = await opened(context);
      expect((await signals(second))[0]).toBe("4,01");
      const says = (page: Page, words: string) =>
        until(page, `document.querySelector('.keeping').textContent.includes('${words}')`);
      await first.bringToFront();
      await says(first, "Nothing typed here is kept");
      await second.bringToFront();
      await says(second, "open in another tab or window too");
      // The one that goes on has what the other kept, and not what was typed over it.
      await focusSignal(second, 1);
      await second.keyboard.type("8,01");
      await kept(second);
      await first.bringToFront();
      await press(first, "Go on here with what is kept");
      await kept(first);
      expect((await signals(first)).slice(0, 2)).toEqual(["4,01", "8,01"]);
      await context.close();
    });

    test("nothing that axe finds, nothing beyond the edge, and no message, at 390 and at 1280 px", async () => {
      const context = await newContext();
      for (const viewport of widths) {
        const messages: string[] = [];
        const page = await opened(context, viewport, messages);
        await focusSignal(page, 0);
        await page.keyboard.type("4,5");
        await page.keyboard.press("Enter");
        // What is told from here on is about axe itself.
        const told = [...messages];
        await page.evaluate(axe.source);
        const found = (await page.evaluate("axe.run({ resultTypes: ['violations'] })")) as axe.AxeResults;
        expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
        expect(await page.evaluate("document.documentElement.scrollWidth <= innerWidth")).toBe(true);
        expect(told).toEqual([]);
        await page.close();
      }
      await context.close();
    });
  });
}

/** Waits in here and not in the page, where the driver would need what the policy of the sheet forbids. */
async function until(page: Page, isSo: string): Promise<void> {
  for (let waited = 0; waited < 300; waited += 1) {
    if (await page.evaluate(isSo)) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`not so within fifteen seconds: ${isSo}`);
}

/** Every number and word that was reckoned; names and lines of files are not those of the hand. */
function numbersOf({ phases, switching, overall, recommendation, loopChecks }: SealedRecord) {
  const words = JSON.stringify({ phases, switching, overall, recommendation, loopChecks: loopChecks?.incomplete });
  return JSON.parse(words, (key, value) => (key === "row" || key === "line" ? undefined : value));
}
