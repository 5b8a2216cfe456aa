import { expect, test } from "vitest";
import { directionCauses } from "../../../src/verdict/causes/direction-causes.ts";
import type { Moment } from "../../computed/faults/faulty-loop.ts";
import { nothingWrong, planted, rowsOf } from "./planted.ts";

const way = ({ direction }: Moment) => (direction === "rising" ? -0.004 : 0.004);
const lag = (part: number, moment: Moment) => (moment.isFirstOfRun ? part : part + way(moment));

test("row 23: a gap of 0.8 % everywhere, at the ends too, is play in the rig", () => {
  const [finding] = directionCauses(planted({ seen: (part, moment) => part + way(moment) }));
  expect(finding).toMatchObject({ row: 23, stage: "rig" });
  // 0.02 % of noise, 44 readings: the gap to 0.01 %.
  expect(Math.abs((finding?.evidence[0]?.value ?? 0) + 0.8)).toBeLessThan(0.02);
});

test("row 22: half the gap at the ends, where a run begins settled, is a lag; it may sit in the controller", () => {
  expect(directionCauses(planted({ seen: lag }))).toMatchObject([{ row: 22, stage: "sensor" }]);
  expect(directionCauses(planted({ value: lag }))).toMatchObject([{ row: 22, stage: "scaling" }]);
});

test("a gap that closes at both ends is hysteresis or lag, and says both", () => {
  const [finding] = directionCauses(planted({ seen: (part, moment) => part + 4 * part * (1 - part) * way(moment) }));
  expect(finding?.title).toContain("hysteresis");
});

test("a gap of one cycle alone, and none, are no finding", () => {
  const once = planted({ seen: (part, moment) => (moment.cycle === 1 ? part + way(moment) : part) });
  expect(rowsOf(directionCauses, once)).toEqual([]);
  const points = Array.from({ length: 21 }, (_, place) => place / 20);
  const uneven = { seen: (part: number, moment: Moment) => part + (moment.cycle === 1 ? 4 : 0.4) * way(moment) };
  expect(rowsOf(directionCauses, planted(uneven, { points }))).toEqual([]);
  expect(rowsOf(directionCauses, planted(nothingWrong))).toEqual([]);
});
