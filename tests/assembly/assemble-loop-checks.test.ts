import { describe, expect, test } from "vitest";
import { assembleLoopChecks } from "../../src/assembly/assemble-loop-checks.ts";
import type { LoopCheck } from "../../src/model/calibration.ts";
import type { CalibrationRows } from "../../src/model/calibration-case.ts";
import type { Instrument } from "../../src/model/instrument.ts";
import { loopChecksSchema } from "../../src/record/loop-check-schema.ts";
import { demoRecord } from "../report/demo-records.ts";

const record = demoRecord("LT-702");
const rowsOf = (checks: readonly Partial<LoopCheck>[]) =>
  ({
    loopChecks: checks.map((check, index) => ({
      row: { calibration: "C-2026-055", item: "shield", ...check },
      file: "loop_checks.csv",
      line: index + 2,
      cells: {},
    })),
  }) as unknown as CalibrationRows;
const assembled = (checks: readonly Partial<LoopCheck>[], more: Partial<Instrument> = {}) =>
  assembleLoopChecks({ ...record, instrument: { ...record.instrument, ...more } }, rowsOf(checks)).loopChecks;

test("a loop that nobody checked, bypassed or calls a safety function has no such part", () => {
  const { bypassPermit: _, ...calibration } = record.calibration;
  const plain = { ...record, calibration, instrument: { ...record.instrument, criticality: "general" as const } };
  expect(assembleLoopChecks(plain, rowsOf([]))).toEqual({});
  const none = { ...plain, calibration: { ...calibration, bypassPermit: "none" } };
  expect(assembleLoopChecks(none, rowsOf([]))).toEqual({});
  const permitted = { ...plain, calibration: { ...calibration, bypassPermit: "EX-1" } };
  expect(assembleLoopChecks(permitted, rowsOf([])).loopChecks?.incomplete).toHaveLength(1);
});

test("a safety function has it without a single row, and is not complete", () => {
  expect(assembled([])).toMatchObject({
    items: [],
    incomplete: ["nobody has answered that the loop was restored"],
  });
});

test("a row is kept as it was written, with the line of its file", () => {
  const found = assembled([
    { item: "Shield", result: "pass", measured: "at the card", high: "one point", time: "08:30" },
  ]);
  expect(found?.items).toEqual([
    {
      row: 2,
      item: "shield",
      number: 7,
      result: "pass",
      decidedBy: "technician",
      measured: "at the card",
      unit: null,
      low: null,
      high: null,
      words: ["one point"],
      computed: null,
      basis: null,
      found: null,
      outside: [],
      isContradiction: false,
      time: "08:30",
    },
  ]);
  expect(loopChecksSchema.parse(found)).toEqual(found);
});

describe("the burden of the demo's two-wire loop", () => {
  test("is card, barrier and 2 · 0.18 km · 26 Ω/km · (1 + 0.00393 · 20), under 12 V / 21 mA", () => {
    const burden = assembled([])?.burden;
    // 250 + 120 + 9.36 · 1.0786 = 380.095696 Ω; 12 / 0.021 = 571.428571… Ω; 12 + 0.021 · 380.095696 = 19.98201 V.
    expect(Math.abs((burden?.total ?? 0) - 380.095696)).toBeLessThan(1e-9);
    expect(Math.abs((burden?.greatest ?? 0) - 571.4285714285714)).toBeLessThan(1e-9);
    expect(Math.abs((burden?.neededSupplyVolts ?? 0) - 19.982009616)).toBeLessThan(1e-9);
    expect(burden?.setBy).toBe("supply");
  });

  test("needs no supply of its own where the sensor has one apart, and is null with its reason where it is unknown", () => {
    expect(assembled([], { loopPowered: false })?.burden).toMatchObject({ setBy: "load_max", neededSupplyVolts: null });
    expect(assembled([], { cableLength: undefined })).toMatchObject({
      burden: null,
      notDetermined: { burden: "cable_length is not stated" },
    });
    expect(assembled([], { signalUnit: "V" })).toMatchObject({
      burden: null,
      notDetermined: { burden: "the signal is a voltage" },
    });
  });
});
