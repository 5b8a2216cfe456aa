import type { Calibration, Standard } from "../model/calibration.ts";
import type { Instrument } from "../model/instrument.ts";
import type { CurvePoint, CurveReading } from "./error-curve.ts";
import { type Figure, isDetermined } from "./figure.ts";
import { hysteresis } from "./hysteresis.ts";
import { outputSpanOf, spanOf } from "./ideal-characteristic.ts";
import type { Loop, Stage } from "./loop.ts";
import type { BudgetBasis } from "./point-budget.ts";
import { repeatability } from "./repeatability.ts";

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
  /** Slope of the fitted line of that quantity on the reference, where there is one. */
  slope: Figure<number>;
};

/**
 * What the budgets of one error curve rest on, all in distance.
 *
 * @param rows instrument, calibration, the standards that it names, typed steps
 * @param judged the curve, its readings (errors in percent of span) and its slope
 * @param loop for the ideal slope, where none was fitted
 * @returns the basis of `pointBudget`
 * Source: JCGM 100:2008, 5.1.3: the sensitivity of a signal is one over the slope of the loop's own line.
 * @example budgetBasis(rows, judged, loop).distancePerOutput // 112.5 mm for 1 mA on 200 to 2000 mm, 4 to 20 mA
 */
export function budgetBasis(rows: BudgetRows, judged: JudgedCurve, loop: Loop): BudgetBasis {
  const { instrument, calibration, standards, steps } = rows;
  const distancePerPercent = spanOf(loop.characteristics.signal) / 100;
  const spread = repeatability(judged.readings);
  const difference = hysteresis(judged.curve);
  return {
    standards,
    performedOn: calibration.performedOn,
    distanceUnit: instrument.distanceUnit,
    signalUnit: instrument.signalUnit,
    principle: instrument.principle,
    isTemperatureCompensated: instrument.temperatureCompensated === true,
    airTemperatureCelsius: calibration.airTemperature,
    alignmentAngleDegrees: calibration.alignmentAngle,
    judged: judged.stage,
    distancePerOutput: distancePerOutput(judged, loop),
    steps: { reference: steps.reference, output: steps[judged.stage] },
    repeatability: isDetermined(spread)
      ? { pooledStdDev: spread.pooledStdDev * distancePerPercent, degreesOfFreedom: spread.degreesOfFreedom }
      : spread,
    hysteresis: isDetermined(difference) ? { width: difference.percentSpan * distancePerPercent } : difference,
  };
}

function distancePerOutput({ stage, slope }: JudgedCurve, { characteristics }: Loop): number {
  if (isDetermined(slope) && slope !== 0) return Math.abs(1 / slope);
  const characteristic = characteristics[stage] ?? characteristics.signal;
  return Math.abs(spanOf(characteristic) / outputSpanOf(characteristic));
}
