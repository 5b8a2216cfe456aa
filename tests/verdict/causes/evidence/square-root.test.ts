import { expect, test } from "vitest";
import { madeFunction } from "../../../../src/verdict/causes/evidence/square-root.ts";
import { planted } from "../planted.ts";

const made = (value: (part: number) => number) => {
  const evidence = planted({ value });
  return evidence.stages.map((stage) => madeFunction(evidence.readings, stage, evidence.mattering));
};

test("a root or a square that the controller takes is told at its stage, and none at the sensor", () => {
  expect(made((part) => Math.sqrt(Math.max(0, part)))).toEqual([undefined, "square root"]);
  expect(made((part) => part ** 2)).toEqual([undefined, "square"]);
});

test("a straight line, a wrong constant, a bow and a root that one reading contradicts are none", () => {
  expect(made((part) => part)).toEqual([undefined, undefined]);
  expect(made((part) => 0.2 + 0.8 * part)).toEqual([undefined, undefined]);
  expect(made((part) => part + 0.3 * part * (1 - part))).toEqual([undefined, undefined]);
  const evidence = planted({
    value: (part) => Math.sqrt(Math.max(0, part)),
    sheet: (readings) => readings.with(3, { ...readings[3]!, value: 50 }),
  });
  expect(evidence.stages.map((stage) => madeFunction(evidence.readings, stage, evidence.mattering))).toEqual([
    undefined,
    undefined,
  ]);
});

test("a sensor with the same curve has no function of the controller", () => {
  const evidence = planted({ seen: (part) => Math.sqrt(Math.max(0, part)) });
  expect(evidence.stages.map((stage) => madeFunction(evidence.readings, stage, evidence.mattering))).toEqual([
    undefined,
    undefined,
  ]);
});

test("a root that is cut off near its zero is one as well, and so is one of a value alone", () => {
  expect(made((part) => (part < 0.08 ? 0 : Math.sqrt(part)))).toEqual([undefined, "square root"]);
  const alone = planted({ value: (part) => Math.sqrt(Math.max(0, part)) }, {}, ["signal"]);
  expect(alone.stages.map((stage) => madeFunction(alone.readings, stage, alone.mattering))).toEqual(["square root"]);
});
