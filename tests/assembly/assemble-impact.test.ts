import { describe, expect, test } from "vitest";
import { assembleImpact } from "../../src/assembly/assemble-impact.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { recordSummary } from "../../src/record/record-summary.ts";
import type { RecordSummary } from "../../src/record/record-summary-schema.ts";
import { sampleRecord } from "../charts/sample-record.ts";
import { demoRecord } from "../report/demo-records.ts";

const shifted = demoRecord("LT-310");
const filed = (performedOn: string, more: Partial<RecordSummary> = {}): RecordSummary => ({
  ...recordSummary(sealRecord(shifted)),
  calibration: `C-${performedOn}`,
  performedOn,
  ...more,
});
const impactOf = (more: Partial<CalibrationRecord> = {}) => assembleImpact({ ...shifted, ...more }).impact!;

describe("a loop that was found out of tolerance by a shift of 22 mm", () => {
  test("is outside over all of its test points, at each place by about the shift", () => {
    const { rows, outside, faults, statement } = impactOf();
    expect(statement).toBe("fail");
    expect(faults).toBe(0);
    expect(outside).toHaveLength(1);
    for (const { errorDistance, isOutside, toleranceHigh } of rows) {
      expect(Math.abs(errorDistance! - 22)).toBeLessThan(1.5); // planted shift 22 mm, noise and re-taught ends beside it
      expect(toleranceHigh).toBe(13.5); // 0.5 % of 2700 mm
      expect(isOutside).toBe(true);
    }
    expect(rows.map(({ distance }) => distance)).toEqual([300, 420, 975, 1650, 2325, 3000]);
  });

  test("has been so since nobody knows, where no filed records are given", () => {
    expect(impactOf().since).toBeNull();
    expect(impactOf().notDetermined.since).toBe("no filed records of the tag were given");
    expect(impactOf({ history: [] }).notDetermined.since).toBe("there is no filed record of the tag before this one");
  });

  test("has been so since the last record that left it in tolerance, not since the last one", () => {
    const failed = { asLeft: null };
    const history = [filed("2024-03-01"), filed("2025-03-01"), filed("2025-09-01", failed)];
    expect(history[2]!.asFound!.statement).toBe("fail");
    expect(impactOf({ history }).since).toEqual({
      performedOn: "2025-03-01",
      calibration: "C-2025-03-01",
      revision: 1,
    });
    const never = [filed("2025-09-01", failed)];
    expect(impactOf({ history: never }).notDetermined.since).toBe(
      "no filed record before this one left the loop in tolerance",
    );
  });

  test("carries what was decided, and says null where nothing was", () => {
    const { impactDecision, impactDecidedBy, impactDecidedOn, ...undecided } = shifted.calibration;
    expect(impactOf().decision).toBe(impactDecision);
    expect([impactOf().decidedBy, impactOf().decidedOn]).toEqual([impactDecidedBy, impactDecidedOn]);
    expect(impactOf({ calibration: undecided }).decision).toBeNull();
  });
});

test("an error in the controller's unit is the error in distance by the scaling", () => {
  const record = demoRecord("LT-702");
  const { rangeLower, rangeUpper, valueLower, valueUpper } = record.instrument;
  const { rows, of } = assembleImpact(record).impact!;
  expect(of).toBe("controller");
  for (const { errorDistance, errorValue } of rows) {
    const share = errorDistance! / (rangeUpper - rangeLower);
    expect(Math.abs(errorValue! - share * (valueUpper! - valueLower!))).toBeLessThan(1e-9); // two roundings of doubles
  }
});

test.each(["pass", "conditional pass"] as const)("a loop found %s has none", (verdict) => {
  const { asFound } = shifted.phases;
  const { switching: _, ...analogAlone } = shifted;
  expect(assembleImpact({ ...analogAlone, phases: { asFound: { ...asFound!, verdict } } })).toEqual({});
});

test.each(["conditional fail", "cannot be decided"] as const)("a loop found %s has one", (verdict) => {
  const { asFound } = shifted.phases;
  expect(assembleImpact({ ...shifted, phases: { asFound: { ...asFound!, verdict } } }).impact).toBeDefined();
});

test("a loop whose switched output alone was found outside has one, of that statement", () => {
  const { asFound } = shifted.phases;
  const record = { ...shifted, phases: { asFound: { ...asFound!, verdict: "pass" as const } } };
  expect(shifted.switching?.[0]?.phases.asFound?.statement).toBe("fail");
  expect(assembleImpact(record).impact?.statement).toBe("fail");
});

test("a record that was never read as found has none", () => {
  expect(assembleImpact(sampleRecord({ phases: ["asLeft"] }))).toEqual({});
});

test("a mean error on the limit, but for how a decimal number is stored, is in no stretch outside", () => {
  const asFound = shifted.phases.asFound!;
  const at = (percentSpan: number) => ({
    ...asFound,
    points: asFound.points.map((point) => ({ ...point, up: null, down: null, mean: percentSpan })),
  });
  // ±0.5 % of span; a part in 10¹⁴ beyond it is no more than a rounding, a part in 10⁶ is.
  expect(impactOf({ phases: { asFound: at(0.5 * (1 + 1e-14)) } }).outside).toEqual([]);
  expect(impactOf({ phases: { asFound: at(0.5 * (1 + 1e-6)) } }).outside).toHaveLength(1);
});
