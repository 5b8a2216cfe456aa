import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { rateChart } from "../../src/charts/rate-chart.ts";
import type { RegisterRow } from "../../src/record/register-form.ts";
import { renderRegister } from "../../src/report/register-page.tsx";
import { howMany } from "../how-many.ts";
import { describeWithProgram } from "../outside/needs-program.ts";
import { register, registerRow } from "../report/sample-register.ts";
import { axeFindings, opened as openedPage } from "./browser.ts";
import { elementsBeyond } from "./in-page.mjs";

const worst = (errorPercentSpan: number) => ({ errorPercentSpan, errorDistance: 10 * errorPercentSpan });
const due = (state: RegisterRow["due"]["state"], on: string | null, days: number | null) => ({
  due: { state, on, days, why: on === null ? "no interval is stated" : null },
});

/** Five loops whose order is another one in every column; what is not known of one comes last. */
const rows: readonly RegisterRow[] = [
  registerRow({
    ...{ tag: "LT-2", description: "silo, distance to the surface", location: "yard", performedOn: "2026-01-05" },
    ...{ worstAsFound: worst(-3), asLeft: "pass", worstAsLeft: worst(0.4), drift: { percentSpanPerYear: 0.2 } },
    ...due("overdue", "2026-11-01", -24),
  }),
  registerRow({
    ...{ tag: "LT-10", description: "bin, level", location: "roof", performedOn: "2025-03-01" },
    ...{ worstAsFound: worst(0.15), drift: { percentSpanPerYear: -0.5 } },
    ...due("not due", "2027-03-01", 96),
  }),
  registerRow({
    ...{ tag: "ZT-1", description: "carriage", location: null, performedOn: null },
    ...{ worstAsFound: worst(1), asLeft: "pass", worstAsLeft: worst(0.9), drift: { notDetermined: "one record only" } },
    ...due("no date", null, null),
  }),
  registerRow({
    ...{ tag: "ZT-3", description: null, performedOn: "2024-06-01", asFound: null, worstAsFound: null },
    ...{ drift: { percentSpanPerYear: 0.05 }, criticality: "safety" },
    ...due("not in tolerance", null, null),
  }),
  registerRow({
    ...{ tag: "ZT-4", description: "gate, opening", location: "bagging floor", performedOn: "2026-06-01" },
    ...{ worstAsFound: worst(0.5), asLeft: "pass", worstAsLeft: worst(-0.1), drift: { percentSpanPerYear: 0.1 } },
    ...due("due soon", "2026-12-01", 6),
  }),
];
const allTags = rows.map(({ tag }) => tag);

/** Upwards by each column: those with a value, then those without. */
const orders = [
  { column: "Tag", known: ["LT-2", "LT-10", "ZT-1", "ZT-3", "ZT-4"], unknown: [] },
  { column: "What and where", known: ["LT-10", "ZT-1", "ZT-4", "LT-2"], unknown: ["ZT-3"] },
  { column: "Calibrated", known: ["ZT-3", "LT-10", "LT-2", "ZT-4"], unknown: ["ZT-1"] },
  { column: "As found", known: ["LT-10", "ZT-4", "ZT-1", "LT-2"], unknown: ["ZT-3"] },
  { column: "As left", known: ["ZT-4", "LT-2", "ZT-1"], unknown: ["LT-10", "ZT-3"] },
  { column: "Drift, % of span a year", known: ["LT-10", "ZT-3", "ZT-4", "LT-2"], unknown: ["ZT-1"] },
  { column: "State", known: ["LT-2", "ZT-3", "ZT-4", "LT-10", "ZT-1"], unknown: [] },
  { column: "Next due", known: ["LT-2", "ZT-4", "LT-10"], unknown: ["ZT-1", "ZT-3"] },
];

describeWithProgram("chromium", "a register on a screen", (chromium) => {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-register-"));
  const path = join(folder, "register.html");
  const address = pathToFileURL(path).href;
  beforeAll(async () => {
    const years = [{ year: 2026, inTolerance: 3, of: 5, interval: { low: 0.1466, high: 0.9473 } }];
    writeFileSync(path, renderRegister({ ...register, rows, years }, await rateChart(years)).page);
  });
  afterAll(() => rmSync(folder, { recursive: true }));
  const open = (page: string, how?: BrowserContextOptions) => openedPage(chromium, page, how);

  /** Opens the page from the disk with the network off, under its own policy, and keeps what it complains of. */
  const opened = (options: BrowserContextOptions = {}) => open(address, options);

  const shownTags = (page: Page) => page.locator("#register tbody tr:visible th a").allTextContents();

  test("its table has the columns that are sorted here, and no others", async () => {
    const view = await opened();
    expect(await view.page.locator("#register thead th").allTextContents()).toEqual(orders.map(({ column }) => column));
  });

  test.each(orders)("it is sorted by $column, up and down; what is not known comes last", async (one) => {
    const view = await opened();
    const { page, messages } = view;
    const heading = page.locator("#register thead th", {
      has: page.getByRole("button", { name: one.column, exact: true }),
    });
    await heading.getByRole("button").click();
    expect(await shownTags(page)).toEqual([...one.known, ...one.unknown]);
    expect(await heading.getAttribute("aria-sort")).toBe("ascending");
    await heading.getByRole("button").click();
    expect(await shownTags(page)).toEqual([...one.known.toReversed(), ...one.unknown]);
    expect(await heading.getAttribute("aria-sort")).toBe("descending");
    expect(await page.locator("#register [aria-sort]").count()).toBe(1);
    expect(messages).toEqual([]);
  });

  test.each([
    ["yard", ["LT-2"]],
    ["OPENING gate", ["ZT-4"]],
    ["zt", ["ZT-1", "ZT-3", "ZT-4"]],
    ["safety", ["ZT-3"]],
    ["2025-03-01", ["LT-10"]],
    ["nowhere", []],
    ["  ", allTags],
  ])("a search for %j shows the rows that have every word of it", async (words, tags) => {
    const view = await opened();
    await view.page.getByLabel("Search").fill(words);
    expect(await shownTags(view.page)).toEqual(tags);
    expect(await view.page.locator("#shown").textContent()).toBe(`${tags.length} of 5 shown`);
  });

  test("the loops of one state are shown, with a search among them, and all again", async () => {
    const view = await opened();
    const { page, messages } = view;
    for (const { tag, due } of rows) {
      await page.getByLabel("State").selectOption(due.state);
      expect(await shownTags(page)).toEqual([tag]);
    }
    await page.getByLabel("Search").fill("silo");
    expect(await shownTags(page)).toEqual([]);
    await page.getByLabel("State").selectOption("all");
    expect(await shownTags(page)).toEqual(["LT-2"]);
    await page.getByLabel("Search").fill("");
    expect(await shownTags(page)).toEqual(allTags);
    expect(messages).toEqual([]);
  });

  test("what is shown stays shown when it is sorted", async () => {
    const view = await opened();
    await view.page.getByLabel("Search").fill("zt");
    await view.page.getByRole("button", { name: "Calibrated" }).click();
    expect(await shownTags(view.page)).toEqual(["ZT-3", "ZT-4", "ZT-1"]);
  });

  test("without its script it shows every row, and nothing to search or sort with", async () => {
    const view = await opened({ javaScriptEnabled: false });
    expect(await shownTags(view.page)).toEqual(allTags);
    expect(await view.page.locator("button, input, select, output").filter({ visible: true }).count()).toBe(0);
  });

  test("its policy stops a program that somebody would slip into it", async () => {
    const slipped = join(folder, "slipped.html");
    const html = renderRegister({ ...register, rows }, undefined).page;
    writeFileSync(slipped, html.replace("<main>", '<main><script>document.title="ran"</script>'));
    const view = await open(pathToFileURL(slipped).href);
    expect(await view.page.title()).toBe("Register of calibrations, 2026-11-25");
    expect(await view.page.getByLabel("Search").isVisible()).toBe(true);
    expect(view.messages.filter((message) => message.includes("Content Security Policy"))).toHaveLength(1);
  });

  test("it fits a telephone 390 pixels wide; only the table of loops scrolls, in its own place", async () => {
    const view = await opened({ viewport: { width: 390, height: 844 } });
    const { scrollWidth, beyond } = await view.page.evaluate(elementsBeyond);
    expect(beyond).toEqual([]);
    expect(scrollWidth).toBeLessThanOrEqual(390);
  });

  test.each([1280, 390])("axe finds nothing in it, %d pixels wide", async (width) => {
    const view = await opened({ bypassCSP: true, viewport: { width, height: 900 } });
    expect(await axeFindings(view.page)).toEqual([]);
  });

  describe("of 1201 loops", () => {
    const many = Array.from({ length: 1201 }, (_, index) => {
      const tag = `LT-${String(index).padStart(4, "0")}`;
      const state = due(index === 1200 ? "overdue" : "not due", "2027-01-01", 1201 - index);
      return registerRow({ tag, description: index % 400 === 7 ? "pit & <gate>" : "silo", ...state });
    });
    const large = pathToFileURL(join(folder, "large.html")).href;
    beforeAll(() => {
      const { page, parts } = renderRegister({ ...register, rows: many }, undefined, "large");
      mkdirSync(join(folder, "large-parts"));
      writeFileSync(join(folder, "large.html"), page);
      for (const { path: part, render } of parts) writeFileSync(join(folder, part), render());
    });

    /** What axe looks at: the rows behind the twentieth are as those before them. */
    const someRows = howMany(0, 1) === 1 ? "document" : '{ exclude: [["tbody tr:nth-child(n + 21)"]] }';

    async function openedLarge(options: BrowserContextOptions = {}) {
      const view = await open(large, options);
      if (options.javaScriptEnabled !== false) await view.page.locator("#find").waitFor({ state: "visible" });
      return view;
    }

    test("200 rows are drawn at a time, and turned over", async () => {
      const view = await openedLarge();
      const { page, messages } = view;
      const shown = page.locator("#shown");
      expect(await page.locator("#register tbody tr").count()).toBe(200);
      expect(await shown.textContent()).toBe("1 to 200 of 1201 shown");
      expect(await page.getByRole("button", { name: "rows before" }).isDisabled()).toBe(true);
      for (let turn = 0; turn < 6; turn += 1) await page.getByRole("button", { name: "further rows" }).click();
      expect(await shownTags(page)).toEqual(["LT-1200"]);
      expect(await shown.textContent()).toBe("1201 to 1201 of 1201 shown");
      expect(await page.getByRole("button", { name: "further rows" }).isDisabled()).toBe(true);
      await page.getByRole("button", { name: "rows before" }).click();
      expect((await shownTags(page))[0]).toBe("LT-1000");
      expect(messages).toEqual([]);
    });

    test("search, state and order go through all of them", async () => {
      const view = await openedLarge();
      const { page } = view;
      await page.getByLabel("Search").fill("<gate> pit &");
      expect(await shownTags(page)).toEqual(["LT-0007", "LT-0407", "LT-0807"]);
      expect(await page.locator("#shown").textContent()).toBe("1 to 3 of 3 found among 1201");
      await page.getByLabel("Search").fill("");
      await page.getByLabel("State").selectOption("overdue");
      expect(await shownTags(page)).toEqual(["LT-1200"]);
      await page.getByLabel("State").selectOption("all");
      await page.getByRole("button", { name: "Tag", exact: true }).click();
      await page.getByRole("button", { name: "Tag", exact: true }).click();
      expect((await shownTags(page)).slice(0, 2)).toEqual(["LT-1200", "LT-1199"]);
      await page.getByLabel("Search").fill("nowhere");
      expect(await page.locator("#shown").textContent()).toBe("none of 0 found among 1201");
    });

    test("without scripts the first rows stand there, and every part is named", async () => {
      const view = await openedLarge({ javaScriptEnabled: false });
      expect(await shownTags(view.page)).toHaveLength(200);
      for (const summary of await view.page.locator(".in-parts summary").all()) await summary.click();
      const links = view.page.locator(".in-parts a").filter({ visible: true });
      expect(await links.allTextContents()).toEqual([
        "2027-01-01 to 2027-01-01",
        "LT-0000 to LT-0499",
        "LT-0500 to LT-0999",
        "LT-1000 to LT-1200",
      ]);
    });

    test("paper has the rows that are shown, says what was sought, and where the others are", async () => {
      const view = await openedLarge();
      const { page } = view;
      await page.getByLabel("Search").fill("gate");
      await page.emulateMedia({ media: "print" });
      expect(await shownTags(page)).toEqual(["LT-0007", "LT-0407", "LT-0807"]);
      expect(await page.locator("#shown").isVisible()).toBe(true);
      const sought = await page.locator("#shown").evaluate((output) => getComputedStyle(output, "::after").content);
      expect(sought).toBe('": gate"');
      expect(await page.locator(".find :is(input, select, button)").filter({ visible: true }).count()).toBe(0);
      expect(await page.locator(".in-parts summary").last().textContent()).toBe(
        "200 of 1201 rows stand below at a time; all of them, to read without scripts and to print, in 3 parts, large-parts/loops-001.html and so on",
      );
    });

    test.each([1280, 390])(
      "a part reads without scripts, leads back, and axe finds nothing in it, %d wide",
      async (width) => {
        const view = await openedLarge({ javaScriptEnabled: false, viewport: { width, height: 900 } });
        await view.page.locator(".in-parts summary").last().click();
        await view.page.getByRole("link", { name: "LT-1000 to LT-1200" }).click();
        expect(await view.page.locator(".register tbody tr").count()).toBe(201);
        expect((await view.page.evaluate(elementsBeyond)).beyond).toEqual([]);
        const part = view.page.url();
        await view.page.getByRole("link", { name: "large.html" }).click();
        expect(view.page.url()).toBe(large);

        const other = await open(part, { bypassCSP: true, viewport: { width, height: 900 } });
        expect(await axeFindings(other.page, someRows)).toEqual([]);
      },
    );

    test("axe finds nothing in it", async () => {
      const view = await openedLarge({ bypassCSP: true });
      expect(await axeFindings(view.page, someRows)).toEqual([]);
    });
  });
});
