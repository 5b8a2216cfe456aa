import { expect, test } from "vitest";
import { digitsOf } from "../../../src/analysis/plausibility/digits-of.ts";

test("readings share their digits where every number is the same, wherever and whenever they were taken", () => {
  const reading = { reference: 50, signal: 12, counts: 16_000 };
  expect(digitsOf({ ...reading })).toBe(digitsOf(reading));
  for (const other of [
    { reference: 50.1 },
    { signal: 12.001 },
    { signalAtCard: 12 },
    { counts: 16_001 },
    { value: 50 },
  ]) {
    expect(digitsOf({ ...reading, ...other })).not.toBe(digitsOf(reading));
  }
});
