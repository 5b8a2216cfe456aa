import { expect, test } from "vitest";
import { isSameSensor } from "../../src/record/is-same-sensor.ts";

const sensor = (serial: string | null, adjustment: "none" | "replace" | null = "none") => ({ serial, adjustment });

test("another serial number without a word of a replacement is another sensor", () => {
  expect(isSameSensor(sensor("A-1"), sensor("A-2"))).toBe(false);
  expect(isSameSensor(sensor("A-1", null), sensor("A-2", null))).toBe(false);
});

test("a replacement that was written down, before or now, explains the other number", () => {
  expect(isSameSensor(sensor("A-1"), sensor("A-2", "replace"))).toBe(true);
  expect(isSameSensor(sensor("A-1", "replace"), sensor("A-2"))).toBe(true);
});

test("the same number, or one that is not stated, tells of no change", () => {
  expect(isSameSensor(sensor("A-1"), sensor("A-1"))).toBe(true);
  expect(isSameSensor(sensor(null), sensor("A-2"))).toBe(true);
  expect(isSameSensor(sensor("A-1"), sensor(null))).toBe(true);
});
