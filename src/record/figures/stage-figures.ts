import type { FigureDefinition } from "./figure-definition.ts";

const sum = "identity: the shares add up to the loop error exactly";

/** Where in the loop an error arises: shares of single readings, lines of whole stages. */
export const stageFigures = Object.freeze([
  {
    key: "loopError",
    name: "Greatest loop error",
    unit: "% of span",
    meaning: "What the controller shows minus what it should show, at the reading where it is greatest.",
    formula: "p − p*(x); in distance the sum of the shares of the stages",
    source: "identity; JCGM 200:2012 (VIM), 2.16",
    fields: ["loopError.percentSpan", "loopError.distance", "loopError.value", "loopErrorValue", "loopErrorDistance"],
  },
  {
    key: "shares.sensor",
    name: "Sensor share",
    unit: "distance",
    meaning: "The part of the loop error that the sensor's own signal has.",
    formula: "d(s) − x",
    source: sum,
    fields: ["shares.sensor"],
  },
  {
    key: "shares.wiring",
    name: "Wiring share",
    unit: "distance",
    meaning: "What the signal loses or gains between the sensor and the input card, where it was read at both.",
    formula: "d(signal at the card) − d(s)",
    source: sum,
    fields: ["shares.wiring"],
  },
  {
    key: "shares.inputCard",
    name: "Input card share",
    unit: "distance",
    meaning: "What the input card adds: from the signal at its terminals where that was read, else from the sensor's.",
    formula: "d(n) − d(signal at the card), n the raw counts",
    source: sum,
    fields: ["shares.inputCard"],
  },
  {
    key: "shares.scaling",
    name: "Scaling share",
    unit: "distance",
    meaning: "What the controller's scaling adds to the raw counts.",
    formula: "d(p) − d(n), p the controller value",
    source: sum,
    fields: ["shares.scaling"],
  },
  {
    key: "shares.joined",
    name: "Share of several stages",
    unit: "distance",
    meaning: "Where the quantity between two stages was not read, the two share one name and one number.",
    formula: "distance from the later quantity − distance from the earlier one",
    source: sum,
    fields: [
      "shares.sensorAndWiring",
      "shares.sensorAndInputCard",
      "shares.inputCardAndScaling",
      "shares.sensorToController",
    ],
  },
  {
    key: "stageLine",
    name: "Line of a stage",
    unit: "% of span",
    meaning:
      "Straight line of the error of a stage on what the stage was given, without readings too far from it: error at " +
      "both ends of the range, ± one standard uncertainty of the fit; gain 1 changes nothing.",
    formula: "error = c + m · input, both in % of span; gain = 1 + m; error at 0 % = c, at 100 % = c + 100 · m",
    source: "JCGM 100:2008 (GUM), H.3, after setting aside outliers (Theil–Sen; own choice)",
    fields: [
      "stageLines[].gain",
      "stageLines[].gainStandardUncertainty",
      "stageLines[].from",
      "stageLines[].to",
      "stageLines[].readings",
      "stageLines[].excluded",
      "errorAtLower.percentSpan",
      "errorAtLower.standardUncertainty",
      "errorAtUpper.percentSpan",
      "errorAtUpper.standardUncertainty",
    ],
  },
  {
    key: "stageLine.greatestResidual",
    name: "Greatest residual of a stage",
    unit: "% of span",
    meaning: "How far the reading farthest from the line of its stage lies from it, of those that the line rests on.",
    formula: "greatest |error − line|, with its sign",
    source: "own choice",
    fields: ["greatestResidual"],
  },
  {
    key: "stageLine.zeroCrossing",
    name: "Zero crossing of a stage",
    unit: "the stage's input",
    meaning:
      "The input at which the line of a stage has no error; only where its slope is more than twice its uncertainty.",
    formula: "input = −c/m; u = u(line there)/|m|",
    source: "JCGM 100:2008 (GUM), H.3",
    fields: ["zeroCrossing.value", "zeroCrossing.standardUncertainty"],
  },
] as const satisfies readonly FigureDefinition[]);
