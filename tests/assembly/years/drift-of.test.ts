import { expect, test } from "vitest";
import { driftOf } from "../../../src/assembly/years/drift-of.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { recordSummary } from "../../../src/record/record-summary.ts";
import { demoRecord } from "../../report/demo-records.ts";

const record = demoRecord("LT-310");
const before = { ...recordSummary(sealRecord(record)), calibration: "C-2025-015", performedOn: "2025-09-17" };

test("a record without a history says so, one with an empty history too", () => {
  expect(driftOf(record).earlier).toBeNull();
  expect(driftOf({ ...record, history: [] }).earlier).toBe(0);
});

test("the drift is what was found now less what the record before left, point by point", () => {
  const [interval] = driftOf({ ...record, history: [before] }).changes;
  const found = record.phases.asFound!.points.find(({ point }) => point === interval?.point)!;
  // Within 2 % of span of it: the references were not set to the same millimetre.
  const left = before.asLeft!.points.find(({ point }) => Math.abs(point - found.point) <= 54)!;
  expect(interval?.errorDistance).toBe(found.errorDistance - left.errorDistance);
  expect(interval).toMatchObject({ from: "C-2025-015", to: "C-2026-015", adjustment: "re-teach" });
});

test("records of another range or unit, and all before them, are another loop", () => {
  const other = { ...before, calibration: "C-2025-099", rangeUpper: 2500 };
  const later = { ...other, performedOn: "2025-12-01" };
  const earlier = { ...other, performedOn: "2025-01-01" };
  expect(driftOf({ ...record, history: [before, later] }).earlier).toBe(0);
  expect(driftOf({ ...record, history: [earlier, before] }).earlier).toBe(1);
  expect(driftOf({ ...record, history: [{ ...before, distanceUnit: "cm" }] }).earlier).toBe(0);
});

test("where the controller's values were read, the drift is that of the whole loop", () => {
  expect(driftOf(record).isOfWholeLoop).toBe(false);
  expect(driftOf(demoRecord("LT-702")).isOfWholeLoop).toBe(true);
});
