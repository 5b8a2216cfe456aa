import type { FigureDefinition } from "./figure-definition.ts";

const ideal = "the straight line of the loop; IEC 60381-1 and -2 for the signals";

/** The loop around the sensor: burden, and what belongs together along it. */
export const loopFigures = Object.freeze([
  {
    key: "burden",
    name: "Burden",
    symbol: "R",
    unit: "Ω",
    meaning: "Everything in series with the sensor: input card, barrier, cable there and back at its hottest.",
    formula: "R = R(card) + R(barrier) + 2 · ρ · length; copper ρ(t) = ρ(20 °C) · (1 + 0.00393 · (t − 20 °C))",
    source: "IEC 60228 for the conductors",
    fields: [
      "burden.total",
      "burden.card",
      "burden.barrier",
      "cable.lengthMetres",
      "cable.ohmsPerKilometre",
      "cable.temperatureCelsius",
      "cable.resistance",
    ],
  },
  {
    key: "burden.greatest",
    name: "Greatest burden",
    unit: "Ω",
    meaning:
      "What the supply can still drive the highest current of the loop through, its high fault level; or load_max, if that is less.",
    formula: "(supply voltage − least voltage of the sensor)/highest current",
    source: "Ohm's law; fault_high, or the failure level of NAMUR NE 43, 21 mA",
    fields: ["burden.greatest"],
  },
  {
    key: "burden.neededSupply",
    name: "Supply needed",
    unit: "V",
    meaning: "The supply voltage that drives the highest current of the loop through the burden that there is.",
    formula: "least voltage of the sensor + highest current · R",
    source: "Ohm's law",
    fields: ["neededSupplyVolts"],
  },
  {
    key: "idealSignal",
    name: "Ideal signal",
    symbol: "s*",
    unit: "mA or V",
    meaning: "The output that is meant at a distance.",
    formula: "s*(x) = s0 + (x − L)/(U − L) · (s1 − s0)",
    source: ideal,
    fields: ["setPointTable[].signal", "setPointTable[].distance"],
  },
  {
    key: "idealCounts",
    name: "Ideal counts",
    symbol: "n*",
    unit: "counts",
    meaning: "The raw number that the input card is meant to give at a distance.",
    formula: "the same line with the counts at the range ends",
    source: ideal,
    fields: ["setPointTable[].counts"],
  },
  {
    key: "idealValue",
    name: "Ideal controller value",
    symbol: "p*",
    unit: "the controller's unit",
    meaning: "What the controller is meant to show at a distance.",
    formula: "the same line with the controller values at the range ends",
    source: ideal,
    fields: ["setPointTable[].value"],
  },
  {
    key: "percentOfSpan",
    name: "Percent of span",
    unit: "% of span",
    meaning: "Where a distance lies in the range: 0 at its lower end, 100 at its upper.",
    formula: "100 · (x − L)/(U − L)",
    source: "definition",
    fields: ["setPointTable[].percentSpan"],
  },
] as const satisfies readonly FigureDefinition[]);
