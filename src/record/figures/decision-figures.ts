import type { FigureDefinition } from "./figure-definition.ts";

/** How a measured error is decided, and with what risk. */
export const decisionFigures = Object.freeze([
  {
    key: "meanError",
    name: "Mean error of a test point",
    symbol: "a(j)",
    unit: "% of span",
    meaning: "Mean error of the rising, of the falling readings of one test point; the worse direction is judged.",
    formula: "a(j, up) and a(j, down), means over the cycles; a(j) their mean",
    source: "IEC 61298-2:2008 terms, from memory",
    fields: ["points[].up", "points[].down", "points[].mean", "endPoints[].up", "endPoints[].down", "endPoints[].mean"],
  },
  {
    key: "guardBand",
    name: "Guard band",
    symbol: "w",
    unit: "distance",
    meaning: "How far the acceptance limit lies inside the tolerance limit.",
    formula:
      "w = r · U, r the guard factor, 0 for simple acceptance; managed: w = U · max(0, 1.04 − e^(0.38 · ln(T/U) − 0.54)), " +
      "where k is 2 (to 2.05), both sides of the tolerance are equal and T/U ≥ 0.6; elsewhere w = U",
    source: "ILAC-G8:09/2019, 4.2; the managed form after Dobbert (NCSLI 2008), its constants from memory",
    fields: ["guardBand", "guardFactor"],
  },
  {
    key: "acceptanceLimit",
    name: "Acceptance limit",
    symbol: "A",
    unit: "distance",
    meaning: "An error on it or inside passes. Where the guard bands leave no room, nothing can be decided.",
    formula: "A = T − w on each side",
    source: "JCGM 106:2012, 8.2 and 8.3; ILAC-G8:09/2019, 4.2",
    fields: ["acceptanceLow", "acceptanceHigh"],
  },
  {
    key: "testUncertaintyRatio",
    name: "Test uncertainty ratio",
    unit: "none",
    meaning: "How many times the expanded uncertainty goes into the tolerance.",
    formula: "T/U; where the sides differ (T2 − T1)/(2U)",
    source: "ANSI/NCSL Z540.3-2006, 3.11; JCGM 106:2012, 7.6.3",
    fields: ["testUncertaintyRatio", "minimumTestUncertaintyRatio"],
  },
  {
    key: "specificRisk",
    name: "Specific risk",
    unit: "%",
    meaning:
      "The probability that the true error lies outside the tolerance, given the error that was measured; where both " +
      "directions were read, that of either lies outside.",
    formula:
      "1 − [Φ((T2 − e)/u) − Φ((T1 − e)/u)], Φ the normal distribution, u = u_c · max(1, k/2); of two directions " +
      "1 − ∫ φ(c) Π [Φ((T2 − e − c·u(all))/u(own)) − Φ((T1 − e − c·u(all))/u(own))] dc",
    source: "JCGM 106:2012, 7.4 and 9.3.2; that k widens u is own choice, so that ±U leaves outside what U says",
    fields: ["specificRisk"],
  },
  {
    key: "globalFalseAccept",
    name: "Global false accept",
    unit: "%",
    meaning:
      "Of all such loops, before any is measured: the part that would pass though it is out of tolerance, by the rule as " +
      "it is applied to every reading, or every mean.",
    formula:
      "2 ∫ φ(x/σ)/σ · P(all results within their limits, given x) dx over x > T; given x, results share u(all) and u(cycle) " +
      "and have u(reading) of their own",
    source:
      "JCGM 106:2012, 9.5.2; true errors normal about the middle of the tolerance, the same over the range: own choice",
    fields: ["falseAccept.falseAccept", "inToleranceRate", "guardMultiplier", "falseAccept.results"],
  },
  {
    key: "spreadOfTrueErrors",
    name: "Spread of true errors",
    symbol: "σ",
    unit: "part of the tolerance",
    meaning:
      "Standard deviation of the true errors of all such loops, with what measuring adds taken out of the rate that was " +
      "found; 0 where measuring alone explains that rate.",
    formula:
      "the σ at which ∫ φ(x/σ)/σ · P(found in tolerance, given x) dx is the found rate; of one result σ² = σ(found)² − u²",
    source: "JCGM 106:2012, 9.5.2; own choice that the found rate is one of such calibrations",
    fields: ["falseAccept.spread", "falseAccept.trueRate"],
  },
  {
    key: "sharedUncertainty",
    name: "Who shares the uncertainty",
    symbol: "u(all), u(cycle), u(reading)",
    unit: "distance",
    meaning:
      "Standard uncertainty of one reading in parts: the same at all readings (standards, drift, alignment, air), at those " +
      "of one cycle, and of the reading alone (scatter and steps; the scatter of repeats has the steps in it).",
    formula: "u² of one reading = u(all)² + u(cycle)² + u(reading)²",
    source: "JCGM 100:2008, 5.2.2",
    fields: ["sharing.all", "sharing.reading"],
  },
  {
    key: "differencesBetweenCycles",
    name: "Differences between cycles",
    symbol: "u(cycle)",
    unit: "distance",
    meaning:
      "What all readings of a cycle have in common, as a standard deviation from one cycle to the next. From two cycles on " +
      "it is measured, and counts where it is shown; with one cycle nothing measures it, and it is taken as large as the " +
      "scatter, which the budget says: an assumption, without which one cycle would seem better than two.",
    formula:
      "√((MS(cycles) − MS(within))/n), n readings a cycle, where F = MS(cycles)/MS(within) is above its 95 % limit, else 0; " +
      "one cycle: s of the scatter about the line, or of repeats within the cycle",
    source:
      "JCGM 100:2008, H.5 (between and within), 4.3.1 (a judgement); that it is as large as the scatter is own choice",
    fields: ["sharing.cycle"],
  },
  {
    key: "globalFalseReject",
    name: "Global false reject",
    unit: "%",
    meaning: "Of all such loops, before any is measured: the part that would fail though it is in tolerance.",
    formula: "2 ∫ φ(x/σ)/σ · P(not all results within their limits, given x) dx over 0 ≤ x ≤ T",
    source: "JCGM 106:2012, 9.5.2",
    fields: ["falseAccept.falseReject"],
  },
  {
    key: "statement",
    name: "Statement",
    unit: "a word",
    meaning:
      "Pass: on the acceptance limit or inside. With a non-binary guard band: conditional pass up to the tolerance limit, " +
      "conditional fail up to the guard band beyond it, fail from there. A phase has the statement of its worst point.",
    formula: "|e| ≤ T − w; ≤ T; ≤ T + w; beyond. 'Cannot be decided' where 2w leaves no room in the tolerance",
    source: "ILAC-G8:09/2019, 4.2; ISO/IEC 17025:2017, 7.8.6",
    fields: ["points[].statement", "endPoints[].statement", "decision.statement"],
  },
] as const satisfies readonly FigureDefinition[]);
