import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build, type Plugin } from "esbuild";
import { expect, test } from "vitest";
import { bundleSettings } from "../../bundle-settings.mjs";
import { fontFaces } from "../../src/report/style/font-faces.ts";
import { opened } from "../browser/browser.ts";
import { howMany } from "../how-many.ts";
import { describeWithProgram } from "../outside/needs-program.ts";
import { awkwardCharts, awkwardNames } from "./all-charts.ts";

/** All of them, drawn once. */
const charts = await awkwardCharts();
/** Every fourth has each kind of chart among it: time zone and language are the same for all of a kind. */
const drawnTwice = awkwardNames(howMany(4, 1));
const digestOf = () => {
  const some = [...charts].filter(([name]) => drawnTwice.some((sample) => name.startsWith(`${sample}, `)));
  expect(new Set(some.map(([name]) => name.replace(/^.*, (\w+)(?: .*)?$/u, "$1"))).size).toBe(7);
  return createHash("sha256").update(JSON.stringify(some)).digest("hex");
};

test("no chart prints a number that is none, or an inline style that a strict page would refuse", () => {
  for (const [name, svg] of charts) {
    expect(svg, name).not.toMatch(/NaN|Infinity|undefined|null|\[object/u);
    expect(svg, name).not.toMatch(/ style=|<style|<script|href=/u);
  }
});

/** Draws all charts in a process of another time zone and language; whether vega-lite was in it, and the digest. */
async function drawnElsewhere(plugins: readonly Plugin[]): Promise<{ hasVegaLite: boolean; digest: string }> {
  const folder = mkdtempSync(join(tmpdir(), "charts-"));
  try {
    const outfile = join(folder, "draw.mjs");
    const { metafile } = await build({
      ...bundleSettings,
      plugins: [...plugins],
      stdin: {
        contents:
          'import { createHash } from "node:crypto"; import { awkwardCharts } from "./all-charts.ts";' +
          `process.stdout.write(createHash("sha256").update(JSON.stringify([...await awkwardCharts(${JSON.stringify(drawnTwice)})])).digest("hex"));`,
        resolveDir: new URL(".", import.meta.url).pathname,
        loader: "ts",
      },
      outfile,
      metafile: true,
    });
    const env = { ...process.env, TZ: "Pacific/Auckland", LANG: "de_DE.UTF-8", LC_ALL: "de_DE.UTF-8" };
    const digest = execFileSync(process.execPath, [outfile], { encoding: "utf8", env });
    return { hasVegaLite: Object.keys(metafile.inputs).some((name) => name.includes("/vega-lite/")), digest };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

test.each([
  { when: "as they are drawn", plugins: [], hasVegaLite: true },
  { when: "as the command is built, without vega-lite", plugins: bundleSettings.plugins ?? [], hasVegaLite: false },
])(
  "charts compiled $when: another process, time zone and language draw the same bytes",
  async ({ plugins, hasVegaLite }) => {
    expect(await drawnElsewhere(plugins)).toEqual({ hasVegaLite, digest: digestOf() });
  },
);

describeWithProgram("chromium", "charts as a browser draws them", (executablePath) => {
  test("no two texts overlap and none is cut, whatever the axes show", async () => {
    const { page } = await opened(executablePath, "about:blank");
    for (const [name, svg] of charts) {
      await page.setContent(`<style>${fontFaces(svg)}</style>${svg}`);
      const boxes = await page.evaluate(textBoxes);
      expect(boxes.length, name).toBeGreaterThan(5);
      expect(boxes.filter(isCut), `${name}: cut`).toEqual([]);
      expect(overlapping(boxes), `${name}: overlapping`).toEqual([]);
    }
  });
});

type Box = { text: string; left: number; right: number; top: number; bottom: number; width: number; height: number };

/** In the browser: the boxes of all texts that can be seen, in units of the view box, which `width` and `height` give. */
async function textBoxes(): Promise<Box[]> {
  type Rectangle = { left: number; right: number; top: number; bottom: number; width: number };
  type Element = {
    textContent: string;
    getBoundingClientRect(): Rectangle;
    viewBox: { baseVal: { width: number; height: number } };
  };
  type Document = {
    fonts: { load(font: string): Promise<unknown[]> };
    querySelector(name: string): Element;
    querySelectorAll(name: string): Iterable<Element>;
  };
  const { document } = globalThis as unknown as { document: Document };
  const loaded = await Promise.all(["400 13px Inter", "600 13px Inter"].map((font) => document.fonts.load(font)));
  if (loaded.some((faces) => faces.length === 0)) throw new Error("the font did not load");
  const svg = document.querySelector("svg");
  const { width, height } = svg.viewBox.baseVal;
  const frame = svg.getBoundingClientRect();
  const unit = frame.width / width;
  return [...document.querySelectorAll("svg text:not([opacity='0'])")].map((element) => {
    const { left, right, top, bottom } = element.getBoundingClientRect();
    return {
      text: element.textContent,
      left: (left - frame.left) / unit,
      right: (right - frame.left) / unit,
      top: (top - frame.top) / unit,
      bottom: (bottom - frame.top) / unit,
      width,
      height,
    };
  });
}

/** A box is as high as the line, digits are less: 3 px of it above and below may leave the picture. */
const lineRoom = 3;

function isCut({ left, right, top, bottom, width, height }: Box): boolean {
  return left < -0.5 || right > width + 0.5 || top < -lineRoom || bottom > height + lineRoom;
}

function overlapping(boxes: readonly Box[]): string[] {
  return boxes.flatMap((one, index) =>
    boxes
      .slice(index + 1)
      .filter(
        (other) =>
          Math.min(one.right, other.right) > Math.max(one.left, other.left) &&
          Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > lineRoom,
      )
      .map((other) => `${one.text} | ${other.text}`),
  );
}
