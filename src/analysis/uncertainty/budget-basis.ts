import type { Calibration, Standard } from "../../model/calibration.ts";
import type { Instrument } from "../../model/instrument.ts";
import { isGasOfItsOwn, mediumOf } from "../../model/medium.ts";
import { spanOf } from "../../model/range.ts";
import type { CurvePoint, CurveReading } from "../figures/error-curve.ts";
import { isDetermined } from "../figures/figure.ts";
import { hysteresis } from "../figures/hysteresis.ts";
import { type Characteristic, outputSpanOf } from "../readings/ideal-characteristic.ts";
import type { Loop, Stage } from "../readings/loop.ts";
import { type BudgetBasis, outputContributions, referenceContributions } from "./point-budget.ts";
import { type ReadingScatter, readingScatter } from "./reading-scatter.ts";

/** The workbook's rows that budgets rest on, and the smallest steps that were typed. */
export type BudgetRows = {
  instrument: Instrument;
  calibration: Calibration;
  standards: readonly Standard[];
  steps: Readonly<Record<"reference" | Stage, number>>;
};

/** An error curve and the quantity that it is of. */
export type JudgedCurve = {
  stage: Stage;
  curve: readonly CurvePoint[];
  readings: readonly CurveReading[];
};

/**
 * What the budgets of one error curve rest on, all in distance.
 *
 * The error is d(s) − x with d the ideal line, so the sensitivity of an output s is that of d, S/|s1 − s0|, and not one
 * over a fitted slope: a sensor that stands still would otherwise have an error without bound on its uncertainty.
 *
 * @param rows instrument, calibration, the standards that it names, typed steps
 * @param judged the curve and its readings, errors in percent of span
 * @param loop what the loop is meant to do
 * @returns the basis of `pointBudget`
 * Source: JCGM 100:2008, 5.1.3: a sensitivity is the partial derivative of the model, here of d(s) − x.
 * @example budgetBasis({ instrument: { tag: "LT-1", rangeLower: 200, rangeUpper: 2000, distanceUnit: "mm",
 *   signalLower: 4, signalUpper: 20, signalUnit: "mA", tolerance: 1, toleranceBasis: "percent of span" },
 *   calibration: { calibration: "C-1", tag: "LT-1" }, standards: [],
 *   steps: { reference: 0.1, signal: 0.001, counts: 1, value: 0.1 } }, { stage: "signal", curve: [], readings: [] },
 *   { characteristics: { signal: { rangeLower: 200, rangeUpper: 2000, outputAtLower: 4, outputAtUpper: 20 } },
 *   toleranceTerms: [], faultLevels: {}, signalUnit: "mA" }).distancePerOutput // 112.5
 */
export function budgetBasis(rows: BudgetRows, judged: JudgedCurve, loop: Loop): BudgetBasis {
  const { instrument, calibration, standards, steps } = rows;
  const distancePerPercent = spanOf(loop.characteristics.signal) / 100;
  const difference = hysteresis(judged.curve);
  const medium = mediumOf(calibration, instrument);
  const stated = {
    standards,
    performedOn: calibration.performedOn,
    distanceUnit: instrument.distanceUnit,
    signalUnit: instrument.signalUnit,
    principle: instrument.principle,
    isTemperatureCompensated: instrument.temperatureCompensated === true,
    airTemperatureCelsius: calibration.airTemperature,
    otherGas: isGasOfItsOwn(medium) ? medium : undefined,
    alignmentAngleDegrees: calibration.alignmentAngle,
    judged: judged.stage,
    distancePerOutput: distancePerOutput(judged, loop),
    ends: characteristicOf(judged, loop),
    steps: { reference: steps.reference, output: steps[judged.stage] },
  };
  const rounding = Math.hypot(
    ...[referenceContributions(stated), outputContributions(stated)]
      .flatMap(({ own }) => own)
      .map(({ standardUncertainty }) => standardUncertainty),
  );
  const scatter = readingScatter(judged.readings, rounding / distancePerPercent);
  return {
    ...stated,
    repeatability: isDetermined(scatter) ? inDistance(scatter, distancePerPercent) : scatter,
    hysteresis: isDetermined(difference) ? { width: difference.percentSpan * distancePerPercent } : difference,
  };
}

function inDistance(scatter: ReadingScatter, factor: number): ReadingScatter {
  const { ofPoints, betweenCycles, leftOpen } = scatter;
  const scaled = <Known extends { standardDeviation: number }>(known: Known): Known => ({
    ...known,
    standardDeviation: known.standardDeviation * factor,
  });
  return {
    ...scatter,
    pooledStdDev: scatter.pooledStdDev * factor,
    ...(ofPoints && { ofPoints: new Map([...ofPoints].map(([point, known]) => [point, scaled(known)])) }),
    ...(betweenCycles && { betweenCycles: scaled(betweenCycles) }),
    ...(leftOpen && { leftOpen: scaled(leftOpen) }),
  };
}

function characteristicOf({ stage }: JudgedCurve, { characteristics }: Loop): Characteristic {
  return characteristics[stage] ?? characteristics.signal;
}

function distancePerOutput(judged: JudgedCurve, loop: Loop): number {
  const characteristic = characteristicOf(judged, loop);
  return Math.abs(spanOf(characteristic) / outputSpanOf(characteristic));
}
