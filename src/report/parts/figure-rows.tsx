import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { writeFixed, writeSigned, writeSignificant } from "../../units/write-number.ts";
import type { NumberStyle } from "../number-style.ts";
import { type FigureRow, Where, withReason } from "./figure-row.tsx";

/** Every figure of a page, in the order in which they are printed. */
export function figureRows({ instrument }: CalibrationRecord, style: NumberStyle): readonly FigureRow[] {
  const decimals = style.percent + 1;
  const percent = (value: number) => writeSigned(value, decimals);
  const size = (value: number) => writeFixed(value, decimals);
  const at = (point: number) => `at ${writeFixed(point, decimalsOf(point))} ${instrument.distanceUnit}`;
  const judgedUnit = ({ judged }: PhaseRecord) =>
    judged === "signal" ? instrument.signalUnit : judged === "counts" ? "counts" : (instrument.valueUnit ?? "units");
  return [
    {
      name: "Slope of the fitted line",
      unit: "output per distance",
      meaning: "Least squares of the output on the reference over all readings used, ± its standard uncertainty.",
      cell: (phase) =>
        withReason(phase, "fit", phase.fit, (fit) => (
          <>
            {pair(fit.slope, fit.slopeStdError)} {judgedUnit(phase)}/{instrument.distanceUnit}
          </>
        )),
    },
    {
      name: "Intercept of the fitted line",
      unit: "output",
      meaning: "The same line at reference 0, ± its standard uncertainty.",
      cell: (phase) =>
        withReason(phase, "fit", phase.fit, (fit) => (
          <>
            {pair(fit.intercept, fit.interceptStdError)} {judgedUnit(phase)}
          </>
        )),
    },
    {
      name: "Residual standard deviation",
      unit: "output",
      meaning: "Scatter of the readings about that line, n − 2 degrees of freedom.",
      cell: (phase) =>
        withReason(phase, "fit", phase.fit, (fit) =>
          fit.residualStdDev === null ? (
            <span class="not-determined">not determined: two readings only</span>
          ) : (
            <>
              {writeSignificant(fit.residualStdDev, 3)} {judgedUnit(phase)}
            </>
          ),
        ),
    },
    {
      name: "Zero error",
      unit: "% of span",
      meaning:
        "Least-squares line of the error at the lower end of the range, ± its standard uncertainty from the fit.",
      cell: (phase) =>
        withReason(phase, "zeroError", phase.zeroError, (error) =>
          signedPair(error.percentSpan, error.standardUncertainty),
        ),
    },
    {
      name: "Span error",
      unit: "% of span",
      meaning: "The same line at the upper end minus at the lower end.",
      cell: (phase) =>
        withReason(phase, "spanError", phase.spanError, (error) =>
          signedPair(error.percentSpan, error.standardUncertainty),
        ),
    },
    {
      name: "Inaccuracy",
      unit: "% of span",
      meaning: "Greatest positive and greatest negative error of any single reading.",
      cell: (phase) =>
        withReason(phase, "inaccuracy", phase.inaccuracy, (found) => (
          <>
            {percent(found.positive)} / {found.negative === 0 ? size(0) : percent(found.negative)}
          </>
        )),
    },
    {
      name: "Maximum measured error",
      unit: "% of span",
      meaning: "Mean error of one direction at one test point, the one farthest from zero.",
      cell: (phase) =>
        withReason(phase, "maximumMeasuredError", phase.maximumMeasuredError, (found) => (
          <>
            {percent(found.percentSpan)}{" "}
            <Where>
              {at(found.point)}, {found.direction}
            </Where>
          </>
        )),
    },
    linearityRow(
      "independent",
      "Linearity, independent",
      "Greatest departure of the mean error curve from the straight line that makes it least (minimax).",
    ),
    linearityRow(
      "terminal",
      "Linearity, terminal-based",
      "The same from the line through the first and the last test point.",
    ),
    linearityRow("zeroBased", "Linearity, zero-based", "The same from the best line through the first test point."),
    linearityRow(
      "leastSquares",
      "Linearity, least-squares",
      "The same from the least-squares line through the test points.",
    ),
    {
      name: "Hysteresis",
      unit: "% of span",
      meaning: "Greatest difference between rising and falling, of the means over the cycles.",
      cell: (phase) =>
        withReason(phase, "hysteresis", phase.hysteresis, (found) => (
          <>
            {size(found.percentSpan)} <Where>{at(found.point)}</Where>
          </>
        )),
    },
    {
      name: "Hysteresis within one cycle",
      unit: "% of span",
      meaning: "Greatest difference between rising and falling within any one cycle (ANSI/ISA-51.1).",
      cell: (phase) =>
        withReason(phase, "hysteresis.withinOneCycle", phase.hysteresis?.withinOneCycle ?? null, (found) => (
          <>
            {size(found.percentSpan)}{" "}
            <Where>
              {at(found.point)}, cycle {found.cycle}
            </Where>
          </>
        )),
    },
    {
      name: "Repeatability",
      unit: "% of span",
      meaning: "Widest spread of readings of one test point in one direction over the cycles.",
      cell: (phase) =>
        withReason(phase, "repeatability", phase.repeatability, (found) => (
          <>
            {size(found.percentSpan)}{" "}
            <Where>
              {at(found.point)}, {found.direction}
            </Where>
          </>
        )),
    },
    {
      name: "Repeatability, pooled",
      unit: "% of span",
      meaning: "Standard deviation pooled over all test points and directions.",
      cell: (phase) =>
        withReason(phase, "repeatability", phase.repeatability, (found) => (
          <>
            {writeSignificant(found.pooledStdDev, 2)} <Where>{found.degreesOfFreedom} degrees of freedom</Where>
          </>
        )),
    },
    {
      name: "Greatest loop error",
      unit: "% of span",
      meaning: "What the controller shows minus what it should show, at the reading where it is greatest.",
      cell: (phase) =>
        withReason(phase, "loopError", phase.loopError, (found) => (
          <>
            {percent(found.percentSpan)}{" "}
            <Where>
              {writeSigned(found.value, style.value)} {instrument.valueUnit}
            </Where>
          </>
        )),
    },
  ];

  function linearityRow(key: keyof PhaseRecord["linearity"], name: string, meaning: string): FigureRow {
    return {
      name,
      unit: "% of span",
      meaning,
      cell: (phase) => withReason(phase, "linearity", phase.linearity[key], size),
    };
  }
}

/** An error and its standard uncertainty: the sign is part of the meaning, so that + is written too. */
function signedPair(value: number, standardUncertainty: number | null): string {
  return `${value > 0 ? "+" : ""}${pair(value, standardUncertainty)}`;
}

function pair(value: number, standardUncertainty: number | null): string {
  if (standardUncertainty === null || standardUncertainty === 0) return writeSignificant(value, 6);
  const written = writeWithUncertainty(value, standardUncertainty);
  return `${written.value} ± ${written.uncertainty}`;
}

function decimalsOf(value: number): number {
  return Math.min(String(Number(value.toPrecision(12))).split(".")[1]?.length ?? 0, 3);
}
