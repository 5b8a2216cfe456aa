import { expect, test } from "vitest";
import { drifts, timeCauses } from "../../../src/verdict/causes/time-causes.ts";
import { nothingWrong, planted, rowsOf } from "./planted.ts";

const warming = {
  seen: (part: number, { minutes, duration }: { minutes: number; duration: number }) =>
    part + (0.01 * minutes) / duration,
};

test("row 34: 1 % over the phase, by the clock and by the order of the table", () => {
  const [finding] = timeCauses(planted(warming));
  expect(finding).toMatchObject({ row: 34, stage: "sensor" });
  // The clock runs one or two minutes a reading, 1.5 on average, so that 1 % is planted for about the whole phase.
  expect(Math.abs((finding?.evidence[0]?.value ?? 0) - 1)).toBeLessThan(0.1);
  expect(rowsOf(timeCauses, planted(warming, { hasTimes: false }))).toEqual([34]);
});

test("a drift that is sure but does not matter, or is below a step of the display, is none", () => {
  const stage = planted(warming).stages[0]!;
  const small = { rate: 0, total: 0.2, totalStandardUncertainty: 0.001, degreesOfFreedom: 40 };
  expect(drifts({ ...stage, drift: small }, 0.25)).toBe(false);
  expect(drifts({ ...stage, drift: small }, 0.15)).toBe(true);
  expect(drifts({ ...stage, drift: small, resolution: 1 }, 0.15)).toBe(false);
});

test("one cycle and a steady loop tell no drift", () => {
  expect(rowsOf(timeCauses, planted(warming, { cycles: 1 }))).toEqual([]);
  const steady = planted(nothingWrong);
  expect(rowsOf(timeCauses, steady)).toEqual([]);
  expect(drifts(steady.stages[0]!, 0.25)).toBe(false);
});
