import type { FigureDefinition } from "./figure-definition.ts";

/** What re-teaching the sensor, or new constants in the controller, would leave. */
export const reteachFigures = Object.freeze([
  {
    key: "bestCorrection",
    name: "Best two constants",
    unit: "distance",
    meaning:
      "The new zero and span that leave the judged errors the least part of the room between their limits; no other two " +
      "constants do better. If an error stays outside, no re-teach can cure the loop.",
    formula: "min over lines x = A + B · d of max over errors of |error − middle of its limits|/half their width",
    source: "own choice: the minimax line, weighted by the limits",
    fields: ["best.lower", "best.upper"],
  },
  {
    key: "endsCorrection",
    name: "Re-teach at the end points",
    unit: "distance",
    meaning: "The zero and span after a re-teach at the first and the last test point: no mean error there.",
    formula: "line of the reference on the indicated distance through the two end points",
    source: "ANSI/ISA-51.1-1979 (R1993), terminal-based line",
    fields: ["ends.lower", "ends.upper"],
  },
  {
    key: "halfSpread",
    name: "Half spread",
    unit: "distance",
    meaning:
      "The least error that any two constants leave: half of how far errors of one point lie apart, or the bend.",
    formula: "(greatest − least error)/2 at one test point; else the greatest error after the best two constants",
    source: "identity",
    fields: ["halfSpread"],
  },
  {
    key: "steadyLeft",
    name: "Left for certain",
    unit: "part of the tolerance",
    meaning:
      "What the best two constants leave of the mean errors, whichever single reading is left out, or outermost point " +
      "that does not lie on one parabola with the others, less what noise explains. Replacing is advised on this, and not on single readings, whose greatest grows with their number.",
    formula: "min over left-out readings of the best two constants' worst mean error/tolerance − t · s/√n",
    source: "own choice; Student's t at 99 %, JCGM 100:2008 (GUM), G.3",
    fields: ["steadyLeft"],
  },
  {
    key: "readingScatter",
    name: "Scatter over the tolerance",
    unit: "part of the tolerance",
    meaning:
      "The standard deviation of repeated readings over the tolerance, and the least that it may be for as few as were " +
      "read.",
    formula: "s/T, pooled; s · √(ν/χ²) with χ² at 95 %",
    source: "JCGM 100:2008 (GUM), 4.2.4; NIST/SEMATECH e-Handbook 7.2.3.1",
    fields: ["scatter.part", "scatter.least", "scatter.degreesOfFreedom"],
  },
  {
    key: "chanceOfPass",
    name: "Chance that new readings pass",
    unit: "0 to 1",
    meaning:
      "What to expect of a re-teach: the share of simulated ones, each taught at both ends with the scatter of one " +
      "reading and read anew by the plan of this record, of which all readings pass the decision rule.",
    formula: "passed/drawn, from the curve that stays, and the scatter with its own uncertainty",
    source: "JCGM 101:2008, propagation of distributions",
    fields: ["expected.chanceOfPass", "expected.draws"],
  },
  {
    key: "newConstants",
    name: "New constants",
    unit: "the controller's unit, counts or signal",
    meaning: "What to type into the controller for the best two constants, instead of teaching the sensor anew.",
    formula: "the controller value, counts or signal that belongs to the corrected distance at each range end",
    source: "the ideal line of the stage, read both ways",
    fields: [
      "countsLower",
      "countsUpper",
      "newConstants.valueLower",
      "newConstants.valueUpper",
      "offset",
      "newConstants.gain",
      "atLower",
      "atUpper",
    ],
  },
] as const satisfies readonly FigureDefinition[]);
