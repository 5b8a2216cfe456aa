import { expect, test } from "vitest";
import {
  errorWords,
  lineNumbers,
  placeNumber,
  placeOf,
  unitOf,
} from "../../../../src/verdict/causes/evidence/line-words.ts";
import { planted } from "../planted.ts";

const evidence = planted({ seen: (part) => part + 0.0216 });

test("an error reads in percent of span and in distance, with its sign", () => {
  expect(errorWords(evidence, 2.16)).toBe("+2.16 % of span (+21.6 mm)");
  expect(errorWords(evidence, -0.05)).toBe("−0.05 % of span (−0.500 mm)");
  expect(errorWords(evidence, 0)).toBe("0.00 % of span (0 mm)");
});

test("the numbers of a line name its ends in the unit of its input", () => {
  expect(lineNumbers(evidence, evidence.stages[0]!).map(({ name }) => name)).toEqual([
    "gain",
    "error at 200 mm",
    "error at 1200 mm",
    "greatest residual from the line",
  ]);
  const card = planted({ value: (part) => 0.9 * part });
  const numbers = lineNumbers(card, card.stages[1]!);
  expect(numbers.map(({ name }) => name)).toContain("error at 4 mA");
  expect(numbers.at(-1)).toMatchObject({ name: "no error at", unit: "mA" });
});

test("places need no more digits than six, and a minus is a true one", () => {
  expect(placeNumber(1200.0000001)).toBe("1200");
  expect(placeNumber(-0.5)).toBe("−0.5");
});

test("units and places of the stages", () => {
  expect(unitOf(evidence, "counts")).toBe("counts");
  expect(unitOf(evidence, "value")).toBe("EU");
  expect(placeOf("input card and scaling")).toBe("scaling");
  expect(placeOf("whole loop")).toBe("sensor");
});
