import { expect, test } from "vitest";
import { sensorLineSightings } from "../../../../src/verdict/causes/evidence/sensor-line.ts";
import { nothingWrong, planted } from "../planted.ts";

const words = (line: { near: string; far: string }) => ({ says: `${line.near}; ${line.far}` });

test("a line has one name, and no other cause sees itself in it", () => {
  const shifted = planted({ seen: (part) => part + 0.02 });
  expect(sensorLineSightings(shifted, "datum-shifted", words)).toHaveLength(1);
  for (const other of ["ends-taught-wrong", "both-ends-taught-wrong", "slope-turned-round"] as const) {
    expect(sensorLineSightings(shifted, other, words)).toEqual([]);
  }
});

test("a sighting has the errors at both ends in words, the numbers of the line, and its own after them", () => {
  const gain = planted({ seen: (part) => 1.02 * part });
  const [seen] = sensorLineSightings(gain, "ends-taught-wrong", ({ near, far, place }) => ({
    says: `${place}: ${near}, ${far}`,
    numbers: [{ name: "of its own", value: 1, unit: "" }],
  }));
  expect(seen?.says).toMatch(/^lower: .* % of span \(.* mm\), \+(?:1\.99|2\.0\d) % of span/u);
  expect(seen?.evidence[0]?.name).toBe("gain");
  expect(seen?.evidence.at(-1)?.name).toBe("of its own");
});

test("a healthy line, and one with the mistake of a live zero, has no name here", () => {
  const ids = ["datum-shifted", "ends-taught-wrong", "both-ends-taught-wrong", "air-temperature"] as const;
  for (const evidence of [planted(nothingWrong), planted({ seen: (part) => 1.25 * part - 0.25 })]) {
    expect(ids.flatMap((id) => sensorLineSightings(evidence, id, words))).toEqual([]);
  }
});
