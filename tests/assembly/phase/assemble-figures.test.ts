import { expect, test } from "vitest";
import { notDetermined } from "../../../src/analysis/figures/figure.ts";
import { assembleFigures, orNull, type Reasons } from "../../../src/assembly/phase/assemble-figures.ts";
import { analysisOf, emptyAnalysis } from "../../analysis/sample-analysis.ts";
import { reading } from "../../analysis/sample-loop.ts";

test("a figure that is not there is null, and its reason is noted; one that is stands as it is", () => {
  expect(orNull("hysteresis", notDetermined("one direction only"), {})).toBeNull();
  const reasons: Reasons = {};
  expect(orNull("hysteresis", notDetermined("one direction only"), reasons)).toBeNull();
  expect(orNull("inaccuracy", 0, reasons)).toBe(0);
  expect(reasons).toEqual({ hysteresis: "one direction only" });
});

test("a phase without a reading has no figure, and says of each why", () => {
  const reasons: Reasons = {};
  const figures = assembleFigures(emptyAnalysis, { uncertainties: notDetermined("no standard"), reasons });
  expect([figures.zeroError, figures.spanError, figures.fit]).toEqual([null, null, null]);
  for (const name of Object.keys(emptyAnalysis.figures)) {
    expect(figures).toHaveProperty(name, null);
    expect(reasons[name], name).toMatch(/./u);
  }
});

const analysed = (signals: readonly (readonly [number, number])[]) =>
  analysisOf(signals.map(([reference, signal]) => reading(reference, { signal })));
const known = Object.freeze({
  zero: { combined: 0.4, effectiveDegreesOfFreedom: 3, widened: 0.5, ofStandards: 0.3 },
  span: { combined: 0.7, effectiveDegreesOfFreedom: Number.POSITIVE_INFINITY, widened: 0.7, ofStandards: 0.2 },
});

test("zero and span error carry the uncertainty of the fit and, beside it, that of fit and standards together", () => {
  const analysis = analysed([
    [0, 4],
    [50, 12.08],
    [100, 20],
  ]);
  const reasons: Reasons = {};
  const { zeroError, spanError } = assembleFigures(analysis, { uncertainties: known, reasons });
  expect(zeroError).toMatchObject({
    combinedStandardUncertainty: 0.5,
    effectiveDegreesOfFreedom: 3,
    standardsUncertainty: 0.3,
  });
  expect(spanError).toMatchObject({ combinedStandardUncertainty: 0.7, effectiveDegreesOfFreedom: null });
  expect(zeroError?.standardUncertainty).toBeGreaterThan(0);
  expect(Object.keys(reasons)).not.toContain("zeroError.combinedStandardUncertainty");
});

test("without the scatter of a fit, or without standards, the combined one is null with its reason", () => {
  const two = analysed([
    [0, 4],
    [100, 20],
  ]);
  const reasons: Reasons = {};
  const { zeroError, linearity } = assembleFigures(two, {
    uncertainties: { notDetermined: "two readings only" },
    reasons,
  });
  expect(zeroError).toMatchObject({ percentSpan: 0, standardUncertainty: null, combinedStandardUncertainty: null });
  expect(linearity).toEqual({ independent: null, terminal: null, zeroBased: null, leastSquares: null });
  expect(reasons).toMatchObject({
    "zeroError.combinedStandardUncertainty": "two readings only",
    "spanError.combinedStandardUncertainty": "two readings only",
    linearity: "fewer than three test points",
  });
});
