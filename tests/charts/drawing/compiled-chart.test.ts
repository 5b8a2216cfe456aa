import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { type CompiledChart, compiledChart } from "../../../src/charts/drawing/compiled-chart.ts";
import { frozen } from "../frozen.ts";

const folder = new URL("../../../src/charts/specs/", import.meta.url);
const modules = readdirSync(folder).filter((name) => name.endsWith("-chart-spec.ts"));

test("there are specifications to look at", () => expect(modules.length).toBeGreaterThan(5));

test.each(modules)("%s exports nothing but data, so that the build can keep it as JSON", async (name) => {
  // A chart that was drawn before holds what vega keeps in it: this one is loaded for itself.
  const exported = Object.entries<CompiledChart>(await import(new URL(`${name}?anew`, folder).href));
  expect(exported.length).toBeGreaterThan(0);
  for (const [, chart] of exported) {
    expect(chart.series.length).toBeGreaterThan(0);
    expect(JSON.parse(JSON.stringify(chart))).toEqual(chart);
  }
});

const encoding = { x: { field: "x", type: "quantitative" } } as const;

test("the series are those that a drawing brings: not what the specification holds, nor what is made from a series", () => {
  const { series } = compiledChart({
    layer: [
      { data: { name: "rows" }, mark: "point", encoding },
      { data: { name: "means" }, mark: "line", encoding: { ...encoding, y: { field: "y", type: "quantitative" } } },
      { data: { name: "means" }, mark: "point", encoding },
      { data: { values: [{ x: 0 }] }, mark: "point", encoding },
    ],
  });
  expect(series).toEqual(["rows", "means"]);
});

test("a chart that would load something is refused", () => {
  expect(() => compiledChart({ data: { url: "rows.json" }, mark: "point", encoding })).toThrow("has an address");
});

const specification = {
  data: { name: "rows" },
  mark: "point",
  encoding: { x: { field: "x", type: "nominal" } },
} as const;

test("a specification is left as it was", () => {
  expect(compiledChart(frozen(specification)).series).toEqual(["rows"]);
});

test("a warning of vega-lite throws", () => {
  const wrong = { ...specification, encoding: { size: { field: "series", type: "nominal" } } } as const;
  expect(() => compiledChart(wrong)).toThrow("Channel size");
});
