import { expect, test } from "vitest";
import { scalingCauses } from "../../../src/verdict/causes/scaling-causes.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
import { nothingWrong, planted, rowsOf } from "./planted.ts";

test.each([
  [3, "low constant off by 10 %", (part: number) => part + 0.1 * (1 - part)],
  [4, "high constant off by 10 %", (part: number) => 1.1 * part],
  [5, "27648 read as 32767", (part: number) => (27648 / 32767) * part],
  [5, "4095 read as 4000", (part: number) => (4095 / 4000) * part],
  [7, "constants exchanged", (part: number) => 1 - part],
  [9, "offset of 2 %", (part: number) => part + 0.02],
  [11, "251 Ω in place of 250 Ω, twice over", (part: number) => 1.008 * (part + 0.25) - 0.25],
] as const)("row %i: %s", (row, _, value) => {
  expect(rowsOf(scalingCauses, planted({ value }))).toEqual([row]);
});

test.each([25.4, 10, 0.001])("row 6: a value that is %f times what it is to be, about its own zero", (factor) => {
  const evidence = planted({ shown: (value) => factor * value }, { valueEnds: [200, 1200] });
  expect(rowsOf(scalingCauses, evidence)).toEqual([6]);
});

test("a gain of 10 about the low end of the range is a constant, not a unit", () => {
  const evidence = planted({ value: (part) => 10 * part }, { valueEnds: [200, 1200] });
  expect(rowsOf(scalingCauses, evidence)).toEqual([4]);
});

test("with counts between, the stage that is wrong is named: card for the counts, scaling for the value", () => {
  const gain = (part: number) => (27648 / 32767) * part;
  expect(scalingCauses(planted({ counts: gain }, { hasCounts: true }))).toMatchObject([
    { row: 5, stage: "input card" },
  ]);
  expect(scalingCauses(planted({ value: gain }, { hasCounts: true }))).toMatchObject([{ row: 5, stage: "scaling" }]);
});

test("a gain about 0 V of a 0 to 10 V signal is that of a constant, too: the one names the other as its rival", () => {
  const [finding] = scalingCauses(planted({ value: (part) => 1.02 * part }, { kind: signalKinds["0–10"] }));
  expect(finding?.row).toBe(4);
  expect(finding?.rivals.join()).toContain("(11)");
});

test("both ends wrong is said so", () => {
  const [finding] = scalingCauses(planted({ value: (part) => 0.05 + 1.1 * part }));
  expect(finding?.title).toBe("both scaling constants wrong");
});

test("nothing is found on a healthy loop, nor where the sensor alone is wrong", () => {
  expect(rowsOf(scalingCauses, planted(nothingWrong))).toEqual([]);
  expect(rowsOf(scalingCauses, planted({ seen: (part) => part + 0.05 }))).toEqual([]);
});
