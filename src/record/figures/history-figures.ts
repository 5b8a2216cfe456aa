import type { FigureDefinition } from "./figure-definition.ts";

const method = (clause: string) => `ILAC-G24:2022 / OIML D 10, ${clause}`;

/** A loop over its filed records: drift, forecast, intervals, reliability. */
export const historyFigures = Object.freeze([
  {
    key: "changeSinceRecord",
    name: "Change since the record before",
    unit: "distance",
    meaning:
      "What was found less what the record before had left, at the same test point, with U of the difference: what the " +
      "same certificate contributes to both is left out.",
    formula:
      "e(found, n) − e(left, n − 1), u² = u_found² + u_left² − 2 · Σ c_found · c_left over the certificates that are the " +
      "same, U = k · u; a year: divided by the time between",
    source: `${method("6.3")}; JCGM 100:2008 (GUM), 5.2.2 and F.1.2.3`,
    fields: ["records[].change.errorDistance", "records[].change.expandedUncertainty", "records[].change.perYear"],
  },
  {
    key: "driftPerYear",
    name: "Drift per year",
    unit: "distance a year",
    meaning:
      "How fast the error moves since the last adjustment, from what that left and as found each time, with its 95 % " +
      "confidence interval; three records at least. That of the test point whose forecast meets a limit first is the " +
      "drift of the loop, in register, history and recommendation.",
    formula:
      "slope of the least-squares line of error on time, ± t(ν) · s/√Σ(x − x̄)², s and ν of the scatter about the line; " +
      "years of 365.25 days",
    source: `${method("6.3")}; JCGM 100:2008 (GUM), H.3; the fewest three are own choice`,
    fields: [
      "places[].drift.perYear",
      "places[].drift.low",
      "places[].drift.high",
      "places[].drift.residualStdDev",
      "places[].drift.degreesOfFreedom",
      "places[].records",
    ],
  },
  {
    key: "predictionBand",
    name: "Prediction band",
    unit: "distance",
    meaning:
      "Where one further result is expected with 95 %, from the line of drift and the scatter about it; under four " +
      "records that is early.",
    formula: "ŷ ± t(ν) · s · √(1 + 1/n + (x − x̄)²/Σ(x − x̄)²)",
    source: "NIST/SEMATECH e-Handbook of Statistical Methods, 4.5.1.2",
    fields: [
      "overTheYears.band[].value",
      "overTheYears.band[].low",
      "overTheYears.band[].high",
      "predicted.value",
      "predicted.low",
      "predicted.high",
    ],
  },
  {
    key: "driftScatter",
    name: "Scatter about the drift",
    unit: "distance",
    meaning:
      "How far a single result lies from the line of drift, pooled over the test points that were read in the same " +
      "records; a visit shifts and tilts them alike, so that they are not independent of each other.",
    formula:
      "residuals of J lines taken apart into shift, tilt and rest with mean squares A, B, C of m = n − 2, m and " +
      "m·(J − 2): s² = A/J + h·B + (1 − 1/J − h)·C, h = (d − d̄)²/Σ(d − d̄)²; ν = s⁴/Σ(part²/its degrees)",
    source: "JCGM 100:2008 (GUM), H.5 and G.4.1 (Satterthwaite); shift and tilt are own choice",
    fields: ["drift.scatter.standardDeviation", "drift.scatter.degreesOfFreedom"],
  },
  {
    key: "limitCrossing",
    name: "Day the forecast meets a limit",
    unit: "date",
    meaning: "The first day on which the prediction band reaches the upper or the lower limit of the tolerance.",
    formula: "the first day with upper edge ≥ T2 or lower edge ≤ T1, within 20 years of the last record",
    source: "own choice of the band's edge as the criterion",
    fields: ["places[].meets.on"],
  },
  {
    key: "staircaseInterval",
    name: "Interval by the staircase",
    unit: "months",
    meaning:
      "A proposal: longer after several results in a row well inside the tolerance, each at the end of such an interval; " +
      "shorter after one outside it.",
    formula: "interval so far × factor, rounded down to whole months and held between the shortest and the longest",
    source: `${method("6.2")} (method 1, automatic adjustment); how many results, factors and caps are own choice`,
    fields: [
      "staircase.months",
      "staircase.from",
      "staircase.factor",
      "staircase.wellInside",
      "staircase.days",
      "staircase.partOfTolerance",
      "overTheYears.settings.extendWithin",
      "overTheYears.settings.extendAfter",
      "overTheYears.settings.extendBy",
      "overTheYears.settings.shortenConditionalBy",
      "overTheYears.settings.shortenBy",
      "overTheYears.settings.fullInterval",
      "overTheYears.settings.leastMonths",
      "overTheYears.settings.mostMonths",
    ],
  },
  {
    key: "controlChartInterval",
    name: "Interval by the control chart",
    unit: "months",
    meaning: "A proposal: the longest interval at whose end the prediction band still lies inside the tolerance.",
    formula: "the most whole months for which the band lies between T1 and T2 on the day that they end",
    source: `${method("6.3")} (method 2, control chart); the band as the measure of dispersion is own choice`,
    fields: ["controlChart.months"],
  },
  {
    key: "observedReliability",
    name: "Observed reliability",
    unit: "%",
    meaning:
      "How many of the intervals that began in tolerance ended in tolerance, with the two-sided 95 % interval of the rate.",
    formula: "k of n; quantiles 0.025 and 0.975 of the beta distributions (k, n − k + 1) and (k + 1, n − k)",
    source: `${method("6.6")}; C. J. Clopper, E. S. Pearson, Biometrika 26 (1934) 404`,
    fields: ["reliability.inTolerance", "reliability.of", "reliability.rate", "reliability.low", "reliability.high"],
  },
] as const satisfies readonly FigureDefinition[]);
