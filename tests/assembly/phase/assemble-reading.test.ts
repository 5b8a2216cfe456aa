import { expect, test } from "vitest";
import { analyseReadings } from "../../../src/analysis/readings/analyse-readings.ts";
import { assembleReading } from "../../../src/assembly/phase/assemble-reading.ts";
import { readingSchema } from "../../../src/record/phase-schema.ts";
import { loop, reading } from "../../analysis/sample-loop.ts";

test("a reading knows its line", () => {
  expect(
    assembleReading(
      {
        reading: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.16 },
        point: 50,
        cycle: 1,
        tolerance: { low: -1, high: 1 },
        stageErrors: {},
        shares: {},
        isOutsideAnyway: false,
      },
      14,
      "pass",
    ).row,
  ).toBe(14);
});

const assembled = (read: Parameters<typeof reading>[1], verdict: "pass" | undefined = undefined) => {
  const [analysed] = analyseReadings([reading(50, read)], loop, "signal");
  return assembleReading(analysed!, 2, verdict);
};

test("what there is is carried over, and is a reading by the schema", () => {
  const read = { signal: 12, counts: 13824, value: 5, time: "2026-03-04T08:41", remark: "draught", cycle: 2 };
  const found = assembled(read, "pass");
  expect(found).toMatchObject({ ...read, row: 2, point: 50, indicated: 50, errorDistance: 0, verdict: "pass" });
  expect(found).toMatchObject({ shares: { sensor: 0, inputCard: 0, scaling: 0 }, toleranceLow: -1, toleranceHigh: 1 });
  expect(readingSchema.parse(found)).toEqual(found);
});

test("what there is not is absent, not null or empty", () => {
  const none = assembled({ rejected: "slipped" });
  expect(Object.keys(none)).toEqual([
    ...["row", "cycle", "direction", "point", "reference", "toleranceLow", "toleranceHigh", "leftOut"],
  ]);
  expect(readingSchema.parse(none)).toEqual(none);
});
