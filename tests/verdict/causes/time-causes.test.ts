import { expect, test } from "vitest";
import { warmUpOrDrift } from "../../../src/verdict/causes/time-causes.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const timeCauses = [warmUpOrDrift];

const warming = {
  seen: (part: number, { minutes, duration }: { minutes: number; duration: number }) =>
    part + (0.01 * minutes) / duration,
};

test("warm up or drift: 1 % over the phase, by the clock and by the order of the table", () => {
  const [finding] = findingsOf(timeCauses, planted(warming));
  expect(finding).toMatchObject({ id: "warm-up-or-drift", stage: "sensor" });
  // The clock runs one or two minutes a reading, 1.5 on average, so that 1 % is planted for about the whole phase.
  expect(Math.abs((finding?.evidence[0]?.value ?? 0) - 1)).toBeLessThan(0.1);
  expect(idsOf(timeCauses, planted(warming, { hasTimes: false }))).toEqual(["warm-up-or-drift"]);
});

test("one cycle and a steady loop tell no drift", () => {
  expect(idsOf(timeCauses, planted(warming, { cycles: 1 }))).toEqual([]);
  expect(idsOf(timeCauses, planted(nothingWrong))).toEqual([]);
});
