/** What one figure is: the words that the page, `spanwright explain` and the guide share. */
export type FigureDefinition = {
  key: string;
  name: string;
  unit: string;
  /** In a sentence, for whoever reads a page. */
  meaning: string;
  formula: string;
  source: string;
};

const viaFit = "JCGM 100:2008 (GUM), H.3";
const performanceTerms = "IEC 61298-2:2008 terms; ANSI/ISA-51.1-1979 (R1993)";

/**
 * Every figure of a record, in the order in which a page prints them. One meaning a word, one formula a figure.
 *
 * Source: the documents named in each entry; "from memory" marks a definition that was not read again.
 */
export const figureDefinitions = Object.freeze([
  {
    key: "error",
    name: "Error",
    unit: "distance, % of span",
    meaning: "Indicated minus reference, always with this sign.",
    formula: "e = d(s) − x, with d(s) = L + (s − s0)/(s1 − s0) · S; in percent 100 · e/S",
    source: "JCGM 200:2012 (VIM), 2.16; IEC 60381-1 and -2 for the signals",
  },
  {
    key: "slope",
    name: "Slope of the fitted line",
    unit: "output per distance",
    meaning: "Least squares of the output on the reference over all readings used, ± its standard uncertainty.",
    formula: "b = Σ(x − x̄)(s − s̄)/Σ(x − x̄)²; u(b) = s/√Σ(x − x̄)²",
    source: viaFit,
  },
  {
    key: "intercept",
    name: "Intercept of the fitted line",
    unit: "output",
    meaning: "The same line at reference 0, ± its standard uncertainty.",
    formula: "a = s̄ − b · x̄; u(a) = s · √(1/n + x̄²/Σ(x − x̄)²)",
    source: viaFit,
  },
  {
    key: "residualStdDev",
    name: "Residual standard deviation",
    unit: "output",
    meaning: "Scatter of the readings about that line, n − 2 degrees of freedom.",
    formula: "s = √(Σ(s − a − b·x)²/(n − 2))",
    source: viaFit,
  },
  {
    key: "zeroError",
    name: "Zero error",
    unit: "% of span",
    meaning: "Least-squares line of the error at the lower end of the range, ± its standard uncertainty.",
    formula: "line of e on x at x = L",
    source: "ANSI/ISA-51.1-1979 (R1993) for the word; JCGM 100:2008, H.3 for the fit",
  },
  {
    key: "spanError",
    name: "Span error",
    unit: "% of span",
    meaning: "The same line at the upper end minus at the lower end.",
    formula: "line of e on x at U minus that line at L",
    source: "ANSI/ISA-51.1-1979 (R1993) for the word; JCGM 100:2008, H.3 for the fit",
  },
  {
    key: "inaccuracy",
    name: "Inaccuracy",
    unit: "% of span",
    meaning: "Greatest positive and greatest negative error of any single reading.",
    formula: "max(0, e) and min(0, e) over all readings used",
    source: performanceTerms,
  },
  {
    key: "maximumMeasuredError",
    name: "Maximum measured error",
    unit: "% of span",
    meaning: "Mean error of one direction at one test point, the one farthest from zero.",
    formula: "the a(j, up) or a(j, down) with the greatest absolute value",
    source: `${performanceTerms}, from memory`,
  },
  {
    key: "linearity.independent",
    name: "Linearity, independent",
    unit: "% of span",
    meaning: "Greatest departure of the mean error curve from the straight line that makes it least (minimax).",
    formula: "min over lines of max over j of |a(j) − line|, computed exactly",
    source: performanceTerms,
  },
  {
    key: "linearity.terminal",
    name: "Linearity, terminal-based",
    unit: "% of span",
    meaning: "The same from the line through the first and the last test point.",
    formula: "max over j of |a(j) − line through the end points|",
    source: `${performanceTerms}, from memory`,
  },
  {
    key: "linearity.zeroBased",
    name: "Linearity, zero-based",
    unit: "% of span",
    meaning: "The same from the best line through the first test point.",
    formula: "min over slopes through the first point of max over j of |a(j) − line|",
    source: `${performanceTerms}, from memory`,
  },
  {
    key: "linearity.leastSquares",
    name: "Linearity, least-squares",
    unit: "% of span",
    meaning: "The same from the least-squares line through the test points; an extra, not the independent linearity.",
    formula: "max over j of |a(j) − least-squares line of a(j) on x|",
    source: "common practice, no source",
  },
  {
    key: "hysteresis",
    name: "Hysteresis",
    unit: "% of span",
    meaning: "Greatest difference between rising and falling, of the means over the cycles.",
    formula: "max over j of |a(j, up) − a(j, down)|",
    source: `${performanceTerms}, from memory`,
  },
  {
    key: "hysteresis.withinOneCycle",
    name: "Hysteresis within one cycle",
    unit: "% of span",
    meaning: "Greatest difference between rising and falling within any one cycle; the dead band is not taken off.",
    formula: "max over cycles and points of |e(up) − e(down)|",
    source: "ANSI/ISA-51.1-1979 (R1993)",
  },
  {
    key: "repeatability",
    name: "Repeatability",
    unit: "% of span",
    meaning: "Widest spread of readings of one test point in one direction over the cycles.",
    formula: "max over points and directions of (greatest − least error)",
    source: `${performanceTerms}, from memory`,
  },
  {
    key: "repeatability.pooledStdDev",
    name: "Repeatability, pooled",
    unit: "% of span",
    meaning: "Standard deviation pooled over all test points and directions.",
    formula: "s = √(Σ(n − 1)s²/Σ(n − 1))",
    source: "ISO 5725-2",
  },
  {
    key: "loopError",
    name: "Greatest loop error",
    unit: "% of span",
    meaning: "What the controller shows minus what it should show, at the reading where it is greatest.",
    formula: "p − p*(x); in distance = sensor + input card + scaling share",
    source: "identity; JCGM 200:2012 (VIM), 2.16",
  },
] as const satisfies readonly FigureDefinition[]);

export type FigureKey = (typeof figureDefinitions)[number]["key"];

const definitionByKey: ReadonlyMap<string, FigureDefinition> = new Map(
  figureDefinitions.map((definition) => [definition.key, definition]),
);

/**
 * What a figure is.
 *
 * @param key one of the keys above
 * @returns its definition
 * @throws TypeError for a key that is none
 * Source: own choice.
 * @example figureDefinition("zeroError").name // "Zero error"
 */
export function figureDefinition(key: FigureKey): FigureDefinition {
  const definition = definitionByKey.get(key);
  if (definition === undefined) throw new TypeError(`figureDefinition: there is no figure ${key}`);
  return definition;
}
