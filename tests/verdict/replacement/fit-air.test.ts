import { expect, test } from "vitest";
import { airError } from "../../../src/analysis/air/air-error.ts";
import type { Candidate } from "../../../src/model/instrument.ts";
import { fitAir } from "../../../src/verdict/replacement/fit-air.ts";
import type { AirExtreme } from "../../../src/verdict/replacement/loop-needs.ts";
import { candidateWith, loopNeeds, type NeedsChanges, told } from "./sample-loop-needs.ts";

const cell = (more: Partial<Candidate>, changes: NeedsChanges = {}) => fitAir(candidateWith(more), loopNeeds(changes));
const uncompensated = { temperatureCompensated: false } as const;
const air = (errorAtUpper: number, temperature = -5): AirExtreme => ({
  temperature,
  errorAtUpper,
  toleranceAtUpper: 36,
});

test("−5 °C makes 180 mm of ±36 mm: a sensor that does not correct for it does not fit, one that does fits", () => {
  expect(told(cell(uncompensated))).toBe(
    "does not fit: air of −5 °C makes 180 mm at the far end, where ±36 mm is allowed",
  );
  expect(cell({ temperatureCompensated: true })).toMatchObject({ result: "fits", offers: "corrects for it" });
  expect(cell({}).needs).toBe("air of −5 to 32 °C");
});

test("a quarter of the tolerance is where it begins to matter: 9 mm of ±36 mm", () => {
  expect(cell(uncompensated, { airExtremes: [air(8.9), air(-8.9, 32)] }).result).toBe("fits");
  expect(cell(uncompensated, { airExtremes: [air(9), air(0, 32)] }).result).toBe("fits with a change");
  expect(cell(uncompensated, { airExtremes: [air(0), air(-36, 32)] }).result).toBe("fits with a change");
  expect(cell(uncompensated, { airExtremes: [air(0), air(-36.1, 32)] }).result).toBe("does not fit");
});

// Taught at 20 °C, c goes with √T (ISO 9613-1): 4000 mm · (√(293.15/268.15) − 1) = 182.3 mm at −5 °C.
test("the 180 mm of this loop are what the short form of the speed of sound gives for it", () => {
  const error = airError(4000, Math.sqrt(293.15), Math.sqrt(268.15));
  expect(Math.abs(error - 182.3)).toBeLessThan(0.05); // printed digits
  expect(cell(uncompensated, { airExtremes: [air(error)] }).reason).toContain("182 mm");
});

test("no other principle is asked, and not to state the principle cannot be told", () => {
  expect(cell({ ...uncompensated, principle: "radar" }).result).toBe("fits");
  expect(cell({ ...uncompensated, principle: undefined }).result).toBe("cannot be told");
});

test("what is not stated cannot be told, as far as it matters", () => {
  const notStated = { temperatureCompensated: undefined };
  expect(told(cell(notStated))).toMatch(/^cannot be told: temperature_compensated is not stated, and air of −5 °C/u);
  expect(cell(notStated, { airExtremes: [air(1), air(-1, 32)] }).result).toBe("fits");
  expect(cell(uncompensated, { airExtremes: [] }).result).toBe("cannot be told");
  expect(cell(uncompensated, { airExtremes: [air(1)] }).result).toBe("cannot be told");
  expect(cell(uncompensated, { airExtremes: [air(40)] }).result).toBe("does not fit");
  const noAir = { instrument: { airMin: undefined, airMax: undefined } };
  expect(cell(uncompensated, noAir).needs).toBe("air not stated");
});
