import { expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { type DriftLine, driftLine } from "../../../src/analysis/years/drift-line.ts";
import { type FittedPhase, lineEndDrifts } from "../../../src/analysis/years/line-end-drift.ts";
import { sinceAdjustment } from "../../../src/analysis/years/place-drift.ts";
import { recordsOfOneLoop } from "../../../src/analysis/years/records-of-one-loop.ts";
import { steadyYears } from "../../assembly/sample-years.ts";

const range = { rangeLower: 0, rangeUpper: 1000 };
const limits = () => ({ low: -5, high: 5 });
const { records } = recordsOfOneLoop(steadyYears);

test("the ends of the line drift as zero and span do, in distance", () => {
  const [lower, upper] = lineEndDrifts(sinceAdjustment(records), range, limits);
  const zero = driftLine(records.map(({ day }, index) => ({ day, error: [0.1, 0.2, 0.4, 0.3, 0.5][index] ?? 0 })));
  // The sample's zero error is that of its first test point, in percent of 1000 mm: the same to rounding.
  const found = lower && isDetermined(lower.line) ? lower.line.perYear.value : 9;
  expect(Math.abs(found - (zero as DriftLine).perYear.value)).toBeLessThan(1e-12);
  expect(lower?.limits).toEqual({ low: -5, high: 5 });
  expect([lower?.distance, upper?.distance]).toEqual([0, 1000]);
});

test("without a test point nothing tells the tolerance there; without a fitted line there is no error", () => {
  expect(lineEndDrifts(sinceAdjustment<FittedPhase>([]), range, limits)).toEqual([]);
  const unfitted = records.map((record) => ({
    ...record,
    asLeft: null,
    adjustment: "none" as const,
    asFound: record.asFound && { ...record.asFound, zeroError: null },
  }));
  const [lower, upper] = lineEndDrifts(sinceAdjustment(unfitted), range, limits);
  expect(lower?.line).toEqual({ notDetermined: "not enough: no record" });
  expect(upper?.line).toEqual({ notDetermined: "not enough: no record" });
});
