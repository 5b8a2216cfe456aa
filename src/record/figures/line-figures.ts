import { type FigureDefinition, viaFit } from "./figure-definition.ts";

/** The straight line through the readings of a phase, and what is read off it. */
export const lineFigures = Object.freeze([
  {
    key: "slope",
    name: "Slope of the fitted line",
    symbol: "b",
    unit: "output per distance",
    meaning: "Least squares of the output on the reference over all readings used, ± its standard uncertainty.",
    formula: "b = Σ(x − x̄)(s − s̄)/Σ(x − x̄)²; u(b) = s/√Σ(x − x̄)²",
    source: viaFit,
    fields: ["fit.slope", "fit.slopeStdError"],
  },
  {
    key: "intercept",
    name: "Intercept of the fitted line",
    unit: "output",
    meaning: "The fitted line at reference 0, ± its standard uncertainty.",
    formula: "a = s̄ − b · x̄; u(a) = s · √(1/n + x̄²/Σ(x − x̄)²)",
    source: viaFit,
    fields: ["fit.intercept", "fit.interceptStdError"],
  },
  {
    key: "residualStdDev",
    name: "Residual standard deviation",
    symbol: "s",
    unit: "output",
    meaning: "Scatter of the readings about the fitted line, n − 2 degrees of freedom.",
    formula: "s = √(Σ(s − a − b·x)²/(n − 2))",
    source: viaFit,
    fields: ["fit.residualStdDev"],
  },
  {
    key: "zeroError",
    name: "Zero error",
    unit: "% of span",
    meaning: "Least-squares line of the error at the lower end of the range, ± its standard uncertainty.",
    formula:
      "line of e on x at x = L, the lower end; u² of scatter, steps, cycles (one: taken as large as the scatter s; m " +
      "that are not shown to differ: s/m) and standards, widened by t(ν)/2 where few degrees of freedom are behind it",
    source: "ANSI/ISA-51.1-1979 (R1993) for the word; JCGM 100:2008, H.3 for the fit, 5.2.2 for what is common",
    fields: [
      "zeroError.percentSpan",
      "zeroError.standardUncertainty",
      "zeroError.combinedStandardUncertainty",
      "zeroError.effectiveDegreesOfFreedom",
      "zeroError.standardsUncertainty",
      "history[].*.zeroError",
    ],
  },
  {
    key: "spanError",
    name: "Span error",
    unit: "% of span",
    meaning:
      "Least-squares line of the error at the upper end of the range minus at the lower, ± its standard uncertainty.",
    formula:
      "line of e on x at x = U minus that line at x = L, L to U the range; u as for the zero error, without what is common " +
      "to both ends; cycles count where their slopes are shown to differ (F test of a line a cycle)",
    source: "ANSI/ISA-51.1-1979 (R1993) for the word; JCGM 100:2008, H.3 for the fit, 5.2.2 for what is common",
    fields: [
      "spanError.percentSpan",
      "spanError.standardUncertainty",
      "spanError.combinedStandardUncertainty",
      "spanError.effectiveDegreesOfFreedom",
      "spanError.standardsUncertainty",
      "history[].*.spanError",
    ],
  },
] as const satisfies readonly FigureDefinition[]);
