import { expect, test } from "vitest";
import { exchangedOutputs } from "../../../src/analysis/plausibility/exchanged-outputs.ts";

const named = (...outputs: readonly (readonly [setPoint: number, at: number])[]) =>
  exchangedOutputs(outputs.map(([setPoint, at], index) => ({ output: `Q${index + 1}`, setPoint, at, allowed: 5 }))).map(
    (pair) => pair.join(" "),
  );

test("two outputs that trip where the other one is set to are a pair, near each other too", () => {
  expect(named([400, 900.3], [900, 400.1])).toEqual(["Q1 Q2"]);
  expect(named([410, 400.4], [400, 409.2])).toEqual(["Q1 Q2"]);
  expect(named([400, 900.3], [700, 700.2], [900, 400.1])).toEqual(["Q1 Q3"]);
});

test("outputs that trip where they are meant to, or one alone that is off, are none", () => {
  expect(named([400, 400.2], [900, 899.8])).toEqual([]);
  expect(named([400, 900.3], [900, 900.1])).toEqual([]);
  expect(named([400, 415], [900, 915])).toEqual([]);
  expect(named([400, 404], [404, 400])).toEqual([]);
  expect(named([400, 900])).toEqual([]);
});
