import { expect, test } from "vitest";
import { analyseReadings } from "../../src/analysis/analyse-readings.ts";
import { assembleReading, typedDecimals } from "../../src/record/assemble-reading.ts";
import { readingSchema } from "../../src/record/phase-schema.ts";
import { loop, reading } from "../analysis/sample-loop.ts";
import { tableRows } from "./phase-of.ts";

test("a reading knows its line", () => {
  expect(
    assembleReading(
      {
        reading: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.16 },
        point: 50,
        cycle: 1,
        tolerance: { low: -1, high: 1 },
        shares: {},
        isFaultInRange: false,
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

test("12.160 was typed with three decimals", () => {
  const decimals = typedDecimals(
    [
      {
        file: "readings.csv",
        line: 2,
        cells: { reference: "50.0", signal: "12.160" },
        row: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.16 },
      },
    ],
    () => "point",
  );
  expect(decimals.signal).toBe(3);
  expect(decimals).toEqual({ reference: 1, signal: 3, counts: 0, value: 0 });
});

test("the most decimals of a column count, by the decimal mark of the file; a cell that is no number has none", () => {
  const rows = tableRows([reading(0.25, { signal: 4.1 }), reading(50, { signal: 12.125 })], "comma");
  expect(typedDecimals(rows, () => "comma")).toMatchObject({ reference: 2, signal: 3 });
  expect(typedDecimals(rows, () => "point")).toMatchObject({ reference: 0, signal: 0 });
  expect(typedDecimals([], () => "point")).toEqual({ reference: 0, signal: 0, counts: 0, value: 0 });
});
