import { describe, expect, test } from "vitest";
import { type IndicatedByStage, stageShares } from "../../../src/analysis/stages/stage-shares.ts";

const allStages = Object.freeze({ signal: 101, counts: 101.5, value: 99.5 });

test("the wiring takes 0.25 where the signal was read at the card, and the input card adds 0.75 to that", () => {
  expect(stageShares(100, { signal: 101, signalAtCard: 100.75, counts: 101.5, value: 99.5 })).toEqual({
    sensor: 1,
    wiring: -0.25,
    inputCard: 0.75,
    scaling: -2,
  });
});

test("where it was not, the sensor adds 1, the input card 0.5, the scaling takes 2", () => {
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
    ["the signal at the card alone", { signalAtCard: 100.75 }, { sensorAndWiring: 0.75 }],
    [
      "signal at the card and value",
      { signalAtCard: 100.75, value },
      { sensorAndWiring: 0.75, inputCardAndScaling: -1.25 },
    ],
    ["both signals", { signal, signalAtCard: 100.75 }, { sensor: 1, wiring: -0.25 }],
    [
      "both signals and value",
      { signal, signalAtCard: 100.75, value },
      { sensor: 1, wiring: -0.25, inputCardAndScaling: -1.25 },
    ],
    ["nothing", {}, {}],
  ])("%s", (_, indicated, shares) => {
    expect(stageShares(100, indicated)).toEqual(shares);
  });
});
