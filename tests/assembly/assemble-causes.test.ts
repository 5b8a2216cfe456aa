import { expect, test } from "vitest";
import { assembleCauses } from "../../src/assembly/assemble-causes.ts";
import { assembleRecord } from "../../src/assembly/assemble-record.ts";
import type { Reading, Standard } from "../../src/model/calibration.ts";
import type { CalibrationRows } from "../../src/model/calibration-case.ts";
import { causesSchema } from "../../src/record/causes-schema.ts";
import { sheetOf } from "../analysis/sample-staged.ts";
import { frozen } from "../charts/frozen.ts";

const row = <Row>(line: number, of: Row) => ({ row: of, file: "table.csv", line, cells: {} });

function rowsOf(readings: readonly Reading[], parts: Partial<CalibrationRows> = {}): CalibrationRows {
  return frozen({
    calibration: row(2, { calibration: "C-1", tag: "LT-1" }),
    instrument: row(2, {
      tag: "LT-1",
      rangeLower: 0,
      rangeUpper: 100,
      distanceUnit: "mm",
      signalLower: 4,
      signalUpper: 20,
      signalUnit: "mA",
      tolerance: 1,
      toleranceBasis: "distance",
    }),
    readings: readings.map((of, index) => ({ ...row(index + 2, of), cells: { reference: "0.0", signal: "4.000" } })),
    standards: [],
    outputs: [],
    trips: [],
    loopChecks: [],
    controllerLimits: [],
    candidates: [],
    files: [],
    ...parts,
  });
}

const shifted = sheetOf(3, (reference, place) => ({ signal: 4 + 0.16 * (reference + 2 + 0.02 * Math.sin(place)) }));
const right: readonly Reading[] = sheetOf(3, (reference, place) => ({
  signal: 4 + 0.16 * (reference + 0.02 * Math.sin(place)),
})).map((reading) => ({ ...reading, phase: "as_left" }));
const rows = rowsOf([...shifted, ...right]);
const record = assembleRecord(rows, { softwareVersion: "0.1.0", digests: new Map(), warnings: [] });

test("each phase has its own findings: a shift of 2 mm as found, nothing as left", () => {
  expect(record.causes?.asFound?.findings).toMatchObject([{ id: "datum-shifted", stage: "sensor" }]);
  expect(record.causes?.asLeft?.findings).toEqual([]);
});

test("the line of the stage stands on the record in the unit of its input", () => {
  const [line, ...others] = record.causes?.asFound?.stageLines ?? [];
  expect(others).toEqual([]);
  expect(line).toMatchObject({ stage: "sensor", readings: 36, excluded: 0, from: 0, to: 100, inputUnit: "mm" });
  // 2 mm are 2 % of span; the planted wave of ±0.02 % over 36 readings.
  expect(Math.abs((line?.errorAtLower.percentSpan ?? 0) - 2)).toBeLessThan(0.02);
  expect(line?.zeroCrossing).toBeNull();
});

test("the part follows from the record and its rows again, and fits its schema", () => {
  expect(assembleCauses(record, rows)).toEqual({ causes: record.causes });
  expect(causesSchema.safeParse(record.causes).success).toBe(true);
});

test("trips of another phase are not those of this one", () => {
  const trip = { calibration: "C-1", phase: "as_left", output: "Q1", direction: "approach", reference: 60 } as const;
  const outputs = [row(2, { tag: "LT-1", output: "Q1", setPoint: 50 })];
  const tripped = assembleRecord(rowsOf([...shifted, ...right], { outputs, trips: [row(2, trip)] }), {
    softwareVersion: "0.1.0",
    digests: new Map(),
    warnings: [],
  });
  expect(tripped.causes?.asFound?.findings.map(({ id }) => id)).toEqual(["datum-shifted"]);
  expect(tripped.causes?.asLeft?.findings.map(({ id }) => id)).toEqual(["switch-point-off"]);
});

test("what the standards add to all readings is part of the uncertainty of the sensor's line", () => {
  const rail: Standard = {
    standard: "RAIL",
    quantity: "distance",
    certificate: "X-1",
    calibratedOn: "2026-01-01",
    dueOn: "2027-01-01",
    expandedUncertainty: 2,
    uncertaintyUnit: "mm",
    coverageFactor: 2,
    resolution: 0.1,
  };
  const current = { expandedUncertainty: 0.002, uncertaintyUnit: "mA", resolution: 0.001 } as const;
  const meter: Standard = { ...rail, standard: "METER", quantity: "current", ...current };
  const unsure = assembleRecord(rowsOf(shifted, { standards: [row(2, rail), row(3, meter)] }), {
    softwareVersion: "0.1.0",
    digests: new Map(),
    warnings: [],
  });
  expect(unsure.phases.asFound?.zeroError?.combinedStandardUncertainty).toBeGreaterThan(0.99);
  expect(unsure.causes?.asFound?.findings).toEqual([]);
});

test("a record without phases has no causes", () => {
  expect(assembleCauses({ ...record, phases: {} }, rows)).toEqual({});
});

test("a point that is off alone is set aside, and the forecast of the shift beside it is that of the others", () => {
  const lone = sheetOf(3, (reference, place) => ({
    signal: 4 + 0.16 * (reference + 2 + (reference === 40 ? 5 : 0) + 0.02 * Math.sin(place)),
  }));
  const of = assembleRecord(rowsOf(lone), { softwareVersion: "0.1.0", digests: new Map(), warnings: [] });
  const apart = of.causes?.asFound?.setAside ?? [];
  expect(apart.length).toBeGreaterThan(1);
  expect(apart.every(({ why, reading }) => why === "test point off" && lone[reading]!.reference === 40)).toBe(true);
  const left = of.reteach?.asFound?.sensor?.best?.worst;
  expect(Math.abs(left!.errorDistance)).toBeLessThan(0.1);
  expect(causesSchema.safeParse(of.causes).success).toBe(true);
});
