import { expect, test } from "vitest";
import { assembleOverall } from "../../../src/assembly/assemble-overall.ts";
import { assembleNextDue } from "../../../src/assembly/years/assemble-next-due.ts";
import type { CalibrationRecord } from "../../../src/record/record-schema.ts";
import { demoRecord } from "../../report/demo-records.ts";

const record = demoRecord("LT-310");
const withInstrument = (more: Partial<CalibrationRecord["instrument"]>): CalibrationRecord => ({
  ...record,
  instrument: { ...record.instrument, ...more },
});

test("a loop that was left in tolerance on 17 March 2026 is due half a year later", () => {
  expect(record.instrument.intervalMonths).toBe(6);
  expect(assembleNextDue(record)).toEqual({ nextDue: "2026-09-17" });
  expect(assembleNextDue(withInstrument({ dueRule: "month end" }))).toEqual({ nextDue: "2026-09-30" });
});

test("nobody agreed, no interval, or no day: no date", () => {
  const { intervalAgreedBy: _, ...notAgreed } = record.instrument;
  expect(assembleNextDue({ ...record, instrument: notAgreed })).toEqual({});
  const { intervalMonths: __, ...noInterval } = record.instrument;
  expect(assembleNextDue({ ...record, instrument: noInterval })).toEqual({});
  const { performedOn: ___, ...undated } = record.calibration;
  expect(assembleNextDue({ ...record, calibration: undated })).toEqual({});
});

test("a loop whose switched output is left outside has no date, though its analog value passes", () => {
  const [output] = record.switching!;
  const failing = { ...output!, phases: { asFound: { ...output!.phases.asFound!, statement: "fail" as const } } };
  expect(record.phases.asLeft?.verdict).toBe("pass");
  const left = { ...record, switching: [failing] };
  expect(assembleNextDue({ ...left, ...assembleOverall(left) })).toEqual({});
});

test("a loop that was not read far enough has no date, though what was read passes", () => {
  const { readings, points, endPoints, ...rest } = record.phases.asLeft!;
  const asLeft = {
    ...rest,
    readings,
    points: points.slice(0, 1),
    ...(endPoints && { endPoints: endPoints.slice(0, 1) }),
  };
  const left = { ...record, phases: { ...record.phases, asLeft } };
  const { overall } = assembleOverall(left);
  expect(overall).toMatchObject({ word: "not complete", loop: "pass", complete: false });
  expect(assembleNextDue({ ...left, overall })).toEqual({});
});
