import { expect, test } from "vitest";
import { lostTargetCauses } from "../../../src/verdict/causes/lost-target-causes.ts";
import { nothingWrong, planted, rowsOf } from "./planted.ts";

test("row 18: a fault now and then, with the good readings at the same points", () => {
  const [finding, ...others] = lostTargetCauses(
    planted({ signal: (signal, { part, cycle }) => (cycle === 2 && part > 0.75 ? 3.5 : signal) }),
  );
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ row: 18, stage: "sensor" });
  expect(finding?.says).toContain("6 of 44 readings show a fault");
  expect(finding?.evidence.map(({ value }) => value)).toContain(6);
});

test("row 19: the value of the point before, while other cycles are right there", () => {
  const held = planted({
    signal: (signal, { part, cycle, signalBefore }) =>
      cycle === 2 && part > 0.55 && part < 0.85 && signalBefore !== undefined ? signalBefore : signal,
  });
  expect(rowsOf(lostTargetCauses, held)).toEqual([19]);
});

test("row 25 stands for both where the scatter grows with the distance first", () => {
  const weak = planted(
    {
      noise: (noise, { part }) => noise * (1 + 50 * Math.max(0, part) ** 2),
      signal: (signal, { part, cycle }) => (part > 0.85 && cycle === 1 ? 3.5 : signal),
    },
    { instrument: { principle: "ultrasonic" }, cycles: 3 },
  );
  expect(rowsOf(lostTargetCauses, weak)).toEqual([25]);
});

test("a growth that is not sure is enough only where the target is lost at far points", () => {
  const evidence = planted(nothingWrong);
  const [sensor, ...others] = evidence.stages;
  const spread = { near: 0.05, far: 0.5, slopeInUncertainties: 3, degreesOfFreedom: 60 };
  const wide = { ...evidence, stages: [{ ...sensor!, spread }, ...others] };
  const at = (part: number) => evidence.readings.find(({ point }) => Math.abs(point - 100 * part) < 1)!.index;
  expect(rowsOf(lostTargetCauses, wide)).toEqual([]);
  const laser = { ...wide, instrument: { ...wide.instrument, principle: "laser" as const } };
  expect(rowsOf(lostTargetCauses, { ...laser, faults: [at(0.9)] })).toEqual([18]);
  const ultrasonic = { ...wide, instrument: { ...wide.instrument, principle: "ultrasonic" as const } };
  expect(rowsOf(lostTargetCauses, ultrasonic)).toEqual([]);
  expect(rowsOf(lostTargetCauses, { ...ultrasonic, faults: [at(0.9)] })).toEqual([25]);
  expect(rowsOf(lostTargetCauses, { ...ultrasonic, faults: [at(0.1)] })).toEqual([18]);
});

test("a healthy loop loses nothing", () => {
  expect(rowsOf(lostTargetCauses, planted(nothingWrong))).toEqual([]);
});
