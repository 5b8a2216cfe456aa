import { expect, test } from "vitest";
import { usualIntervalSettings } from "../../../src/verdict/intervals/interval-settings.ts";

test("the usual settings go down faster than up, and a narrow pass less far down than a fail", () => {
  const { extendBy, shortenBy, shortenConditionalBy, extendWithin, leastMonths, mostMonths } = usualIntervalSettings;
  expect(extendBy).toBeGreaterThan(1);
  expect(shortenBy).toBeLessThan(shortenConditionalBy);
  expect(shortenConditionalBy).toBeLessThan(1);
  expect(extendBy * shortenBy).toBeLessThan(1);
  expect(extendWithin).toBe(0.8);
  expect(leastMonths).toBeLessThan(mostMonths);
  expect(Object.isFrozen(usualIntervalSettings)).toBe(true);
});
