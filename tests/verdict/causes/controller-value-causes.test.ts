import { expect, test } from "vitest";
import { clampedOrCut, otherChannel } from "../../../src/verdict/causes/controller-value-causes.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const controllerValueCauses = [clampedOrCut, otherChannel];

test("value clamped or cut: a value that stands still at 80 while the signal moves on", () => {
  const [finding] = findingsOf(controllerValueCauses, planted({ value: (part) => Math.min(part, 0.8) }));
  expect(finding).toMatchObject({ id: "value-clamped-or-cut", stage: "scaling" });
  expect(finding?.says).toContain("stands still at 80 EU");
});

test("value clamped or cut: whole numbers with the fraction cut off lie half a step low", () => {
  const [finding] = findingsOf(controllerValueCauses, planted({ shown: Math.trunc }, { valueEnds: [0, 7] }));
  expect(finding?.says).toContain("cuts the fraction off");
  const [rounded] = findingsOf(controllerValueCauses, planted({ shown: Math.round }, { valueEnds: [0, 7] }));
  expect(rounded?.says).toContain("too coarse");
});

test("other channel: a value that does not follow the signal", () => {
  let place = 0;
  const other = planted({ value: () => 0.4 + 0.01 * Math.sin(12.9898 * ++place) });
  expect(idsOf(controllerValueCauses, other)).toEqual(["other-channel"]);
});

test("the clamp at zero of a 0 to 20 mA signal scaled as 4 to 20 mA is part of that mistake", () => {
  const cut = planted({ value: (part) => Math.max(0, 1.25 * part - 0.25) }, { kind: signalKinds["0–20"] });
  expect(idsOf(controllerValueCauses, cut)).toEqual([]);
});

test("nothing is found on a healthy loop, nor where the sensor itself stands still", () => {
  expect(idsOf(controllerValueCauses, planted(nothingWrong))).toEqual([]);
  expect(idsOf(controllerValueCauses, planted({ seen: (part) => Math.min(part, 0.75) }))).toEqual([]);
});
