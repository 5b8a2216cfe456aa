import { writePlain } from "../../units/write-number.ts";
import type { Cause } from "./cause.ts";
import { scalingLineSightings } from "./evidence/scaling-line.ts";

// What is wrong in the scaling, from the line of the error of the value on its input: `scalingLineSightings` chooses
// between them and those of the card.

const putConstantsRight = {
  cures: "scaling",
  does: "put the scaling constants in the controller right",
} as const;

/** The slope of the line is turned round about the middle. */
export const constantsExchanged: Cause = {
  id: "constants-exchanged",
  title: "scaling constants exchanged",
  place: "scaling",
  separatedBy: "read the scaling constants in the controller",
  remedy: { cures: "scaling", does: "exchange the two scaling constants in the controller" },
  detect: (evidence) =>
    scalingLineSightings(evidence, "constants-exchanged", () => ({
      says: "The value falls where it is to rise, about the middle of the range. This is consistent with exchanged scaling constants.",
    })),
};

/** The value has the gain of one unit in place of another, about its own zero. */
export const unitsMixedUp: Cause = {
  id: "units-mixed-up",
  title: "units mixed up in the scaling",
  place: "scaling",
  separatedBy: "read the unit of the scaling constants in the controller",
  remedy: { cures: "scaling", does: "put the units in the scaling right" },
  detect: (evidence) =>
    scalingLineSightings(evidence, "units-mixed-up", ({ unitFactor = 1 }) => ({
      says: `The value is ${shortFactor(unitFactor)} times what it is to be, about its own zero. This is consistent with units mixed up in the scaling.`,
    })),
};

function shortFactor(factor: number): string {
  return writePlain(Number(factor.toPrecision(4)));
}

/** The line is without error at the low end of the signal, and its gain is that of two full scales. */
export const fullScaleWrong: Cause = {
  id: "full-scale-count-wrong",
  title: "raw full-scale count wrong",
  place: "scaling",
  separatedBy: "simulate the signal's high end at the card and read the raw count",
  remedy: { cures: "scaling", does: "put the raw full-scale count in the controller right" },
  remedyAt: {
    "input card": {
      cures: "wiring",
      does: "read the raw full scale that the channel of the input card is set to, and put the channel or the table instruments right",
    },
  },
  detect: (evidence) =>
    scalingLineSightings(evidence, "full-scale-count-wrong", ({ stage, fullScale: [one, other] = [1, 1] }) => ({
      says: `${stage.output === "counts" ? "The raw counts are" : "The value is"} right at the low end of the signal, and the gain is that of one raw full scale read as another. This is consistent with a wrong raw full-scale count.`,
      numbers: [{ name: `${one} / ${other}`, value: one / other, unit: "" }],
    })),
};

/** The line is without error at the high end of the signal. */
export const lowConstantWrong: Cause = {
  id: "low-constant-wrong",
  title: "scaling constant at the low end of the signal wrong",
  place: "scaling",
  separatedBy: "simulate the signal's low end at the card and read the raw count and the value",
  remedy: putConstantsRight,
  detect: (evidence) =>
    scalingLineSightings(evidence, "low-constant-wrong", () => ({
      says: "The value is right at the high end of the signal and wrong at the low end. This is consistent with a wrong scaling constant at the low end.",
    })),
};

const highEnd = "simulate the signal's high end at the card and read the raw count and the value";

/** The line is without error at the low end of the signal. */
export const highConstantWrong: Cause = {
  id: "high-constant-wrong",
  title: "scaling constant at the high end of the signal wrong",
  place: "scaling",
  separatedBy: highEnd,
  remedy: putConstantsRight,
  detect: (evidence) =>
    scalingLineSightings(evidence, "high-constant-wrong", () => ({
      says: "The value is right at the low end of the signal and wrong at the high end. This is consistent with a wrong scaling constant at the high end.",
    })),
};

/** The value is wrong by the same amount everywhere. */
export const offsetInController: Cause = {
  id: "offset-in-controller",
  title: "offset added in the controller",
  place: "scaling",
  separatedBy: "read the scaling block: two constants, and what is added to their value behind them",
  remedy: {
    cures: "scaling",
    does: "take out what the controller adds to the value, a bias or a datum; where nothing is added, put both scaling constants right",
  },
  detect: (evidence) =>
    scalingLineSightings(evidence, "offset-in-controller", () => ({
      says: "The value is wrong by the same amount over the whole range. This is consistent with an offset that is added in the controller, or with both scaling constants moved by as much.",
    })),
};

/** The line is without error at no place that has a meaning, and has one at both ends. */
export const bothConstantsWrong: Cause = {
  id: "both-constants-wrong",
  title: "both scaling constants wrong",
  place: "scaling",
  separatedBy: highEnd,
  remedy: putConstantsRight,
  detect: (evidence) =>
    scalingLineSightings(evidence, "both-constants-wrong", ({ stage: { stage } }) => ({
      says: `The value is wrong at both ends of the signal. This is consistent with both scaling constants wrong${stage === "scaling" ? "" : ", or with an offset and a gain together"}.`,
    })),
};
