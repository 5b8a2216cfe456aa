import { expect, test } from "vitest";
import type { Trip } from "../../../src/model/calibration.ts";
import { switchCauses } from "../../../src/verdict/causes/switch-causes.ts";
import { nothingWrong, planted, rowsOf } from "./planted.ts";

const output = { tag: "LT-1", output: "Q1", setPoint: 700, polarity: "PNP", controllerInput: "sinking" } as const;
const trips = (distance: number): Trip[] =>
  [1, 2, 3].map((cycle) => ({
    ...({ calibration: "C-1", phase: "as_found", output: "Q1", direction: "approach" } as const),
    cycle,
    reference: distance + 0.3 * cycle,
  }));

test("row 27: an analog value that is right and a trip that is not is the switch's own", () => {
  const [finding] = switchCauses(planted(nothingWrong, { outputs: [output], trips: trips(720) }));
  expect(finding).toMatchObject({ row: 27, title: "switch point off" });
});

test("row 27: a sensor that reads 20 mm long and trips 20 mm early has one shift for both", () => {
  const shared = planted({ seen: (part) => part + 0.02 }, { outputs: [output], trips: trips(680) });
  expect(switchCauses(shared)).toMatchObject([{ row: 27, title: "switch point and analog value shifted together" }]);
});

test("row 27: late by 20 mm though the sensor reads 20 mm long is both", () => {
  const both = planted({ seen: (part) => part + 0.02 }, { outputs: [output], trips: trips(720) });
  expect(switchCauses(both)[0]?.says).toContain("more than the analog value explains");
});

test("row 32: a PNP output on a sourcing input, whether it was tripped or not", () => {
  const wrong = planted(nothingWrong, { outputs: [{ ...output, controllerInput: "sourcing" }] });
  expect(switchCauses(wrong)).toMatchObject([{ row: 32, stage: "switched output" }]);
});

test("an output in its place, and one without trips, give none", () => {
  expect(rowsOf(switchCauses, planted(nothingWrong, { outputs: [output], trips: trips(700) }))).toEqual([]);
  expect(rowsOf(switchCauses, planted(nothingWrong, { outputs: [output] }))).toEqual([]);
});

test("row 27: only the direction that matters counts", () => {
  const both = [...trips(700), ...trips(730).map((trip) => ({ ...trip, direction: "recede" as const }))];
  const onRecede = { ...output, setPointTolerance: 10, criticalDirection: "recede" } as const;
  expect(rowsOf(switchCauses, planted(nothingWrong, { outputs: [onRecede], trips: both }))).toEqual([27]);
  const onApproach = { ...onRecede, criticalDirection: "approach" } as const;
  expect(rowsOf(switchCauses, planted(nothingWrong, { outputs: [onApproach], trips: both }))).toEqual([]);
});

test("row 27: what the decision rule accepts gives none, however far off it is", () => {
  const wide = { ...output, setPointTolerance: 25 };
  expect(rowsOf(switchCauses, planted(nothingWrong, { outputs: [wide], trips: trips(720) }))).toEqual([]);
});

test("row 27: where no analog value was read nothing tells a teach from a shift", () => {
  const off = planted(nothingWrong, { outputs: [{ ...output, setPointTolerance: 10 }], trips: trips(720) });
  const [state] = off.switching;
  const [finding] = switchCauses({ ...off, switching: [{ ...state!, found: { ...state!.found!, shares: null } }] });
  expect(finding?.says).toContain("nothing tells them apart");
  expect(finding?.separatedBy).toContain("analog value");
});
