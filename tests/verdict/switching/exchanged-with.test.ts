import { expect, test } from "vitest";
import { exchangedWith } from "../../../src/verdict/switching/exchanged-with.ts";
import { switchedState } from "../recommendation/sample-switching.ts";

const range = { rangeLower: 200, rangeUpper: 1200 };
const at = (output: string, setPoint: number, error: number, setPointTolerance?: number) => {
  const state = switchedState("teach", { setPoint: { error, expandedUncertainty: 1, decision: null } });
  return { ...state, output: { ...state.output, output, setPoint, setPointTolerance } };
};

test("each of a pair knows the other; without a tolerance 2 % of span is allowed", () => {
  expect([...exchangedWith([at("Q1", 400, 500), at("Q2", 900, -500)], range)]).toEqual([
    ["Q1", "Q2"],
    ["Q2", "Q1"],
  ]);
  expect(exchangedWith([at("Q1", 400, 19), at("Q2", 419, -19)], range).size).toBe(0);
  expect(exchangedWith([at("Q1", 400, 19, 5), at("Q2", 419, -19, 5)], range).size).toBe(2);
});

test("an output that was not tripped is exchanged with none", () => {
  expect(exchangedWith([{ ...at("Q1", 400, 500), found: null }, at("Q2", 900, -500)], range).size).toBe(0);
});
