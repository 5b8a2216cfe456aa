import { expect, test } from "vitest";
import { withColumn } from "../smallest-workbook.ts";
import { told } from "./told.ts";

const at = (...times: readonly string[]) => told(withColumn("readings.csv", "time", ...times));

test("times that go on, or are not there for each reading, are right", async () => {
  expect(await at("10:00", "10:05", "10:05", "10:06", "10:07")).toEqual([]);
  expect(await at("23:50", "23:55", "00:05", "00:06", "00:07")).toEqual([]);
  expect(await at("10:00", "", "09:00", "", "")).toEqual([]);
});

test("times that run backwards are told once a phase, at the first that does", async () => {
  expect(await at("10:00", "10:05", "10:04", "10:03", "10:07")).toEqual(["model/times-backwards readings:4:time"]);
});

test("a day up to two from the work is right, one farther from it is told once", async () => {
  const days = (day: string) => [10, 11, 12, 13, 14].map((hour) => `${day}T${hour}:00`);
  expect(await at(...days("2026-03-02"))).toEqual([]);
  expect(await at(...days("2026-03-06"))).toEqual([]);
  expect(await at(...days("2026-03-01"))).toEqual(["model/time-of-another-day readings:2:time"]);
  expect(await at(...days("2025-03-04"))).toEqual(["model/time-of-another-day readings:2:time"]);
});
