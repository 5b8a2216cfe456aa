import { expect, test } from "vitest";
import advances from "../../../src/charts/drawing/inter-advances.json" with { type: "json" };
import { textWidth } from "../../../src/charts/drawing/text-width.ts";
import { fontFaces } from "../../../src/report/style/font-faces.ts";
import { opened } from "../../browser/browser.ts";
import { describeWithProgram } from "../../outside/needs-program.ts";

const pick = (character: string, weight: "regular" | "semibold") =>
  (advances[weight][Array.from(advances.characters).indexOf(character)] ?? Number.NaN) / advances.unitsPerEm;

// Exact but for one rounding of each sum: 1e-12 absolute.
test("a text is as wide as its characters, times its size", () => {
  const expected = 13 * (pick("1", "regular") + pick("2", "regular") + pick("m", "regular"));
  expect(Math.abs(textWidth({ fontSize: 13 }, "12m") - expected)).toBeLessThan(1e-12);
  expect(Math.abs(textWidth({ fontSize: 13, fontWeight: 600 }, "m") - 13 * pick("m", "semibold"))).toBeLessThan(1e-12);
});

test("bold and 600 are the same weight, 400 and normal are not", () => {
  const widths = ["bold", 600, "600", "normal", 400].map((fontWeight) =>
    textWidth({ fontSize: 10, fontWeight }, "mean"),
  );
  expect(new Set(widths.slice(0, 3)).size).toBe(1);
  expect(new Set(widths.slice(3)).size).toBe(1);
  expect(widths[0]).not.toBe(widths[4]);
});

test("size 11 is taken where none is given, as vega does", () => {
  expect(textWidth({}, "span")).toBe(textWidth({ fontSize: 11 }, "span"));
});

test("a width never passes the limit, and a limit of nought is none", () => {
  expect(textWidth({ fontSize: 13, limit: 20 }, "a long title")).toBe(20);
  expect(textWidth({ fontSize: 13, limit: 0 }, "a long title")).toBeGreaterThan(20);
});

test("nothing is as wide as nothing, and an unknown character is not", () => {
  expect(textWidth({ fontSize: 13 }, undefined)).toBe(0);
  expect(textWidth({ fontSize: 10 }, "漢")).toBe(6);
});

test("every character that a chart prints is in the table", () => {
  expect(Array.from("−+±·×√≤≥≈°µΩΔ…–—→′″%0123456789.,").filter((c) => !advances.characters.includes(c))).toEqual([]);
});

const samples = [
  "reference distance, mm",
  "error, % of span",
  "mean error, % of span",
  "−0.050",
  "+0.25",
  "1111111",
  "1200.0 mm",
  "0.22 % at 900.0 mm",
  "as found",
  "sensor and input card",
  "±0.5 °C · 12 µA × 3 – “AVATAR” Träger",
];

describeWithProgram("chromium", "text width against the font as a browser sets it", (executablePath) => {
  test("the table is within one percent of the real width, for the embedded font has no kerning", async () => {
    const { page } = await opened(executablePath, "about:blank");
    const style = fontFaces(samples.join(""));
    await page.setContent(`<style>${style}</style><svg xmlns="http://www.w3.org/2000/svg"/>`);
    for (const weight of [400, 600]) {
      const measured = await page.evaluate(measureTexts, { samples, weight });
      const ratios = samples.map(
        (text, index) => textWidth({ fontSize: 13, fontWeight: weight }, text) / (measured[index] ?? 0),
      );
      expect(Math.max(...ratios)).toBeLessThan(1.01);
      expect(Math.min(...ratios)).toBeGreaterThan(0.99);
    }
  });
});

/** Runs in the browser: fails where the font did not load, because a fallback font would be measured instead. */
async function measureTexts({ samples: texts, weight }: { samples: string[]; weight: number }): Promise<number[]> {
  const { document } = globalThis as unknown as { document: BrowserDocument };
  const loaded = await document.fonts.load(`${weight} 13px Inter`);
  if (loaded.length === 0) throw new Error("the font did not load");
  return texts.map((text) => {
    const element = document.createElementNS("http://www.w3.org/2000/svg", "text");
    element.setAttribute("font-family", "Inter");
    element.setAttribute("font-size", "13px");
    element.setAttribute("font-weight", String(weight));
    element.textContent = text;
    document.querySelector("svg").append(element);
    return element.getComputedTextLength();
  });
}

type BrowserText = {
  setAttribute(name: string, value: string): void;
  textContent: string;
  getComputedTextLength(): number;
};
type BrowserDocument = {
  fonts: { load(font: string): Promise<unknown[]> };
  createElementNS(namespace: string, name: string): BrowserText;
  querySelector(selector: string): { append(element: BrowserText): void };
};
