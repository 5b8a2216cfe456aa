import { expect, test } from "vitest";
import type { Trip } from "../../../src/model/calibration.ts";
import {
  outputAndInputUnfit,
  outputAndValueShifted,
  outputDoesNotRepeat,
  outputsExchanged,
  switchPointOff,
} from "../../../src/verdict/causes/switch-causes.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const switchCauses = [
  outputAndInputUnfit,
  outputsExchanged,
  outputAndValueShifted,
  switchPointOff,
  outputDoesNotRepeat,
];

const output = {
  ...({ tag: "LT-1", output: "Q1", setPoint: 700, setPointTolerance: 5 } as const),
  ...({ polarity: "PNP", controllerInput: "sinking" } as const),
};
const trips = (distance: number): Trip[] =>
  [1, 2, 3].map((cycle) => ({
    ...({ calibration: "C-1", phase: "as_found", output: "Q1", direction: "approach" } as const),
    cycle,
    reference: distance + 0.3 * cycle,
  }));

test("switch point off: an analog value that is right and a trip that is not is the switch's own", () => {
  const [finding] = findingsOf(switchCauses, planted(nothingWrong, { outputs: [output], trips: trips(720) }));
  expect(finding).toMatchObject({ id: "switch-point-off", title: "switch point off" });
});

test("switch point off: a sensor that reads 20 mm long and trips 20 mm early has one shift for both", () => {
  const shared = planted({ seen: (part) => part + 0.02 }, { outputs: [output], trips: trips(680) });
  expect(findingsOf(switchCauses, shared)).toMatchObject([
    { id: "output-and-value-shifted", title: "switch point and analog value shifted together" },
  ]);
});

test("switch point off: late by 20 mm though the sensor reads 20 mm long is both", () => {
  const both = planted({ seen: (part) => part + 0.02 }, { outputs: [output], trips: trips(720) });
  expect(findingsOf(switchCauses, both)[0]?.says).toContain("more than the analog value explains");
});

test("output and input unfit: a PNP output on a sourcing input, whether it was tripped or not", () => {
  const wrong = planted(nothingWrong, { outputs: [{ ...output, controllerInput: "sourcing" }] });
  expect(findingsOf(switchCauses, wrong)).toMatchObject([{ id: "output-and-input-unfit", stage: "switched output" }]);
});

test("an output in its place, and one without trips, give none", () => {
  expect(idsOf(switchCauses, planted(nothingWrong, { outputs: [output], trips: trips(700) }))).toEqual([]);
  expect(idsOf(switchCauses, planted(nothingWrong, { outputs: [output] }))).toEqual([]);
});

test("switch point off: only the direction that matters counts", () => {
  const both = [...trips(700), ...trips(730).map((trip) => ({ ...trip, direction: "recede" as const }))];
  const onRecede = { ...output, setPointTolerance: 10, criticalDirection: "recede" } as const;
  expect(idsOf(switchCauses, planted(nothingWrong, { outputs: [onRecede], trips: both }))).toEqual([
    "switch-point-off",
  ]);
  const onApproach = { ...onRecede, criticalDirection: "approach" } as const;
  expect(idsOf(switchCauses, planted(nothingWrong, { outputs: [onApproach], trips: both }))).toEqual([]);
});

test("switch point off: what the decision rule accepts gives none, however far off it is", () => {
  const wide = { ...output, setPointTolerance: 25 };
  expect(idsOf(switchCauses, planted(nothingWrong, { outputs: [wide], trips: trips(720) }))).toEqual([]);
});

test("switch point off: of a set point of which nobody says how far off it may be, what is beyond its U is seen", () => {
  const unlimited = { ...output, setPointTolerance: undefined };
  const found = (at: number) => idsOf(switchCauses, planted(nothingWrong, { outputs: [unlimited], trips: trips(at) }));
  expect(found(720)).toEqual(["switch-point-off"]);
  expect(found(699.4)).toEqual([]);
});

test("switch point off: where no analog value was read nothing tells a teach from a shift", () => {
  const off = planted(nothingWrong, { outputs: [{ ...output, setPointTolerance: 10 }], trips: trips(720) });
  const [state] = off.switching;
  const [finding] = findingsOf(switchCauses, {
    ...off,
    switching: [{ ...state!, found: { ...state!.found!, shares: null } }],
  });
  expect(finding?.says).toContain("nothing tells them apart");
  expect(finding?.separatedBy).toContain("analog value");
});

test("outputs exchanged: each trips where the other one is set to, and neither is said to be off", () => {
  const second = { ...output, output: "Q2", setPoint: 900 };
  const crossed = [...trips(900), ...trips(700).map((trip) => ({ ...trip, output: "Q2" }))];
  const exchanged = planted(nothingWrong, { outputs: [output, second], trips: crossed });
  expect(idsOf(switchCauses, exchanged)).toEqual(["outputs-exchanged", "outputs-exchanged"]);
  expect(findingsOf(switchCauses, exchanged)[0]?.says).toContain("Q1 trips where Q2 is set to");
});

test("an output that does not repeat: its scatter has a name, though no trip of it is a slip", () => {
  const scattered = [705, 694, 700.2, 707, 692].map((reference, index) => ({
    ...trips(700)[0]!,
    ...{ cycle: index + 1, reference },
  }));
  const wide = { ...output, setPointTolerance: 20, repeatMax: 1 };
  expect(idsOf(switchCauses, planted(nothingWrong, { outputs: [wide], trips: scattered }))).toEqual([
    "output-does-not-repeat",
  ]);
});
