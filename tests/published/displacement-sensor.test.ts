import { expect, test } from "vitest";
import { fitLine } from "../../src/numeric/fit-line.ts";
import { minimaxLine } from "../../src/numeric/minimax-line.ts";
import { minimaxDeviationByTriples } from "./minimax-by-triples.ts";
import { readColumns, readExpected } from "./read-data.ts";

// The readings are published, the answers computed: each is found here by a second road as well.
const { displacement_mm: displacements = [], output_V: outputs = [] } = readColumns(
  "displacement-sensor-eight-millimetres",
);
const computed = readExpected<Record<string, number>>("displacement-sensor-eight-millimetres");
const halfOfSixthDecimal = 0.51e-6;

test("the line through the first and the last reading is 8 V/mm and leaves 1.1 V at 4 mm", () => {
  const slope = (outputs.at(-1)! - outputs[0]!) / (displacements.at(-1)! - displacements[0]!);
  expect(slope).toBe(computed.terminalSlope);
  const deviations = displacements.map((displacement, index) => Math.abs(outputs[index]! - slope * displacement));
  const greatest = Math.max(...deviations);
  expect(Math.abs(greatest - computed.terminalGreatestDeviation!)).toBeLessThan(1e-14);
  expect(displacements[deviations.indexOf(greatest)]).toBe(4);
});

test("the minimax line is 7.866667 x + 0.8 and leaves 0.833333 V, which every three points confirm", () => {
  const line = minimaxLine(displacements, outputs);
  expect(Math.abs(line.slope - computed.minimaxSlope!)).toBeLessThan(halfOfSixthDecimal);
  expect(Math.abs(line.intercept - computed.minimaxIntercept!)).toBeLessThan(halfOfSixthDecimal);
  expect(Math.abs(line.greatestDeviation - computed.minimaxGreatestDeviation!)).toBeLessThan(halfOfSixthDecimal);
  // A dozen roundings of volts near 64 (ulp 1.4e-14).
  const byTriples = minimaxDeviationByTriples(displacements, outputs);
  expect(Math.abs(line.greatestDeviation - byTriples)).toBeLessThan(5e-14);
  const deviations = displacements.map((x, index) => outputs[index]! - (line.intercept + line.slope * x));
  const reached = deviations.filter((deviation) => Math.abs(Math.abs(deviation) - 5 / 6) < 5e-14);
  expect(reached.map(Math.sign)).toEqual([-1, 1, -1]);
  expect(Math.max(...deviations.map(Math.abs))).toBeLessThan(5 / 6 + 5e-14);
});

test("the least-squares line is 7.941667 x + 0.244444", () => {
  // By hand: Σdx² = 60, Σdxdy = 476.5, mean output 32.0111.
  const fit = fitLine(displacements, outputs);
  expect(Math.abs(fit.slope - computed.leastSquaresSlope!)).toBeLessThan(halfOfSixthDecimal);
  expect(Math.abs(fit.slope - 476.5 / 60)).toBeLessThan(1e-14);
  expect(Math.abs(fit.intercept - computed.leastSquaresIntercept!)).toBeLessThan(halfOfSixthDecimal);
});
