import type { FigureDefinition } from "./figure-definition.ts";

/** How a candidate's accuracy stands beside the tolerance. */
export const candidateFigures = Object.freeze([
  {
    key: "candidates.ratio",
    name: "Tolerance over accuracy",
    unit: "none",
    meaning:
      "How often the greatest error that a candidate's data state goes into the tolerance, at the end of the range where " +
      "they are closest. A part of span is that of its own whole range.",
    formula: "T / a",
    source: "own choice; after the test uncertainty ratio of ANSI/NCSL Z540.3",
    fields: [
      "fits[].accuracy.ratio",
      "fits[].accuracy.accuracy",
      "fits[].accuracy.tolerance",
      "fits[].accuracy.reference",
    ],
  },
  {
    key: "candidates.standardsUncertainty",
    name: "U of the standards alone",
    unit: "distance",
    meaning: "What certificates, drifts and resolutions leave open of an error, whatever sensor is there.",
    formula: "2 · √(Σ u²)",
    source: "JCGM 100:2008 (GUM), 5.1.2 and 6.2.1; k = 2 is own choice",
    fields: ["fits[].accuracy.standardsUncertainty"],
  },
  {
    key: "candidates.together",
    name: "Accuracy and U together",
    unit: "distance",
    meaning:
      "A candidate is accurate enough where this stays inside the tolerance; its stated accuracy counts as a limit.",
    formula: "√(a² + U²) ≤ T",
    source: "own choice",
    fields: ["fits[].accuracy.together"],
  },
] as const satisfies readonly FigureDefinition[]);
