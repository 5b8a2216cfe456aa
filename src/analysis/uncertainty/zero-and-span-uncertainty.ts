import type { Standard } from "../../model/calibration.ts";
import { type Range, spanOf } from "../../model/range.ts";
import { fitLine } from "../../numeric/fit-line.ts";
import { studentTQuantile } from "../../numeric/student-t-quantile.ts";
import { unitTable } from "../../units/unit-table.ts";
import { type CurveReading, errorCurve } from "../figures/error-curve.ts";
import { type Figure, isDetermined, notDetermined } from "../figures/figure.ts";
import { idealOutput } from "../readings/ideal-characteristic.ts";
import { truncatedDegrees } from "./budget.ts";
import { type CycleDifferences, cycleDifferences } from "./cycle-differences.ts";
import { type CycleSlopes, cycleSlopes } from "./cycle-slopes.ts";
import { outputContributions, referenceContributions, type StandardsBasis } from "./point-budget.ts";
import { readingScatter, withoutRounding } from "./reading-scatter.ts";
import { readingUncertainties } from "./shared-uncertainty.ts";
import { type StandardUse, standardContributions, standardsOf } from "./standard-contributions.ts";

/**
 * A combined standard uncertainty, how well it is known, and widened for that so that ±2u covers about 95 %; and what of
 * it is of the standards, which all readings share.
 */
export type LineErrorUncertainty = {
  combined: number;
  effectiveDegreesOfFreedom: number;
  widened: number;
  ofStandards: number;
};

/** Uncertainties of the two errors that a line is read for, percent of span. */
export type ZeroAndSpanUncertainty = { zero: LineErrorUncertainty; span: LineErrorUncertainty };

/** A standard uncertainty in distance, and how well it is known. */
type Part = { uncertainty: number; degreesOfFreedom: number };

/** Coverage that ±2u is to keep: that of the budgets (GUM table G.2). */
const coverage = 0.9545;

/**
 * The uncertainty of zero and span error from everything that is known of the line and of the standards.
 *
 * u² = u²(scatter about the line) + u²(steps) + u²(cycles) + u²(standards). Scatter: s of the residuals less what the steps
 * make of it, as `fitLine` carries it to the ends; where the cycles are shown to differ, s without what they make. Steps:
 * those of output and reference, the same again at every visit to a test point, so once a point in the zero error; in the
 * span error in full at both ends, for the rounding of evenly spaced points goes with the slope (own choice). Cycles:
 * s(between)/√m in the zero error, or what is assumed where it was not measured, or is not shown (`readingScatter`); a shift
 * of a whole cycle leaves the span error alone. Where the slopes of the cycles are shown to differ (`cycleSlopes`), what
 * their lines differ by at the lower end stands in the zero error instead, and what they differ by from end to end in the
 * span error. Standards: at the zero error as in a budget there; at the span error what a certificate of the form a + b·L
 * says, b·S: its constant part is common to both ends. A certificate that does not state the form, and a drift, may be
 * anything from one end to the other: they count at both ends (own choice, the greater value). Few degrees of freedom widen
 * u by t/2, so that ±2u covers about 95 % as a U does.
 *
 * @param readings errors in percent of span, as the line is fitted to
 * @param basis standards, steps and units
 * @param range of the instrument, distance
 * @returns u of zero and of span error, percent of span; or the reason why it is not known
 * Source: JCGM 100:2008, 5.2.2 (common contributions), H.3.2 and H.3.6 (a line and what is common to its points), H.5
 *   (between and within), G.4.1 (degrees of freedom); the widening: own choice, as JCGM 101:2008, 6.4.9.4, widens by ν.
 * @example zeroAndSpanUncertainty([0, 1, 0, 1].map((error, point) => ({ point, reference: point, error, direction:
 *   "rising", cycle: 1 })), { standards: [], performedOn: undefined, distanceUnit: "mm", signalUnit: "mA", principle:
 *   "laser", isTemperatureCompensated: false, airTemperatureCelsius: 20, alignmentAngleDegrees: 0, judged: "signal",
 *   distancePerOutput: 1, steps: { reference: 0, output: 0 } }, { rangeLower: 0, rangeUpper: 3 })
 *   // { notDetermined: "no standard of distance states its uncertainty" }
 */
export function zeroAndSpanUncertainty(
  readings: readonly CurveReading[],
  basis: StandardsBasis,
  range: Range,
): Figure<ZeroAndSpanUncertainty> {
  const known = readingUncertainties(basis);
  if (!isDetermined(known)) return known;
  if (new Set(readings.map(({ reference }) => reference)).size < 2)
    return notDetermined("fewer than two reference distances");
  if (readings.length < 3) return notDetermined("two readings only");
  const percent = 100 / spanOf(range);
  const found = cycleDifferences(readings);
  const cycles = found?.isShown ? found : undefined;
  const points = errorCurve(readings).map(({ reference }) => reference);
  const rounding = combinedOf(ownParts(basis));
  const tilted = cycleSlopes(readings);
  const slopes = tilted?.isShown ? tilted : undefined;
  const scatter = scatterAboutLine(readings, rounding * percent, { cycles, slopes });
  const of = (which: "zero" | "span"): LineErrorUncertainty => {
    const ofStandards = percent * (which === "zero" ? sharedAtZero(basis, range) : sharedInSpan(basis, range));
    const ofScatter = scatter.pooledStdDev * lever(scatter.references, range, which);
    const ofPoints = lever(points.length < 2 ? scatter.references : points, range, which);
    const ofSteps = percent * rounding * (which === "span" ? Math.SQRT2 : ofPoints);
    return lineErrorUncertainty(ofStandards, [
      { uncertainty: ofScatter, degreesOfFreedom: scatter.degreesOfFreedom },
      unlimited(ofSteps),
      ...(slopes ? [ofLines(slopes, range, which)] : []),
      ...(which === "zero" && !slopes && cycles ? [betweenPart(cycles)] : []),
      ...(which === "zero" && !slopes && !cycles ? assumedPart(readings, rounding * percent) : []),
      unlimited(ofStandards),
    ]);
  };
  return { zero: of("zero"), span: of("span") };
}

/** What the cycles are shown to make: a shift each, or a line each. */
type ShownCycles = { cycles: CycleDifferences | undefined; slopes: CycleSlopes | undefined };

/** Residual standard deviation of one reading, percent of span, without what the cycles and the steps make of it. */
function scatterAboutLine(readings: readonly CurveReading[], rounding: number, { cycles, slopes }: ShownCycles) {
  const references = readings.map(({ reference }) => reference);
  const ofCycle = ({ cycle, reference }: CurveReading) =>
    slopes ? slopes.effectAt(cycle, reference) : (cycles?.effectOf.get(cycle) ?? 0);
  const { residualStdDev, degreesOfFreedom } = fitLine(
    references,
    readings.map((reading) => reading.error - ofCycle(reading)),
  );
  const taken = slopes ? 2 * (slopes.cycles - 1) : (cycles?.between.degreesOfFreedom ?? 0);
  const freedom = Math.max(1, degreesOfFreedom - taken);
  const deviation = (residualStdDev ?? 0) * Math.sqrt(degreesOfFreedom / freedom);
  return { references, ...withoutRounding(deviation, freedom, rounding) };
}

/** What a standard deviation of 1 of each point makes of the line at its lower end, or of its rise over the range. */
function lever(references: readonly number[], range: Range, which: "zero" | "span"): number {
  const mean = references.reduce((sum, reference) => sum + reference, 0) / references.length;
  const squares = references.reduce((sum, reference) => sum + (reference - mean) ** 2, 0);
  const across = which === "span" ? spanOf(range) : range.rangeLower - mean;
  return Math.sqrt((which === "span" ? 0 : 1 / references.length) + across ** 2 / squares);
}

function betweenPart({ between }: CycleDifferences): Part {
  const { standardDeviation, degreesOfFreedom } = between;
  return { uncertainty: standardDeviation / Math.sqrt(degreesOfFreedom + 1), degreesOfFreedom };
}

/** What the lines of the cycles differ by at the lower end, or from one end to the other, over the cycles. */
function ofLines({ cycles, betweenAt, betweenSlopes }: CycleSlopes, range: Range, which: "zero" | "span"): Part {
  const { standardDeviation, degreesOfFreedom } = which === "zero" ? betweenAt(range.rangeLower) : betweenSlopes;
  const scale = which === "zero" ? 1 : spanOf(range);
  return { uncertainty: (scale * standardDeviation) / Math.sqrt(cycles), degreesOfFreedom };
}

/** What one cycle cannot show, or several do not. */
function assumedPart(readings: readonly CurveReading[], rounding: number): readonly Part[] {
  const found = readingScatter(readings, rounding);
  if (!isDetermined(found)) return [];
  const open = found.betweenCycles?.isAssumed ? found.betweenCycles : found.leftOpen;
  if (open === undefined) return [];
  const { standardDeviation, degreesOfFreedom } = open;
  const cycles = new Set(readings.map(({ cycle }) => cycle)).size;
  return [{ uncertainty: standardDeviation / Math.sqrt(cycles), degreesOfFreedom }];
}

function unlimited(uncertainty: number): Part {
  return { uncertainty, degreesOfFreedom: Number.POSITIVE_INFINITY };
}

function ownParts(basis: StandardsBasis): readonly number[] {
  return [referenceContributions(basis), outputContributions(basis)]
    .flatMap(({ own }) => own)
    .map(({ standardUncertainty }) => standardUncertainty);
}

function sharedAtZero(basis: StandardsBasis, { rangeLower }: Range): number {
  const found = [referenceContributions(basis, rangeLower), outputContributions(basis, rangeLower)];
  return combinedOf(found.flatMap(({ shared }) => shared).map(({ standardUncertainty }) => standardUncertainty));
}

function sharedInSpan(basis: StandardsBasis, range: Range): number {
  const { standards, performedOn, distanceUnit, signalUnit, distancePerOutput, ends } = basis;
  const use = { role: "", typedStep: 0, performedOn };
  const ofDistance: StandardUse = { ...use, kind: "distance", unit: distanceUnit, sensitivity: 1 };
  const ofSignal: StandardUse = {
    ...use,
    kind: unitTable[signalUnit].kind,
    unit: signalUnit,
    sensitivity: distancePerOutput,
  };
  const rise = ends && idealOutput(ends, range.rangeUpper) - idealOutput(ends, range.rangeLower);
  const parts = (of: StandardUse, difference: number) =>
    standardsOf(standards, of.kind).map((standard) => differenceOf(standard, of, difference));
  return combinedOf([
    ...parts(ofDistance, spanOf(range)),
    ...(basis.judged === "signal" ? parts(ofSignal, rise ?? 0) : []),
  ]);
}

/** What one standard leaves open of the difference of two of its readings. */
function differenceOf(standard: Standard, use: StandardUse, difference: number): number {
  const { relativeUncertainty, coverageFactor = 2 } = standard;
  const sharedOf = (one: Standard) =>
    combinedOf(standardContributions([one], use).shared.map(({ standardUncertainty }) => standardUncertainty));
  if (relativeUncertainty === undefined) return Math.SQRT2 * sharedOf(standard);
  const drift = Math.SQRT2 * sharedOf({ ...standard, expandedUncertainty: undefined });
  const scale = ((relativeUncertainty / 100) * Math.abs(difference) * use.sensitivity) / coverageFactor;
  return Math.hypot(drift, scale);
}

function combinedOf(uncertainties: readonly number[]): number {
  return Math.hypot(...uncertainties);
}

function lineErrorUncertainty(ofStandards: number, parts: readonly Part[]): LineErrorUncertainty {
  const combined = combinedOf(parts.map(({ uncertainty }) => uncertainty));
  const sum = parts.reduce(
    (total, { uncertainty, degreesOfFreedom }) =>
      total + (combined === 0 ? 0 : (uncertainty / combined) ** 4 / degreesOfFreedom),
    0,
  );
  const effectiveDegreesOfFreedom = 1 / sum;
  const quantile = (freedom: number) => studentTQuantile((1 + coverage) / 2, freedom);
  const truncated = Math.max(1, truncatedDegrees(effectiveDegreesOfFreedom));
  const widened = (combined * quantile(truncated)) / quantile(Number.POSITIVE_INFINITY);
  return { combined, effectiveDegreesOfFreedom, widened, ofStandards };
}
