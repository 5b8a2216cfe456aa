import { expect, test } from "vitest";
import { dayNumber } from "../../../src/analysis/years/day-number.ts";
import type { LimitCrossing } from "../../../src/analysis/years/limit-crossing.ts";
import { monthsLater } from "../../../src/analysis/years/next-due.ts";
import { controlChartInterval } from "../../../src/verdict/intervals/control-chart-interval.ts";
import { usualIntervalSettings } from "../../../src/verdict/intervals/interval-settings.ts";

const crossingOn = (day: number): LimitCrossing => ({ day, limit: "upper", isAlready: false });
const ofThirtyDays = (months: number) => 30 * months;

test("three months of thirty days lie before day 100, the fourth does not", () => {
  expect(controlChartInterval(crossingOn(100), ofThirtyDays, usualIntervalSettings)).toEqual({ months: 3, cap: null });
});

test("a month that ends on the very day is too long", () => {
  expect(controlChartInterval(crossingOn(90), ofThirtyDays, usualIntervalSettings).months).toBe(2);
  expect(controlChartInterval(crossingOn(91), ofThirtyDays, usualIntervalSettings).months).toBe(3);
});

test("a limit that is met at once, or within a month, leaves no month", () => {
  const atOnce = { day: 0, limit: "lower", isAlready: true } as const;
  expect(controlChartInterval(atOnce, ofThirtyDays, usualIntervalSettings)).toEqual({ months: 0, cap: null });
  expect(controlChartInterval(crossingOn(29), ofThirtyDays, usualIntervalSettings).months).toBe(0);
});

test("a forecast that meets no limit gives the longest interval, and says that a cap did", () => {
  expect(controlChartInterval(undefined, ofThirtyDays, usualIntervalSettings)).toEqual({ months: 36, cap: "longest" });
  expect(controlChartInterval(crossingOn(36 * 30 + 1), ofThirtyDays, usualIntervalSettings).cap).toBeNull();
});

test("calendar months are taken as calendars count them", () => {
  const dayAfter = (months: number) => dayNumber(monthsLater("2026-08-31", months));
  const interval = (on: string) =>
    controlChartInterval(crossingOn(dayNumber(on)), dayAfter, usualIntervalSettings).months;
  expect(interval("2027-02-28")).toBe(5);
  expect(interval("2027-03-01")).toBe(6);
});
