import { expect, test } from "vitest";
import { distanceAxis } from "../../src/charts/distance-axis.ts";
import { frozen } from "./frozen.ts";
import { sampleRecord } from "./sample-record.ts";

test("a chart may ask for more room", () => {
  const record = sampleRecord({ rangeLower: 0, rangeUpper: 100, phases: ["asLeft"] });
  for (const reading of record.phases.asLeft?.readings ?? []) reading.reference = 50;
  expect(distanceAxis(record, 0.25).xDomain).toEqual([-25, 125]);
});

test("the axis spans the range and what was read beyond it, with 2 % of room", () => {
  const record = sampleRecord({ distanceUnit: "in", rangeLower: 0, rangeUpper: 100, phases: ["asLeft"] });
  const beyond = record.phases.asLeft?.readings[0];
  if (beyond === undefined) throw new Error("the sample has a reading");
  beyond.reference = 150;
  const { xDomain, xTitle } = distanceAxis(frozen(record));
  const least = Math.min(0, ...(record.phases.asLeft?.readings.map(({ reference }) => reference) ?? []));
  const room = 0.02 * (150 - least);
  // Two sums of numbers about 150: 1e-12 absolute.
  expect(Math.abs(xDomain[0] - (least - room))).toBeLessThan(1e-12);
  expect(Math.abs(xDomain[1] - (150 + room))).toBeLessThan(1e-12);
  expect(xTitle).toBe("reference distance, in");
});
