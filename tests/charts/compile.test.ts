import { expect, test } from "vitest";
import { compileSpecification } from "../../src/charts/compile.ts";
import { directionChartSpec } from "../../src/charts/direction-chart-spec.ts";
import { errorChartSpec } from "../../src/charts/error-chart-spec.ts";
import { residualChartSpec } from "../../src/charts/residual-chart-spec.ts";
import { stageChartSpec } from "../../src/charts/stage-chart-spec.ts";
import { frozen } from "./frozen.ts";

test("a warning of vega-lite throws", () => {
  const wrong = {
    data: { name: "rows" },
    mark: "point",
    encoding: { size: { field: "series", type: "nominal" } },
  } as const;
  expect(() => compileSpecification(wrong)).toThrow("Channel size");
});

test.each(Object.entries({ errorChartSpec, residualChartSpec, directionChartSpec, stageChartSpec }))(
  "%s is nothing but data, so that it can be compiled once and kept as JSON",
  (_, specification) => {
    expect(JSON.parse(JSON.stringify(specification))).toEqual(specification);
    const compiled = compileSpecification(frozen(specification));
    expect(JSON.parse(JSON.stringify(compiled))).toEqual(compiled);
  },
);
