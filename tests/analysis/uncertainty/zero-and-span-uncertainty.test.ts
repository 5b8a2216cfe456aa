import { describe, expect, test } from "vitest";
import { type Figure, isDetermined } from "../../../src/analysis/figures/figure.ts";
import { zeroAndSpanUncertainty } from "../../../src/analysis/uncertainty/zero-and-span-uncertainty.ts";
import { fitLine } from "../../../src/numeric/fit-line.ts";
import { studentTQuantile } from "../../../src/numeric/student-t-quantile.ts";
import { basis, meter, rail } from "../sample-basis.ts";
import { curveReading, expectNear } from "../sample-loop.ts";
import { agreeingCycles, shiftedCycles } from "./sample-cycles.ts";

const near = 1e-12;
const range = { rangeLower: 0, rangeUpper: 100 };
const ends = { ...range, outputAtLower: 4, outputAtUpper: 20 };
const exact = { resolution: 0, driftPerYear: 0 };
/** Counts to half a step of nothing: what is left is the line and the rail. */
const counted = { ...basis, judged: "counts", steps: { reference: 0, output: 0 }, ends } as const;
const first = shiftedCycles.filter(({ cycle }) => cycle === 1);

function determined<Value>(figure: Figure<Value>): Value {
  if (!isDetermined(figure)) throw new Error(figure.notDetermined);
  return figure;
}

describe("one cycle", () => {
  // R 4.2.2: vcov(lm(error ~ point)).
  const [ofZero, ofSpan] = [0.04537856636909419, 0.07921932011998155];
  // sigma(lm(error ~ point)): what cycles differ by is taken as large.
  const ofCycles = 0.08284954809199398;

  test("scatter as lm carries it, a certificate that is common to both ends: it cancels in the span error", () => {
    const standards = [{ ...rail, ...exact, relativeUncertainty: 0 }];
    const { zero, span } = determined(zeroAndSpanUncertainty(first, { ...counted, standards }, range));
    expectNear(zero.combined, Math.hypot(ofZero, ofCycles, 0.1), near);
    expectNear(span.combined, ofSpan, near);
    expectNear(span.effectiveDegreesOfFreedom, 6, 1e-9);
    expectNear(span.widened, (ofSpan * studentTQuantile(0.97725, 6)) / studentTQuantile(0.97725, 1e16), near);
  });

  test("a part that grows with the distance does not cancel, and is nothing at a lower end of 0", () => {
    const standards = [{ ...rail, ...exact, relativeUncertainty: 0.5 }];
    const { zero, span } = determined(zeroAndSpanUncertainty(first, { ...counted, standards }, range));
    expectNear(zero.combined, Math.hypot(ofZero, ofCycles, 0.1), near);
    expectNear(span.combined, Math.hypot(ofSpan, 0.5 / 2), near);
  });

  test("two cycles of which nothing is repeated have half of that variance", () => {
    const standards = [{ ...rail, ...exact, relativeUncertainty: 0 }];
    const parted = first
      .map((reading, index) => ({ ...reading, cycle: 1 + (index % 2) }))
      .filter(({ direction }) => direction === "rising");
    const whole = parted.map((reading) => ({ ...reading, cycle: 1 }));
    const [two, one] = [parted, whole].map(
      (some) => determined(zeroAndSpanUncertainty(some, { ...counted, standards }, range)).zero,
    );
    const scatter = fitLine(
      whole.map(({ reference }) => reference),
      whole.map(({ error }) => error),
    ).residualStdDev as number;
    expectNear(one!.combined ** 2 - two!.combined ** 2, scatter ** 2 / 2, near);
  });

  test("a certificate that does not say how its U is made may differ from end to end", () => {
    const standards = [{ ...rail, ...exact }];
    const { span } = determined(zeroAndSpanUncertainty(first, { ...counted, standards }, range));
    expectNear(span.combined, Math.hypot(ofSpan, Math.SQRT2 * 0.1), near);
  });

  test("the meter counts where the signal is judged: 1 µA of 16 mA, and 0.02 % of them", () => {
    const standards = [
      { ...rail, ...exact, relativeUncertainty: 0 },
      { ...meter, ...exact, relativeUncertainty: 0.02 },
    ];
    const judged = { ...counted, judged: "signal", distancePerOutput: 6.25, standards } as const;
    const { zero, span } = determined(zeroAndSpanUncertainty(first, judged, range));
    expectNear(zero.combined, Math.hypot(ofZero, ofCycles, 0.1, (6.25 * (0.002 + 0.0002 * 4)) / 2), near);
    expectNear(span.combined, Math.hypot(ofSpan, (6.25 * 0.0002 * 16) / 2), near);
  });
});

test("cycles that differ widen the zero error by s/√3 with two degrees of freedom, and leave the span error", () => {
  const standards = [{ ...rail, ...exact, relativeUncertainty: 0, expandedUncertainty: 1e-9 }];
  const { zero, span } = determined(zeroAndSpanUncertainty(shiftedCycles, { ...counted, standards }, range));
  // R 4.2.2: sigma(lm(error ~ point + factor(cycle))), 20 degrees of freedom; Sxx of the 24 readings is 32812.5.
  const scatter = 0.07726600620121189;
  const between = 0.2681839276459703 / Math.sqrt(3);
  const squares = 6 * [0, 25, 50, 100].reduce((sum, point) => sum + (point - 43.75) ** 2, 0);
  const ofLine = scatter * Math.sqrt(1 / 24 + 43.75 ** 2 / squares);
  expectNear(zero.combined, Math.hypot(ofLine, between), 1e-9);
  expectNear(span.combined, (100 * scatter) / Math.sqrt(squares), 1e-9);
  const freedom = zero.combined ** 4 / (ofLine ** 4 / 20 + between ** 4 / 2);
  expectNear(zero.effectiveDegreesOfFreedom, freedom, 1e-9);
  expect(zero.widened / zero.combined).toBeGreaterThan(2);
});

test("two cycles that are not shown to differ leave half of their scatter open in the zero error, and nothing in the span", () => {
  const standards = [{ ...rail, ...exact, relativeUncertainty: 0 }];
  const { zero, span } = determined(zeroAndSpanUncertainty(agreeingCycles, { ...counted, standards }, range));
  // R 4.2.2: vcov(lm(error ~ point)), 14 degrees of freedom; sigma(lm(error ~ factor(point):direction)), 8 of them.
  const [ofZero, ofSpan, repeatability] = [0.028601992580794731, 0.049931731820212266, 0.029895651857753464];
  expectNear(zero.combined, Math.hypot(ofZero, repeatability / 2, 0.1), near);
  expectNear(
    zero.effectiveDegreesOfFreedom,
    zero.combined ** 4 / (ofZero ** 4 / 14 + (repeatability / 2) ** 4 / 8),
    1e-6,
  );
  expectNear(span.combined, ofSpan, near);
});

test("steps repeat with the readings: once a test point, and not once a reading", () => {
  const steps = { reference: 0, output: 2 };
  const standards = [{ ...rail, ...exact, relativeUncertainty: 0, expandedUncertainty: 1e-9 }];
  const rounded = [0, 50, 100].flatMap((point) => [1, 2, 3].map((cycle) => curveReading(point, 0, "rising", cycle)));
  const coarse = { ...counted, distancePerOutput: 1, steps, standards };
  const { zero, span } = determined(zeroAndSpanUncertainty(rounded, coarse, range));
  const step = 1 / Math.sqrt(3);
  expectNear(zero.combined, step * Math.sqrt(1 / 3 + 50 ** 2 / 5000), 1e-8);
  expectNear(span.combined, step * Math.sqrt(100 ** 2 / 5000), 1e-8);
});

test("what is not known stays so", () => {
  const unknown = { notDetermined: "no standard of distance states its uncertainty" };
  expect(zeroAndSpanUncertainty(first, counted, range)).toEqual(unknown);
  const known = { ...counted, standards: [rail] };
  expect(zeroAndSpanUncertainty(first.slice(0, 2), known, range)).toEqual({ notDetermined: "two readings only" });
  const one = [1, 2, 3].map((cycle) => curveReading(5, cycle, "rising", cycle));
  expect(zeroAndSpanUncertainty(one, known, range)).toEqual({ notDetermined: "fewer than two reference distances" });
});
