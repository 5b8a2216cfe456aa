import { expect, test } from "vitest";
import { controllerValueCauses } from "../../../src/verdict/causes/controller-value-causes.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
import { nothingWrong, planted, rowsOf } from "./planted.ts";

test("row 28: a value that stands still at 80 while the signal moves on", () => {
  const [finding] = controllerValueCauses(planted({ value: (part) => Math.min(part, 0.8) }));
  expect(finding).toMatchObject({ row: 28, stage: "scaling" });
  expect(finding?.says).toContain("stands still at 80 EU");
});

test("row 28: whole numbers with the fraction cut off lie half a step low", () => {
  const [finding] = controllerValueCauses(planted({ shown: Math.trunc }, { valueEnds: [0, 7] }));
  expect(finding?.says).toContain("cuts the fraction off");
  const [rounded] = controllerValueCauses(planted({ shown: Math.round }, { valueEnds: [0, 7] }));
  expect(rounded?.says).toContain("too coarse");
});

test("row 31: a value that does not follow the signal", () => {
  let place = 0;
  const other = planted({ value: () => 0.4 + 0.01 * Math.sin(12.9898 * ++place) });
  expect(rowsOf(controllerValueCauses, other)).toEqual([31]);
});

test("the clamp at zero of a 0 to 20 mA signal scaled as 4 to 20 mA is part of that mistake", () => {
  const cut = planted({ value: (part) => Math.max(0, 1.25 * part - 0.25) }, { kind: signalKinds["0–20"] });
  expect(rowsOf(controllerValueCauses, cut)).toEqual([]);
});

test("nothing is found on a healthy loop, nor where the sensor itself stands still", () => {
  expect(rowsOf(controllerValueCauses, planted(nothingWrong))).toEqual([]);
  expect(rowsOf(controllerValueCauses, planted({ seen: (part) => Math.min(part, 0.75) }))).toEqual([]);
});
