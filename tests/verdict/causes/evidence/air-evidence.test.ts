import { expect, test } from "vitest";
import { airEvidence } from "../../../../src/verdict/causes/evidence/air-evidence.ts";
import { planted } from "../planted.ts";

const withAir = (taughtAt?: number, airTemperature?: number) =>
  planted(
    {},
    {
      instrument: taughtAt === undefined ? {} : { taughtAt },
      calibration: airTemperature === undefined ? {} : { airTemperature },
    },
  );

test("20 °C taught and 30 °C on the day need a gain of √(293.15/303.15) = 0.98337", () => {
  const gain = Math.sqrt(293.15 / 303.15);
  expect(airEvidence(withAir(20, 30), gain).agrees).toBe(true);
  expect(airEvidence(withAir(20, 22), gain).agrees).toBe(false);
  const needed = airEvidence(withAir(20, 30), gain).evidence[1]!.value;
  expect(Math.abs(needed - 30)).toBeLessThan(1e-9);
});

test("what is not stated is left open", () => {
  expect(airEvidence(withAir(undefined, 30), 0.98)).toEqual({ evidence: [] });
  expect(airEvidence(withAir(20), 0.98).agrees).toBeUndefined();
});
