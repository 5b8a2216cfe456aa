import type { FigureDefinition } from "./figure-definition.ts";

/** What the air does to an ultrasonic sensor. */
export const soundFigures = Object.freeze([
  {
    key: "speedOfSound",
    name: "Speed of sound",
    symbol: "c",
    unit: "m/s",
    meaning:
      "From temperature, humidity and pressure. What is not stated is taken as 50 % and 1013.25 hPa, carbon dioxide as 0.04 %.",
    formula: "Cramer's polynomial in t, p and the mole fractions of water vapour and carbon dioxide",
    source: "O. Cramer, J. Acoust. Soc. Am. 93, 2510 (1993); stated for 0 to 30 °C",
    fields: [
      "speed",
      "air.temperature",
      "air.relativeHumidity",
      "air.pressure",
      "taught.temperature",
      "expected[].temperature",
    ],
  },
  {
    key: "speedOfSound.short",
    name: "Speed of sound, short form",
    unit: "m/s",
    meaning: "From the temperature alone, as a check: humidity and pressure make no more than 1 %.",
    formula: "343.2 · √(T/293.15), T in kelvin",
    source: "ISO 9613-1",
    fields: ["shortSpeed"],
  },
  {
    key: "airError",
    name: "Error of the air",
    unit: "distance",
    meaning:
      "What the air alone makes in a sensor that does not correct for it: the sensor takes the echo's time for sound as " +
      "fast as when it was taught.",
    formula: "x · (c(taught)/c(actual) − 1)",
    source: "time of flight",
    fields: [
      "airError",
      "errorAtUpperEnd",
      "expected[].errorAtLower",
      "expected[].errorAtUpper",
      "toleranceAtUpper",
      "perKelvin.distance",
      "humidity.distance",
      "effects.reference",
      "effects.tolerance",
    ],
  },
  {
    key: "leftWithoutAir",
    name: "Left without the air",
    unit: "distance",
    meaning: "The error that stays when the error of the air is taken off.",
    formula: "e − error of the air",
    source: "identity",
    fields: ["explained[].points[].error", "left", "worstNow", "worstLeft"],
  },
] as const satisfies readonly FigureDefinition[]);
