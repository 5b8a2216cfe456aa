import { expect, expectTypeOf, test } from "vitest";
import {
  type Calibration,
  calibrationSchema,
  loopCheckSchema,
  readingSchema,
  standardSchema,
  tripSchema,
} from "../../src/model/calibration.ts";
import { directions, phases } from "../../src/model/calibration-words.ts";

test("the smallest rows of each table are accepted", () => {
  const standard = { standard: "GB-1", certificate: "K-7", calibratedOn: "2025-06-01", dueOn: "2027-06-01" };
  expect(standardSchema.safeParse(standard).success).toBe(true);
  expect(calibrationSchema.safeParse({ calibration: "C-1", tag: "LT-1" }).success).toBe(true);
  const reading = { calibration: "C-1", phase: "as_found", direction: "rising", reference: 0 };
  expect(readingSchema.safeParse(reading).success).toBe(true);
  const trip = { calibration: "C-1", phase: "as_left", output: "Q1", direction: "approach", reference: 50 };
  expect(tripSchema.safeParse(trip).success).toBe(true);
  expect(loopCheckSchema.safeParse({ calibration: "C-1", item: "polarity", result: "pass" }).success).toBe(true);
});

test("a day that is not in the calendar, half a cycle and an unknown unit are refused", () => {
  expect(calibrationSchema.safeParse({ calibration: "C-1", tag: "LT-1", performedOn: "2026-02-30" }).success).toBe(
    false,
  );
  expect(readingSchema.shape.cycle.safeParse(1.5).success).toBe(false);
  expect(readingSchema.shape.cycle.safeParse(0).success).toBe(false);
  expect(standardSchema.shape.uncertaintyUnit.safeParse("furlong").success).toBe(false);
});

test("there are two phases and two directions", () => {
  expect(phases).toEqual(["as_found", "as_left"]);
  expect(directions).toEqual(["rising", "falling"]);
});

test("who reads the day or the person of a calibration has to say what stands there when it is missing", () => {
  expectTypeOf<Calibration["performedOn"]>().toEqualTypeOf<string | undefined>();
  expectTypeOf<Calibration["performedBy"]>().toEqualTypeOf<string | undefined>();
});
