import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import type { CompiledChart } from "../../../src/charts/drawing/compiled-chart.ts";
import type { DrawingData } from "../../../src/charts/drawing/draw.ts";
import type { SealedRecord } from "../../../src/record/record-schema.ts";
import { howMany } from "../../how-many.ts";
import { madeDemo } from "../../made-demo.ts";
import { svgByVega } from "../oracle/svg-by-vega.ts";

type Drawn = { chart: CompiledChart; drawing: DrawingData; svg: string };

const drawn: Drawn[] = [];
const drawModule = "../../../src/charts/drawing/draw.ts";

/**
 * Every drawing is kept with its chart, whatever asks for it.
 * Modules are shared between files of tests: those loaded before hold the drawing that keeps nothing.
 */
beforeAll(async () => {
  const known = await vi.importActual<typeof import("../../../src/charts/drawing/draw.ts")>(drawModule);
  vi.resetModules();
  const createDrawing = (chart: CompiledChart, mayBeEmpty: readonly string[]) => {
    const draw = known.createDrawing(chart, mayBeEmpty);
    return async (drawing: DrawingData) => {
      const svg = await draw(drawing);
      drawn.push({ chart, drawing, svg });
      return svg;
    };
  };
  vi.doMock(drawModule, () => ({ ...known, createDrawing }));
});

afterAll(() => {
  vi.doUnmock(drawModule);
  vi.resetModules();
});

async function drawAwkwardCharts(): Promise<void> {
  const { awkwardCharts } = await import("../all-charts.ts");
  await awkwardCharts();
}

async function drawDemo(): Promise<void> {
  const { drawPictures } = await import("../../../src/jobs/records/draw-pictures.ts");
  const folder = madeDemo();
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" });
  for (const name of names.filter((one) => one.endsWith(".json") && one.includes("/") && !one.startsWith("filed"))) {
    await drawPictures(JSON.parse(readFileSync(join(folder, name), "utf8")) as SealedRecord);
  }
}

/** Loops of other numbers: how many labels fit, and which lie on others, depends on them. */
const generated = howMany(6, 75);

async function drawGeneratedLoops(): Promise<void> {
  const { allCharts } = await import("../all-charts.ts");
  const { sampleRecord } = await import("../sample-record.ts");
  for (let seed = 100; seed < 100 + generated; seed += 1) {
    const rangeLower = (seed * 37) % 500;
    const rangeUpper = rangeLower + 10 ** (seed % 6) * (1 + (seed % 7));
    const scale = [0.1, 1, 7, 300][seed % 4] ?? 1;
    const options = { seed, rangeLower, rangeUpper, scale, points: 3 + (seed % 9), cycles: 1 + (seed % 4) };
    await allCharts(sampleRecord({ ...options, hasController: seed % 3 === 0 }));
  }
}

test("the walker writes every chart of the demo, of histories and of generated loops byte for byte as vega does", async () => {
  await drawAwkwardCharts();
  await drawDemo();
  await drawGeneratedLoops();
  expect(drawn.length).toBeGreaterThanOrEqual(howMany(200, 600));
  const walked = drawn.filter(({ chart }) => chart.source !== undefined);
  expect(walked.length).toBe(drawn.length);
  for (const { chart, drawing, svg } of drawn) {
    if (chart.runtime === undefined) throw new Error("a chart from source has vega's dataflow");
    expect(svg, JSON.stringify(drawing.title)).toBe(await svgByVega(chart.runtime, drawing));
  }
});
