import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import axe from "axe-core";
import type { BrowserContextOptions } from "playwright-core";
import { afterAll, expect, test } from "vitest";
import { describeWithProgram } from "../outside/needs-program.ts";
import { demoRecords } from "../report/demo-records.ts";
import { drawnPage } from "../report/drawn-page.ts";
import { axeFindings, opened as openedPage } from "./browser.ts";
import { demoPages, onDisk } from "./demo-pages.ts";
import { elementsBeyond, scrollingPlaces, seenText, verdictColours } from "./in-page.mjs";

/** Contrast that normal text needs: WCAG 2.2, success criterion 1.4.3 (AA). */
const leastContrast = 4.5;

describeWithProgram("chromium", "a page on a screen", (chromium) => {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-screen-"));
  afterAll(() => rmSync(folder, { recursive: true }));
  const opened = (address: string, how?: BrowserContextOptions) => openedPage(chromium, address, how);

  test.each(demoPages)("$label shows the same with and without scripts, without a network", async (demo) => {
    const address = onDisk(folder, demo);
    const [with_, without] = [await opened(address), await opened(address, { javaScriptEnabled: false })];
    const text = await without.page.evaluate(seenText);
    expect(text).toContain(demo.record.calibration.calibration);
    expect(text).toMatch(/Sign-off.*End of record/su);
    expect(await with_.page.evaluate(seenText)).toBe(text);
    for (const { requests, messages } of [with_, without]) {
      expect(requests.filter((url) => url !== address && !url.startsWith("data:font/woff2"))).toEqual([]);
      expect(messages).toEqual([]);
    }
  });

  test.each(demoPages)("$label is set in the font that it brings", async (demo) => {
    const { page } = await opened(onDisk(folder, demo));
    const loaded = await page.evaluate("[...document.fonts].map(({weight, status}) => weight + ' ' + status).sort()");
    expect([...new Set(loaded as string[])]).toEqual(["400 loaded", "600 loaded"]);
  });

  test.each(demoPages)(
    "its policy stops a program and a picture that somebody would slip into $label",
    async (demo) => {
      const slipped = demo.html.replace(
        "<main>",
        '<main><script>document.title="ran"</script><img src="https://example.org/x">',
      );
      const { page, messages } = await opened(onDisk(folder, { ...demo, html: slipped }));
      expect(await page.title()).not.toBe("ran");
      expect(messages.filter((message) => message.includes("Content Security Policy"))).toHaveLength(2);
    },
  );

  test.each(demoPages)(
    "$label fits a telephone 390 pixels wide; only tables scroll, each in its own place",
    async (demo) => {
      const { page } = await opened(onDisk(folder, demo), { viewport: { width: 390, height: 844 } });
      const { scrollWidth, beyond } = await page.evaluate(elementsBeyond);
      expect(beyond).toEqual([]);
      expect(scrollWidth).toBeLessThanOrEqual(390);
    },
  );

  test.each(demoPages)(
    "axe finds nothing in $label, at 1280, 390 and 320 pixels, folded and unfolded, by night",
    async (demo) => {
      const address = onDisk(folder, demo);
      for (const [width, colorScheme] of [
        [1280, "light"],
        [390, "light"],
        [320, "dark"],
      ] as const) {
        const { page } = await opened(address, {
          bypassCSP: true,
          colorScheme,
          viewport: { width, height: 900 },
        });
        await page.evaluate(unfold);
        expect(await axeFindings(page), String(width)).toEqual([]);
      }
    },
  );

  test.each(demoPages)(
    "in $label a place that scrolls sideways says so, and the keyboard stops only there",
    async (demo) => {
      for (const width of [1280, 800, 390]) {
        const { page } = await opened(onDisk(folder, demo), { viewport: { width, height: 900 } });
        await page.evaluate(unfold);
        const places = await page.evaluate(scrollingPlaces);
        expect(places.length).toBeGreaterThan(5);
        for (const { name, scrolls, says } of places) expect(says, `${name} at ${width}`).toBe(scrolls);
        if (width === 1280)
          expect(
            places.filter(({ name, scrolls }) => scrolls && !/working|As found$|As left$|^Wider/u.test(name)),
            "only the working",
          ).toEqual([]);
      }
    },
  );

  test("on a telephone an annex is folded until somebody asks for it, by its box or from the contents", async () => {
    const [demo = never()] = demoPages;
    const { page } = await opened(onDisk(folder, demo), { viewport: { width: 390, height: 844 } });
    const body = page.locator("#annex-a .annex-body");
    expect(await body.isVisible()).toBe(false);
    await page.locator("#annex-a .fold input").check();
    expect(await body.isVisible()).toBe(true);
    await page.locator('.contents a[href="#annex-c"]').click();
    expect(await page.locator("#annex-c .annex-body").isVisible()).toBe(true);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("#annex-e .annex-body").isVisible()).toBe(true);
  });

  test("the first stop of the keyboard leads past the contents to the result, and the contents stand beside the sheet", async () => {
    const [demo = never()] = demoPages;
    const { page } = await opened(onDisk(folder, demo));
    await page.keyboard.press("Tab");
    expect(await page.evaluate("document.activeElement.getAttribute('href')")).toBe("#answer-title");
    const [contents, sheet] = [
      await page.locator(".contents").boundingBox(),
      await page.locator("#sheet-1").boundingBox(),
    ];
    expect((contents?.x ?? 0) + (contents?.width ?? 0)).toBeLessThanOrEqual(sheet?.x ?? 0);
    // The picture fills its place, so that its letters can be read.
    const picture = await page.locator("#sheet-1 .wide-only svg").boundingBox();
    expect((picture?.height ?? 0) / (picture?.width ?? 1)).toBeGreaterThan(0.38);
    // The certificate is the first screen and three quarters at most, of a loop with two stages and two phases.
    expect(sheet?.height).toBeLessThan(1.75 * 900);
  });

  test("every part and every table of every demo page has a name of its own, the folded ones too", async () => {
    const { page } = await opened("about:blank", { bypassCSP: true });
    const names = new Set<string>();
    for (const record of demoRecords) {
      await page.setContent(await drawnPage(record));
      await page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })");
      await page.evaluate(axe.source);
      const found = await page.evaluate('axe.run(document, { runOnly: ["landmark-unique"] })');
      const { violations, passes } = found as axe.AxeResults;
      expect(violations.flatMap(({ nodes }) => nodes.map(({ html }) => html.slice(0, 120)))).toEqual([]);
      for (const { nodes } of passes) for (const { html } of nodes) names.add(html);
    }
    expect(names.size).toBeGreaterThan(10);
  });

  test.each(demoPages)("in grey the verdicts of $label are words that can be read", async (demo) => {
    const { page } = await opened(onDisk(folder, demo));
    const verdicts = await page.evaluate(verdictColours);
    const words = verdicts.map(({ text }) => text).filter((text) => text !== "");
    expect(words.length).toBeGreaterThan(demo.record.phases.asFound?.counted.used ?? 0);
    for (const word of words) expect(word).toMatch(/^(?:Pass|Fail|Conditional|Not determined|pass|fail|left out)/u);
    for (const { text, colour, background } of verdicts) {
      expect(contrastInGrey(colour, background), text).toBeGreaterThanOrEqual(leastContrast);
    }
  });
});

/** As somebody who has asked for every annex sees it. */
const unfold =
  "document.querySelectorAll('.fold input').forEach((one) => { one.checked = true; });" +
  "document.querySelectorAll('details').forEach((one) => { one.open = true; })";

function never(): never {
  throw new RangeError("there is no demo page");
}

/** Contrast ratio of two colours after a grey filter, which keeps luminance (WCAG 2.2, relative luminance). */
function contrastInGrey(one: string, other: string): number {
  const [lighter = 0, darker = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (lighter + 0.05) / (darker + 0.05);
}

function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = (colour.match(/[\d.]+/gu) ?? []).map((part) => Number(part) / 255);
  // Filter Effects Module Level 1, grayscale(1): weights on the encoded values, one value for all three.
  const grey = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  return grey <= 0.04045 ? grey / 12.92 : ((grey + 0.055) / 1.055) ** 2.4;
}
