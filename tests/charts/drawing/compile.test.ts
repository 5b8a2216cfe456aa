import { expect, test } from "vitest";
import { compileSpecification } from "../../../src/charts/drawing/compile.ts";
import { frozen } from "../frozen.ts";

const specification = {
  data: { name: "rows" },
  mark: "point",
  encoding: { x: { field: "x", type: "nominal" } },
} as const;

test("a specification is left as it was", () => {
  expect(compileSpecification(frozen(specification)).marks).toHaveLength(1);
});

test("a warning of vega-lite throws", () => {
  const wrong = { ...specification, encoding: { size: { field: "series", type: "nominal" } } } as const;
  expect(() => compileSpecification(wrong)).toThrow("Channel size");
});
