import { expect, test } from "vitest";
import { scalingLineSightings } from "../../../../src/verdict/causes/evidence/scaling-line.ts";
import { nothingWrong, planted } from "../planted.ts";

const says = () => ({ says: "It is wrong." });

test("each stage after the sensor has one name, at its own place", () => {
  const both = planted(
    { counts: (part) => part + 0.02, value: (part) => part + 0.1 * (1 - part) },
    { hasCounts: true },
  );
  expect(scalingLineSightings(both, "offset-of-card", says)).toMatchObject([{ stage: "input card" }]);
  expect(scalingLineSightings(both, "low-constant-wrong", says)).toMatchObject([{ stage: "scaling" }]);
  expect(scalingLineSightings(both, "high-constant-wrong", says)).toEqual([]);
});

test("the two full scales and the factor between two units are told to the cause that asks", () => {
  const scale = planted({ value: (part) => (27648 / 32767) * part });
  scalingLineSightings(scale, "full-scale-count-wrong", ({ fullScale }) => {
    expect(fullScale).toEqual([27648, 32767]);
    return says();
  });
  const inches = planted({ shown: (value) => value / 25.4 }, { valueEnds: [200, 1200] });
  const [seen] = scalingLineSightings(inches, "units-mixed-up", ({ unitFactor }) => ({ says: String(unitFactor) }));
  expect(Number(seen?.says)).toBe(1 / 25.4);
  expect(seen?.rivals).toEqual(["high-constant-wrong"]);
});

test("a healthy controller has no name", () => {
  expect(scalingLineSightings(planted(nothingWrong), "high-constant-wrong", says)).toEqual([]);
});
