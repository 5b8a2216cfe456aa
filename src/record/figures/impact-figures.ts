import type { FigureDefinition } from "./figure-definition.ts";

/** What a loop that was found out of tolerance may have touched. */
export const impactFigures = Object.freeze([
  {
    key: "impact.error",
    name: "Error between test points",
    unit: "distance, the controller's unit",
    meaning: "What the loop was off by at a range end, a quarter point or a set point, read off its test points.",
    formula: "e(x) on the line between the test points beside x; in the controller's unit e · (p1 − p0)/(U − L)",
    source: "own choice; JCGM 200:2012 (VIM), 2.16 for the error",
    fields: ["rows[].errorDistance", "rows[].errorValue", "rows[].distance"],
  },
  {
    key: "impact.outside",
    name: "Stretch outside the tolerance",
    unit: "distance",
    meaning: "Distances between which the error lies outside the tolerance.",
    formula: "from where the line between two test points leaves the tolerance to where it comes back",
    source: "own choice",
    fields: ["outside[].from", "outside[].to"],
  },
] as const satisfies readonly FigureDefinition[]);
