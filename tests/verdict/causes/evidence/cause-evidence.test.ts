import { expect, test } from "vitest";
import { findCauses } from "../../../../src/verdict/causes/find-causes.ts";
import { planted } from "../planted.ts";

test("signal and value give two stages, counts a third, the signal at the card a fourth", () => {
  const stages = (changes: Parameters<typeof planted>[1], missing: Parameters<typeof planted>[2] = []) =>
    planted({}, changes, missing).stages.map(({ stage }) => stage);
  expect(stages({})).toEqual(["sensor", "input card and scaling"]);
  expect(stages({ hasCounts: true })).toEqual(["sensor", "input card", "scaling"]);
  expect(stages({ hasCounts: true, hasCard: true })).toEqual(["sensor", "wiring", "input card", "scaling"]);
  expect(stages({}, ["signal"])).toEqual(["whole loop"]);
});

test("half the tolerance matters: 0.25 % of span for 0.5 %", () => {
  expect(planted({}).mattering).toBe(0.25);
});

test("at each end it is half of the tolerance there, and a tenth of the middle's where a tolerance vanishes", () => {
  expect(planted({}).matteringAtEnds).toEqual([0.25, 0.25]);
  const ofReading = { tolerance: 1, toleranceBasis: "percent of reading" } as const;
  // 200 to 1200 mm: 2 mm and 12 mm of 1000 mm, and 7 mm in the middle.
  const { mattering, matteringAtEnds } = planted({}, { instrument: ofReading });
  expect([...matteringAtEnds, mattering].map((one) => Number(one.toFixed(12)))).toEqual([0.1, 0.6, 0.35]);
  const fromFace = planted({}, { instrument: ofReading, rangeLower: 0 });
  expect(fromFace.matteringAtEnds.map((one) => Number(one.toFixed(12)))).toEqual([0.025, 0.5]);
});

test("a shift that is far outside a tolerance of the reading at the near end only is named", () => {
  const instrument = { tolerance: 1, toleranceBasis: "percent of reading" } as const;
  const { findings } = findCauses(planted({ seen: (part) => part + 0.003 }, { instrument }));
  expect(findings.map(({ id }) => id)).toContain("datum-shifted");
});

test("a reference that lies far outside the range makes no end at which the signal stands still", () => {
  const mistyped = planted(
    { sheet: (readings) => readings.with(8, { ...readings[8]!, reference: 9955.5 }).slice(0, 11) },
    { hasCounts: false },
  );
  expect(mistyped.stages.flatMap(({ plateaus }) => plateaus)).toEqual([]);
  expect([...mistyped.slips, ...mistyped.wild].map(({ index }) => index)).toContain(8);
});

test("a fault at the sensor leaves the stages after it alone, and one after it leaves the sensor alone", () => {
  const errors = (fault: Parameters<typeof planted>[0]) =>
    planted(fault).stages.map(({ line }) => Math.round(line?.errorAtUpper.percentSpan ?? Number.NaN) + 0);
  expect(errors({ seen: (part) => part + 0.03 })).toEqual([3, 0]);
  expect(errors({ value: (part) => part + 0.03 })).toEqual([0, 3]);
  expect(errors({ seen: (part) => part - 0.02, value: (part) => part + 0.03 })).toEqual([-2, 3]);
});
