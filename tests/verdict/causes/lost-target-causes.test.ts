import { expect, test } from "vitest";
import { lostAndHeld, lostWithFault, weakTarget } from "../../../src/verdict/causes/lost-target-causes.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const lostTargetCauses = [lostAndHeld, lostWithFault, weakTarget];

test("target lost fault: a fault now and then, with the good readings at the same points", () => {
  const [finding, ...others] = findingsOf(
    lostTargetCauses,
    planted({ signal: (signal, { part, cycle }) => (cycle === 2 && part > 0.75 ? 3.5 : signal) }),
  );
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ id: "target-lost-fault", stage: "sensor" });
  expect(finding?.says).toContain("6 of 44 readings show a fault");
  expect(finding?.evidence.map(({ value }) => value)).toContain(6);
});

test("target lost held: the value of the point before, while other cycles are right there", () => {
  const held = planted({
    signal: (signal, { part, cycle, signalBefore }) =>
      cycle === 2 && part > 0.55 && part < 0.85 && signalBefore !== undefined ? signalBefore : signal,
  });
  expect(idsOf(lostTargetCauses, held)).toEqual(["target-lost-held"]);
});

test("a weak target stands for both where the scatter grows with the distance first", () => {
  const weak = planted(
    {
      noise: (noise, { part }) => noise * (1 + 50 * Math.max(0, part) ** 2),
      signal: (signal, { part, cycle }) => (part > 0.85 && cycle === 1 ? 3.5 : signal),
    },
    { instrument: { principle: "ultrasonic" }, cycles: 3 },
  );
  expect(idsOf(lostTargetCauses, weak)).toEqual(["weak-target"]);
});

test("a growth that is not sure is enough only where the target is lost at far points", () => {
  const evidence = planted(nothingWrong);
  const [sensor, ...others] = evidence.stages;
  const spread = { near: 0.05, far: 0.5, slopeInUncertainties: 3, degreesOfFreedom: 60 };
  const wide = { ...evidence, stages: [{ ...sensor!, spread }, ...others] };
  const at = (part: number) => evidence.readings.find(({ point }) => Math.abs(point - 100 * part) < 1)!.index;
  expect(idsOf(lostTargetCauses, wide)).toEqual([]);
  const laser = { ...wide, instrument: { ...wide.instrument, principle: "laser" as const } };
  expect(idsOf(lostTargetCauses, { ...laser, faults: [at(0.9)] })).toEqual(["weak-target"]);
  const ultrasonic = { ...wide, instrument: { ...wide.instrument, principle: "ultrasonic" as const } };
  expect(idsOf(lostTargetCauses, ultrasonic)).toEqual([]);
  expect(idsOf(lostTargetCauses, { ...ultrasonic, faults: [at(0.9)] })).toEqual(["weak-target"]);
  expect(idsOf(lostTargetCauses, { ...ultrasonic, faults: [at(0.1)] })).toEqual(["target-lost-fault"]);
});

test("a healthy loop loses nothing", () => {
  expect(idsOf(lostTargetCauses, planted(nothingWrong))).toEqual([]);
});
