import { expect, test } from "vitest";
import { hysteresisTitle } from "../../../src/verdict/causes/direction-causes.ts";
import { causeTitles } from "../../../src/verdict/causes/finding.ts";
import { remedyOf } from "../../../src/verdict/recommendation/cause-remedy.ts";

const cureOf = (row: number, stage: Parameters<typeof remedyOf>[0]["stage"] = "sensor", title = "") =>
  remedyOf({ row, stage, title }).cures;

test("every row of the list of causes has a remedy", () => {
  for (const row of Object.keys(causeTitles).map(Number)) expect(() => cureOf(row)).not.toThrow();
  expect(() => cureOf(35)).toThrow(RangeError);
});

test.each([
  ["wiring", [9, 11, 12, 13, 14, 29, 30, 31]],
  ["set-up", [15, 16, 17, 18, 19, 20, 24, 25]],
  ["sensor", [8, 10, 21, 26]],
  ["readings", [22, 23, 33, 34]],
] as const)("%s cures the rows that lie there", (place, rows) => {
  expect(rows.map((row) => cureOf(row))).toEqual(rows.map(() => place));
});

test("constants cure what the controller makes of a right signal", () => {
  expect([1, 2, 3, 4, 5, 6, 7, 28].map((row) => cureOf(row, "scaling"))).toEqual(Array(8).fill("scaling"));
});

test("a signal of another kind is set at the sensor, not in the controller", () => {
  expect(cureOf(1, "sensor")).toBe("set-up");
  expect(cureOf(2, "sensor")).toBe("set-up");
});

test("a gap that closes at both ends is for the forecast to judge, a lag for a longer dwell", () => {
  expect(cureOf(22, "sensor", hysteresisTitle)).toBe("sensor");
  expect(cureOf(22, "sensor", causeTitles[22])).toBe("readings");
});
