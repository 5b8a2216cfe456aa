import type { PhaseAnalysis, PlainFigures } from "../../analysis/figures/analyse-phase.ts";
import { type Figure, isDetermined, type NotDetermined } from "../../analysis/figures/figure.ts";
import type { LineError } from "../../analysis/figures/zero-and-span-error.ts";
import type { ZeroAndSpanUncertainty } from "../../analysis/uncertainty/zero-and-span-uncertainty.ts";
import type { PhaseRecord } from "../../record/record-schema.ts";

/** Why figures are null, by the name of the figure. */
export type Reasons = Record<string, string>;

/**
 * A figure for JSON: the value, or null with its reason noted.
 *
 * @param name of the figure in the record
 * @param figure the value, or why there is none
 * @param reasons where the reason is noted
 * @returns the value or null
 * Source: own choice: JSON has no other word for what is not there.
 * @example orNull("hysteresis", notDetermined("one direction only"), {}) // null
 */
export function orNull<Value>(name: string, figure: Figure<Value>, reasons: Reasons): Value | null {
  if (isDetermined(figure)) return figure;
  reasons[name] = figure.notDetermined;
  return null;
}

/** What the figures of a phase need beside its analysis. */
export type FigureContext = { uncertainties: Figure<ZeroAndSpanUncertainty>; reasons: Reasons };

type FigureFields = "fit" | "zeroError" | "spanError" | keyof PlainFigures | "linearity" | "hysteresis";

/**
 * The figures of a phase as the record carries them.
 *
 * @param analysis of the phase
 * @param context uncertainty of zero and span error, where reasons are noted
 * @returns figures in percent of span, the fitted line in the unit of the output
 * Source: each figure's own file in `analysis`.
 * @example assembleFigures(analysePhase(sheetOf(1, (reference) => ({ signal: 4.5 + 0.16 * reference })), loop),
 *   { uncertainties: notDetermined("no standard of distance states its uncertainty"), reasons: {} })
 *   .inaccuracy // { positive: 3.125, negative: 0 }
 */
export function assembleFigures(analysis: PhaseAnalysis, context: FigureContext): Pick<PhaseRecord, FigureFields> {
  const { reasons } = context;
  const fit = orNull("fit", analysis.fit, reasons);
  const withinOneCycle = orNull("hysteresis.withinOneCycle", analysis.hysteresisWithinOneCycle, reasons);
  const hysteresis = orNull("hysteresis", analysis.hysteresis, reasons);
  return {
    fit: fit && {
      n: fit.n,
      slope: fit.slope,
      intercept: fit.intercept,
      slopeStdError: fit.slopeStdError,
      interceptStdError: fit.interceptStdError,
      residualStdDev: fit.residualStdDev,
      rSquared: fit.rSquared,
    },
    zeroError: lineErrorOf(analysis, "zero", context),
    spanError: lineErrorOf(analysis, "span", context),
    ...plainFigures(analysis.figures, reasons),
    linearity: orNull("linearity", analysis.linearity, reasons) ?? {
      independent: null,
      terminal: null,
      zeroBased: null,
      leastSquares: null,
    },
    hysteresis: hysteresis && { ...hysteresis, withinOneCycle },
  };
}

function plainFigures(figures: PlainFigures, reasons: Reasons) {
  const entries = Object.entries(figures).map(([name, figure]) => [name, orNull<unknown>(name, figure, reasons)]);
  return Object.fromEntries(entries) as {
    [Name in keyof PlainFigures]: Exclude<PlainFigures[Name], NotDetermined> | null;
  };
}

function lineErrorOf(
  { zeroAndSpan }: PhaseAnalysis,
  which: "zero" | "span",
  { uncertainties, reasons }: FigureContext,
): PhaseRecord["zeroError"] {
  const name = `${which}Error` as const;
  const error: LineError | null = orNull(name, isDetermined(zeroAndSpan) ? zeroAndSpan[name] : zeroAndSpan, reasons);
  if (error === null) return null;
  const found = orNull(
    `${name}.combinedStandardUncertainty`,
    isDetermined(uncertainties) ? uncertainties[which] : uncertainties,
    reasons,
  );
  if (found === null) return { ...error, combinedStandardUncertainty: null };
  const { widened, effectiveDegreesOfFreedom: freedom, ofStandards } = found;
  return {
    ...error,
    combinedStandardUncertainty: widened,
    effectiveDegreesOfFreedom: Number.isFinite(freedom) ? freedom : null,
    standardsUncertainty: ofStandards,
  };
}
