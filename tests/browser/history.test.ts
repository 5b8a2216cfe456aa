import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { overTheYears } from "../../src/assembly/years/over-the-years.ts";
import { historyChart } from "../../src/charts/history-chart.ts";
import { renderHistory } from "../../src/report/history-page.tsx";
import { steadyYears } from "../assembly/sample-years.ts";
import { describeWithProgram } from "../outside/needs-program.ts";
import { axeFindings, opened } from "./browser.ts";
import { elementsBeyond } from "./in-page.mjs";

const years = overTheYears(steadyYears, { intervalMonths: 12 });
if (years === undefined) throw new TypeError("the sample has no day");
const history = {
  ...{ tag: "LT-1", description: "hopper, distance to the surface", location: "yard", distanceUnit: "mm" },
  ...{ rangeLower: 0, rangeUpper: 1000, intervalMonths: 12, intervalAgreedBy: "A. Example", overTheYears: years },
};

describeWithProgram("chromium", "the history of a tag on a screen", (chromium) => {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-history-"));
  const path = join(folder, "history.html");
  beforeAll(async () => {
    const drawings = { wide: await historyChart(history, "wide"), narrow: await historyChart(history, "narrow") };
    writeFileSync(path, renderHistory(history, drawings));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  test.each([1280, 390])(
    "at %i px axe finds nothing, nothing stands out, and nothing is complained of",
    async (width) => {
      const viewport = { width, height: 900 };
      const { page, messages } = await opened(chromium, pathToFileURL(path).href, { bypassCSP: true, viewport });
      expect(await page.evaluate(elementsBeyond)).toEqual({ scrollWidth: width, beyond: [] });
      expect(await axeFindings(page)).toEqual([]);
      expect(messages).toEqual([]);
    },
  );
});
