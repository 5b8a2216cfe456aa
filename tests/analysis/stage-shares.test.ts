import { describe, expect, test } from "vitest";
import { type IndicatedByStage, stageShares } from "../../src/analysis/stage-shares.ts";

const allStages = Object.freeze({ signal: 101, counts: 101.5, value: 99.5 });

test("the sensor adds 1, the input card 0.5, the scaling takes 2", () => {
  expect(stageShares(100, allStages)).toEqual({ sensor: 1, inputCard: 0.5, scaling: -2 });
});

describe("a stage that was not read shares a name with its neighbour", () => {
  const { signal, counts, value } = allStages;
  test.each<[string, IndicatedByStage, Record<string, number>]>([
    ["the signal alone", { signal }, { sensor: 1 }],
    ["counts alone", { counts }, { sensorAndInputCard: 1.5 }],
    ["the value alone", { value }, { sensorToController: -0.5 }],
    ["signal and value", { signal, value }, { sensor: 1, inputCardAndScaling: -1.5 }],
    ["signal and counts", { signal, counts }, { sensor: 1, inputCard: 0.5 }],
    ["counts and value", { counts, value }, { sensorAndInputCard: 1.5, scaling: -2 }],
    ["nothing", {}, {}],
  ])("%s", (_, indicated, shares) => {
    expect(stageShares(100, indicated)).toEqual(shares);
  });
});
