import { expect, test } from "vitest";
import { hysteresis, notSettled, playInRig } from "../../../src/verdict/causes/direction-causes.ts";
import type { Moment } from "../../computed/faults/faulty-loop.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const directionCauses = [hysteresis, notSettled, playInRig];

const way = ({ direction }: Moment) => (direction === "rising" ? -0.004 : 0.004);
const lag = (part: number, moment: Moment) => (moment.isFirstOfRun ? part : part + way(moment));

test("play in rig: a gap of 0.8 % everywhere, at the ends too, is play in the rig", () => {
  const [finding] = findingsOf(directionCauses, planted({ seen: (part, moment) => part + way(moment) }));
  expect(finding).toMatchObject({ id: "play-in-rig", stage: "rig" });
  // 0.02 % of noise, 44 readings: the gap to 0.01 %.
  expect(Math.abs((finding?.evidence[0]?.value ?? 0) + 0.8)).toBeLessThan(0.02);
});

test("output not settled: half the gap at the ends, where a run begins settled, is a lag; it may sit in the controller", () => {
  expect(findingsOf(directionCauses, planted({ seen: lag }))).toMatchObject([
    { id: "output-not-settled", stage: "sensor" },
  ]);
  expect(findingsOf(directionCauses, planted({ value: lag }))).toMatchObject([
    { id: "output-not-settled", stage: "scaling" },
  ]);
});

test("a gap that closes at both ends is hysteresis or lag, and says both", () => {
  const [finding] = findingsOf(
    directionCauses,
    planted({ seen: (part, moment) => part + 4 * part * (1 - part) * way(moment) }),
  );
  expect(finding?.title).toContain("hysteresis");
});

test("a gap of one cycle alone, and none, are no finding", () => {
  const once = planted({ seen: (part, moment) => (moment.cycle === 1 ? part + way(moment) : part) });
  expect(idsOf(directionCauses, once)).toEqual([]);
  const points = Array.from({ length: 21 }, (_, place) => place / 20);
  const uneven = { seen: (part: number, moment: Moment) => part + (moment.cycle === 1 ? 4 : 0.4) * way(moment) };
  expect(idsOf(directionCauses, planted(uneven, { points }))).toEqual([]);
  expect(idsOf(directionCauses, planted(nothingWrong))).toEqual([]);
});

test("each sentence says of the ends what was measured there, and play leaves a lag and a hysteresis open", () => {
  const [lagging] = findingsOf(directionCauses, planted({ seen: lag }));
  expect(lagging?.says).toContain("It is smaller where the target turned round.");
  const [play] = findingsOf(directionCauses, planted({ seen: (part, moment) => part + way(moment) }));
  expect(play?.rivals.map(({ id }) => id)).toEqual(["output-not-settled", "hysteresis-of-sensor"]);
  const [behind] = findingsOf(directionCauses, planted({ value: (part, moment) => part + way(moment) }));
  expect(behind).toMatchObject({ id: "output-not-settled", stage: "scaling" });
  expect(behind?.says).toContain(
    "It is the same where the target turned round. This is consistent with a filter or a dead band",
  );
});
