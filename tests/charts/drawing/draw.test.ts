import type { TopLevelSpec } from "vega-lite";
import { expect, test } from "vitest";
import { compiledChart } from "../../../src/charts/drawing/compiled-chart.ts";
import { createDrawing, type DrawingData, type Row } from "../../../src/charts/drawing/draw.ts";
import { chartFrame } from "../../../src/charts/specs/chart-frame.ts";
import { frozen } from "../frozen.ts";
import { svgTexts } from "../svg-texts.ts";

const axis = { type: "quantitative", scale: { domain: { signal: "domain" } } } as const;

/** Clipped, so that vega needs an id. */
const specification: TopLevelSpec = frozen({
  ...chartFrame,
  params: [
    { name: "domain", value: [0, 1] },
    { name: "title", value: "" },
  ],
  data: { name: "rows" },
  mark: { type: "line", clip: true },
  encoding: {
    x: { ...axis, field: "x", axis: { title: { signal: "title" } } },
    y: { ...axis, field: "y", axis: { title: null, format: "f" } },
  },
});

const chart = compiledChart(specification);

const drawing = (rows: readonly Row[], changes: Partial<DrawingData> = {}): DrawingData =>
  frozen({
    idPrefix: "sample",
    className: "chart",
    title: "A sample",
    description: "Two points.",
    size: { width: 300, height: 200 },
    signals: { domain: [0, 8], title: "distance, mm" },
    data: { rows },
    ...changes,
  });

const short = [
  { x: 0, y: 1 },
  { x: 8, y: 2 },
];
const long = Array.from({ length: 40 }, (_, index) => ({ x: index / 5, y: (index * 7) % 8 }));

test("a drawing has the size that was asked for, whatever its labels need", async () => {
  const draw = createDrawing(chart);
  expect(await draw(drawing(short))).toContain('viewBox="0 0 300 200"');
  const wide = drawing(short, { size: { width: 640, height: 222 }, signals: { domain: [0, 8e9], title: "m" } });
  expect(await draw(wide)).toContain('viewBox="0 0 640 222"');
});

test("one compiled chart, drawn from with other data in between, gives the bytes of a fresh one", async () => {
  const kept = createDrawing(chart);
  for (const rows of [short, long, short, long.slice(3), long]) {
    const signals = { domain: [0, 8 * rows.length], title: `${rows.length} rows` };
    const fresh = createDrawing(compiledChart(specification));
    expect(await kept(drawing(rows, { signals }))).toBe(await fresh(drawing(rows, { signals })));
  }
});

test("drawings that are made at the same time do not see each other", async () => {
  const draw = createDrawing(chart);
  const alone = await draw(drawing(long));
  const together = await Promise.all([short, long, long, short, long].map((rows) => draw(drawing(rows))));
  expect([together[1], together[2], together[4]]).toEqual([alone, alone, alone]);
});

test("every id begins with the prefix of its chart", async () => {
  const svg = await createDrawing(chart)(drawing(short, { idPrefix: "left" }));
  const ids = [...svg.matchAll(/ id="([^"]*)"/gu)].map(([, id]) => id);
  expect(ids).toEqual(["left-description", "left-1"]);
  expect(svg).toContain("url(#left-1)");
});

test("hostile text in a title is drawn as text", async () => {
  const hostile = `</text><script>alert("1")</script>' & <b`;
  const svg = await createDrawing(chart)(drawing(short, { signals: { domain: [0, 8], title: hostile } }));
  expect(svg).not.toContain("<script");
  expect(svgTexts(svg)).toContain(hostile);
});

test("a series without rows is refused, and so is one that was forgotten", async () => {
  const draw = createDrawing(chart);
  await expect(draw(drawing([]))).rejects.toThrow(RangeError);
  await expect(draw(drawing(short, { data: {} }))).rejects.toThrow("at least one row of rows");
});

test("a series that may be empty is drawn as nothing, and another still has to be there", async () => {
  const draw = createDrawing(chart, ["rows"]);
  expect(await draw(drawing([], { data: {} }))).toContain("distance, mm");
  const other = createDrawing(chart, ["others"]);
  await expect(other(drawing([]))).rejects.toThrow("at least one row of rows");
});

test("a series or a signal that the specification does not name is refused", async () => {
  const draw = createDrawing(chart);
  await expect(draw(drawing(short, { data: { rows: short, others: short } }))).rejects.toThrow("others");
  await expect(draw(drawing(short, { signals: { width2: 3 } }))).rejects.toThrow("width2");
});
