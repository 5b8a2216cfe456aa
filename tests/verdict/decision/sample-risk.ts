import { chanceOutside } from "../../../src/numeric/chance-outside.ts";
import { tabulated } from "../../../src/verdict/decision/global-false-accept.ts";

/** One result of ratio 4, tolerance ±1, read once. */
export const onePointAtRisk = Object.freeze({
  points: [
    {
      ...{ point: 0, testUncertaintyRatio: 4, guardBand: 0, toleranceLow: -1, toleranceHigh: 1 },
      budget: { combinedUncertainty: 0.125, sharing: { all: 0.1, cycle: 0, reading: 0.075 } },
    },
  ],
  readings: [{ point: 0, direction: "rising" }],
});

/** How loops are judged by one result, U = 2u. */
export function judgedOnce(testUncertaintyRatio: number, acceptance: number) {
  const own = 1 / (2 * testUncertaintyRatio);
  return tabulated({
    acceptance,
    noise: { least: own, greatest: own },
    rejectedAt: (trueError) =>
      chanceOutside([{ low: -acceptance - trueError, high: acceptance - trueError, common: 0, own, count: 1 }]),
  });
}
