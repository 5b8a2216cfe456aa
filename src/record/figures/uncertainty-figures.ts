import type { FigureDefinition } from "./figure-definition.ts";

const law = "JCGM 100:2008 (GUM), 5.1.2, equation (10)";

/** The uncertainty budget of an error, from its lines to U. */
export const uncertaintyFigures = Object.freeze([
  {
    key: "divisor",
    name: "Divisor",
    unit: "none",
    meaning:
      "What turns a stated half-width, or a certificate's expanded uncertainty, into a standard uncertainty. A certificate " +
      "of the form a + b·L counts with its value at the test point.",
    formula: "k of a certificate; √3 rectangular, √6 triangular, √2 arcsine; √n for the mean of n readings",
    source: "JCGM 100:2008 (GUM), 4.3",
    fields: ["lines[].value", "lines[].divisor"],
  },
  {
    key: "sensitivity",
    name: "Sensitivity",
    symbol: "c_i",
    unit: "distance per unit of the contribution",
    meaning:
      "How much of the error one unit of a contribution makes; for a signal it is the span over the signal span.",
    formula: "c_i = ∂e/∂(contribution)",
    source: "JCGM 100:2008 (GUM), 5.1.3",
    fields: ["lines[].sensitivity"],
  },
  {
    key: "standardUncertainty",
    name: "Standard uncertainty",
    symbol: "u",
    unit: "distance",
    meaning: "An uncertainty expressed as a standard deviation; of a line of the budget, of a mean, of a fit.",
    formula: "u = |c_i| · value/divisor",
    source: "JCGM 100:2008 (GUM), 2.3.1 and 4.2 to 4.3",
    fields: ["lines[].standardUncertainty", "certificates[].standardUncertainty"],
  },
  {
    key: "degreesOfFreedom",
    name: "Degrees of freedom",
    symbol: "ν",
    unit: "none",
    meaning:
      "How well a standard uncertainty is itself known: n − 1 for n readings, n − 2 for the scatter about a line, from the " +
      "fit of the residuals' sizes where that scatter grows along the range, unlimited where bounds were stated.",
    formula: "ν = n − 1; pooled Σ(n − 1); about the line n − 2, at a point (s/u(s))²/2; between m cycles m − 1",
    source: "JCGM 100:2008 (GUM), G.3",
    fields: ["lines[].degreesOfFreedom"],
  },
  {
    key: "shareOfVariance",
    name: "Share of the variance",
    unit: "%",
    meaning: "The part that a line has in the square of the combined standard uncertainty: where improving pays.",
    formula: "100 · (u/u_c)²",
    source: law,
    fields: ["lines[].share"],
  },
  {
    key: "combinedUncertainty",
    name: "Combined standard uncertainty",
    symbol: "u_c",
    unit: "distance",
    meaning: "The standard uncertainty of the error from all lines of the budget together.",
    formula: "u_c = √Σu²",
    source: law,
    fields: ["budget.combinedUncertainty", "points[].combinedUncertainty"],
  },
  {
    key: "effectiveDegreesOfFreedom",
    name: "Effective degrees of freedom",
    symbol: "ν_eff",
    unit: "none",
    meaning: "The degrees of freedom of the combined standard uncertainty (Welch–Satterthwaite).",
    formula: "ν_eff = u_c⁴/Σ(u⁴/ν)",
    source: "JCGM 100:2008 (GUM), G.4.1, equation (G.2b)",
    fields: ["budget.effectiveDegreesOfFreedom", "points[].effectiveDegreesOfFreedom"],
  },
  {
    key: "coverageFactor",
    name: "Coverage factor",
    symbol: "k",
    unit: "none",
    meaning:
      "How many combined standard uncertainties make the expanded one: of Student's t, or of a rectangle or trapezoid " +
      "where one or two rectangular lines dominate.",
    formula: "k = t(95.45 %, ν_eff rounded down); rectangle 0.95 · √3 = 1.65",
    source: "JCGM 100:2008 (GUM), G.4.1; EA-4/02 M:2022, S9 to S11",
    fields: ["coverageFactor", "budget.coverageProbability"],
  },
  {
    key: "expandedUncertainty",
    name: "Expanded uncertainty",
    symbol: "U",
    unit: "distance, % of span",
    meaning: "The true error is expected within ±U of the measured one, with a coverage probability of about 95 %.",
    formula: "U = k · u_c",
    source: "JCGM 100:2008 (GUM), 6.2.1; ILAC-P14:09/2020 for the digits",
    fields: ["expandedUncertainty", "worstUncertainty"],
  },
  {
    key: "monteCarlo",
    name: "Budget by drawing",
    unit: "distance",
    meaning:
      "A check of the budget by drawing from its distributions: standard deviation, and half of the shortest interval.",
    formula: "agrees where |U − half-width| is at most half a unit of the second significant digit of u_c",
    source: "JCGM 101:2008, clauses 7 and 8",
    fields: [
      "monteCarlo.standardUncertainty",
      "monteCarlo.halfWidth",
      "monteCarlo.low",
      "monteCarlo.high",
      "monteCarlo.draws",
      "monteCarloDraws",
    ],
  },
  {
    key: "chiSquared",
    name: "Test of the straight line",
    symbol: "χ²",
    unit: "none",
    meaning:
      "Whether the means of the test points lie on one straight line within scatter and steps: at or below the 95 % limit " +
      "they do. F where the scatter is an estimate, chi-squared where everything is stated.",
    formula:
      "χ² = Σ w² · (s − a − b·x)², w² = 1/(u(s)² + b² · u(x)²), n − 2 degrees of freedom, n means; limit (n − 2) · " +
      "F(95 %, n − 2, ν), or where the scatter changes along the range E · F(95 %, f1, f2), E what χ² is in the mean then",
    source:
      "ISO/TS 28037:2010, clauses 6 and 7; Draper and Smith, Applied Regression Analysis, for F; Box (1954), Brown and " +
      "Forsythe (1974) for a scatter that changes",
    fields: [
      "chiSquared",
      "chiSquaredLimit",
      "uncertainLine.degreesOfFreedom",
      "uncertainLine.scatterDegreesOfFreedom",
    ],
  },
  {
    key: "calibratedDistance",
    name: "Distance by the line",
    unit: "distance",
    meaning: "The distance that an output stands for by the line under stated uncertainties, ± standard uncertainty.",
    formula:
      "x = (s − a)/b; u² from the line, from one output, and from what all readings share; none where the readings do not " +
      "lie on the line",
    source: "ISO/TS 28037:2010, inverse evaluation; JCGM 100:2008 (GUM), H.3.6",
    fields: ["inverse[].output", "inverse[].reference", "inverse[].standardUncertainty"],
  },
] as const satisfies readonly FigureDefinition[]);
