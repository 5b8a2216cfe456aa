import { expect, test } from "vitest";
import { fromZeroScaledAsLiveZero, liveZeroScaledFromZero } from "../../../src/verdict/causes/live-zero-causes.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const liveZeroCauses = [fromZeroScaledAsLiveZero, liveZeroScaledFromZero];

const liveAsZero = (part: number) => 0.2 + 0.8 * part;
const zeroAsLive = (part: number) => 1.25 * part - 0.25;

test("a 4 to 20 mA signal scaled as 0 to 20 mA is found in the controller, on 20 to 4 mA as well", () => {
  expect(findingsOf(liveZeroCauses, planted({ value: liveAsZero }))).toMatchObject([
    { id: "live-zero-scaled-from-zero", stage: "scaling" },
  ]);
  const reverse = planted({ value: (part) => 1 - liveAsZero(1 - part) }, { kind: signalKinds["20–4"] });
  expect(idsOf(liveZeroCauses, reverse)).toEqual(["live-zero-scaled-from-zero"]);
});

test("a 0 to 20 mA signal scaled as 4 to 20 mA is found, and at the sensor where the loop is declared so", () => {
  expect(idsOf(liveZeroCauses, planted({ value: zeroAsLive }, { kind: signalKinds["0–20"] }))).toEqual([
    "from-zero-scaled-as-live-zero",
  ]);
  expect(findingsOf(liveZeroCauses, planted({ seen: zeroAsLive }))).toMatchObject([
    { id: "from-zero-scaled-as-live-zero", stage: "sensor" },
  ]);
  expect(findingsOf(liveZeroCauses, planted({ seen: liveAsZero }, { kind: signalKinds["0–20"] }))).toMatchObject([
    { id: "live-zero-scaled-from-zero" },
  ]);
});

test("in the raw counts it is the range of the card's channel, and no constant stands beside it", () => {
  const [finding] = findingsOf(liveZeroCauses, planted({ counts: liveAsZero }, { hasCounts: true }, ["value"]));
  expect(finding).toMatchObject({ id: "live-zero-scaled-from-zero", stage: "input card" });
  expect(finding?.rivals.map(({ id }) => id)).toEqual(["range-of-card-wrong", "counts-row-wrong"]);
});

test("20 % on a loop that cannot have this mistake is another cause", () => {
  expect(idsOf(liveZeroCauses, planted({ value: liveAsZero }, { kind: signalKinds["0–20"] }))).toEqual([]);
  expect(idsOf(liveZeroCauses, planted({ seen: liveAsZero }))).toEqual([]);
  expect(idsOf(liveZeroCauses, planted({ value: zeroAsLive }))).toEqual([]);
  expect(idsOf(liveZeroCauses, planted({ value: (part) => 0.15 + 0.85 * part }))).toEqual([]);
});

test("nothing is found where nothing is wrong", () => {
  expect(idsOf(liveZeroCauses, planted(nothingWrong))).toEqual([]);
});
