export const principles = [
  "ultrasonic",
  "photoelectric",
  "laser",
  "radar",
  "inductive",
  "capacitive",
  "other",
] as const;
/** Copper cores of IEC 60228: classes 5 and 6 plain, the same tinned, classes 1 and 2 plain. */
export const conductors = ["flexible", "flexible tinned", "solid or stranded"] as const;
/** What a due date means: the day itself, or the last day of its month. */
export const dueRules = ["day", "month end"] as const;
export const distanceUnits = ["mm", "cm", "m", "in", "ft"] as const;
export const signalUnits = ["mA", "V"] as const;
export const toleranceBases = ["percent of span", "percent of reading", "distance", "signal"] as const;
/** How a second term of a tolerance belongs to the first: added, or whichever of the two is the greater, or the less. */
export const toleranceCombinations = ["sum", "greater", "less"] as const;

/** Simple acceptance; a guard band of guard_factor · U; the same with a non-binary statement in four words; a managed guard band. */
export const decisionRules = [
  "simple acceptance",
  "guard band",
  "non-binary guard band",
  "managed guard band",
] as const;

export type ToleranceBasis = (typeof toleranceBases)[number];
export type ToleranceCombination = (typeof toleranceCombinations)[number];
export type DecisionRuleName = (typeof decisionRules)[number];
export type Conductor = (typeof conductors)[number];
export type DistanceUnit = (typeof distanceUnits)[number];
export type SignalUnit = (typeof signalUnits)[number];

/** What a sensor may stand in, in °C; the equations for the speed of sound have no meaning far beyond it. Own choice. */
export const airBounds = { atLeast: -100, atMost: 200 } as const;
