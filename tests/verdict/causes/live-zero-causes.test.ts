import { expect, test } from "vitest";
import { liveZeroCauses, liveZeroRow } from "../../../src/verdict/causes/live-zero-causes.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
import { nothingWrong, planted, rowsOf } from "./planted.ts";

const liveAsZero = (part: number) => 0.2 + 0.8 * part;
const zeroAsLive = (part: number) => 1.25 * part - 0.25;

test("a 4 to 20 mA signal scaled as 0 to 20 mA is row 1 in the controller, on 20 to 4 mA as well", () => {
  expect(liveZeroCauses(planted({ value: liveAsZero }))).toMatchObject([{ row: 1, stage: "scaling" }]);
  const reverse = planted({ value: (part) => 1 - liveAsZero(1 - part) }, { kind: signalKinds["20–4"] });
  expect(rowsOf(liveZeroCauses, reverse)).toEqual([1]);
});

test("a 0 to 20 mA signal scaled as 4 to 20 mA is row 2, and at the sensor where the loop is declared so", () => {
  expect(rowsOf(liveZeroCauses, planted({ value: zeroAsLive }, { kind: signalKinds["0–20"] }))).toEqual([2]);
  expect(liveZeroCauses(planted({ seen: zeroAsLive }))).toMatchObject([{ row: 2, stage: "sensor" }]);
  expect(liveZeroCauses(planted({ seen: liveAsZero }, { kind: signalKinds["0–20"] }))).toMatchObject([{ row: 1 }]);
});

test("20 % on a loop that cannot have this mistake is another cause", () => {
  expect(rowsOf(liveZeroCauses, planted({ value: liveAsZero }, { kind: signalKinds["0–20"] }))).toEqual([]);
  expect(rowsOf(liveZeroCauses, planted({ seen: liveAsZero }))).toEqual([]);
  expect(rowsOf(liveZeroCauses, planted({ value: zeroAsLive }))).toEqual([]);
  expect(rowsOf(liveZeroCauses, planted({ value: (part) => 0.15 + 0.85 * part }))).toEqual([]);
});

test("nothing is found where nothing is wrong", () => {
  const evidence = planted(nothingWrong);
  expect(rowsOf(liveZeroCauses, evidence)).toEqual([]);
  expect(liveZeroRow(evidence, evidence.stages[1]!)).toBeUndefined();
});
