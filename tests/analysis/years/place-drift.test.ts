import { expect, test } from "vitest";
import { isDetermined, notDetermined } from "../../../src/analysis/figures/figure.ts";
import { dayNumber } from "../../../src/analysis/years/day-number.ts";
import { placeDrift, placeErrors, sinceAdjustment } from "../../../src/analysis/years/place-drift.ts";

const point = (errorDistance: number) => ({ point: 5, errorDistance, toleranceLow: -10, toleranceHigh: 10 });
const records = [0, 1, 2.1, 2.9].map((error, year) => ({
  day: dayNumber("2020-01-01") + Math.round(365.25 * year),
  adjustment: "none",
  asFound: { points: [point(error)] },
  asLeft: null,
}));
const since = sinceAdjustment(records);
const place = {
  distance: 5,
  limits: { low: -10, high: 10 },
  errorIn: (phase: (typeof records)[number]["asFound"]) => phase.points[0]?.errorDistance,
};

test("a place has its errors, its line, the day its band meets a limit, and the part of its tolerance now", () => {
  const { errors, line, meets, partNow } = placeDrift(placeErrors(place, since), since.lastDay);
  expect(errors.map(({ error }) => error)).toEqual([0, 1, 2.1, 2.9]);
  expect(isDetermined(line) && line.perYear.value).toBeCloseTo(0.98, 2);
  expect(isDetermined(meets) && meets.limit).toBe("upper");
  expect(partNow).toBe(0.29);
});

test("a smaller scatter, known from elsewhere, lets the band meet its limit later", () => {
  const own = placeDrift(placeErrors(place, since), since.lastDay);
  const known = placeDrift(placeErrors(place, since), since.lastDay, {
    standardDeviation: 0.001,
    degreesOfFreedom: 30,
  });
  const dayOf = ({ meets }: typeof own) => (isDetermined(meets) ? meets.day : 0);
  expect(dayOf(known)).toBeGreaterThan(dayOf(own));
  expect(isDetermined(known.line) && known.line.scatter.degreesOfFreedom).toBe(30);
});

test("without a line there is no forecast, whatever scatter is known", () => {
  const one = placeErrors(place, sinceAdjustment(records.slice(0, 1)));
  const none = placeDrift(one, since.lastDay);
  expect(none.line).toEqual(notDetermined("not enough: one record"));
  expect(none.meets).toEqual(none.line);
  expect(placeDrift(one, since.lastDay, { standardDeviation: 1, degreesOfFreedom: 9 })).toEqual(none);
  expect(placeErrors(place, sinceAdjustment([])).fitted).toEqual(notDetermined("not enough: no record"));
});
