import { expect, test } from "vitest";
import { beamFootprint } from "../../../src/analysis/air/beam-footprint.ts";
import { readColumns } from "../../published/read-data.ts";

const { beam_angle = [], distance = [], diameter = [], last_digit = [] } = readColumns("beam-diameters");

test("a beam is as wide as the tables of two level radars say, within half of their last digit", () => {
  for (const [index, angle] of beam_angle.entries()) {
    const found = beamFootprint(distance[index] ?? 0, angle) as number;
    expect(Math.abs(found - (diameter[index] ?? 0))).toBeLessThanOrEqual((last_digit[index] ?? 0) / 2);
  }
  expect(beam_angle).toHaveLength(12);
});

test("a beam of 90° is twice as wide as it is far, and one of 180° has no edge", () => {
  expect(Math.abs((beamFootprint(3, 90) as number) - 6)).toBeLessThan(1e-14 * 6);
  expect(beamFootprint(3, 180)).toEqual({ notDetermined: "a beam of 180° has no edge" });
});

test("the example of the docblock, to its four digits", () => {
  expect(Math.abs((beamFootprint(8, 4) as number) - 0.5587)).toBeLessThan(0.00005);
});
