import { expect, test } from "vitest";
import { changeBetween } from "../../../src/analysis/years/change-between.ts";

const phase = (errorDistance: number, expandedUncertainty = 0.3, point = 5) => ({
  points: [{ point, errorDistance, expandedUncertainty }],
});
const found = (day: number, asFound: ReturnType<typeof phase> | null, adjustment = "none") => ({
  ...{ day, adjustment, asFound },
  asLeft: null,
});

test("from 1 as found and not touched to 3 a year later: 2 with U 0.5", () => {
  const change = changeBetween(found(0, phase(1)), found(365, phase(3, 0.4)), 5, 100);
  expect(change).toMatchObject({ errorDistance: 2, expandedUncertainty: 0.5, sameStandards: [] });
  expect(change?.years).toBe(365 / 365.25);
  expect(change?.perYear).toBe(2 / (365 / 365.25));
});

test("an adjusted loop starts from what it was left with, and from nothing where it was not read again", () => {
  const taught = { ...found(0, phase(9), "re-teach"), asLeft: phase(0.5) };
  expect(changeBetween(taught, found(365, phase(1)), 5, 100)?.errorDistance).toBe(0.5);
  expect(changeBetween({ ...taught, asLeft: null }, found(365, phase(1)), 5, 100)).toBeUndefined();
});

test("test points within 2 % of span are one, and two visits of one day have no rate", () => {
  expect(changeBetween(found(0, phase(1, 0.3, 7)), found(1, phase(3)), 5, 100)?.errorDistance).toBe(2);
  expect(changeBetween(found(0, phase(1, 0.3, 7.1)), found(1, phase(3)), 5, 100)).toBeUndefined();
  expect(changeBetween(found(0, phase(1)), found(365, null), 5, 100)).toBeUndefined();
  expect(changeBetween(found(7, phase(1)), found(7, phase(3)), 5, 100)?.perYear).toBeNull();
});
