import { expect, test } from "vitest";
import { indexEntry } from "../../src/filing/make-index-entry.ts";
import { fleetColumns } from "../../src/fleet/fleet-columns.ts";
import { fleetRow } from "../../src/fleet/fleet-row.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { sampleRecord } from "../filing/sample-pages.ts";

function rowOf(record: CalibrationRecord, more: object = {}) {
  const sealed = sealRecord(record);
  const entry = { ...indexEntry({ number: 1, path: "LT-1/a.html", fileSha256: "b".repeat(64) }, sealed), ...more };
  const fleet = { entry, untilThen: [entry], isCurrent: true, isLast: true, life: {} };
  return { sealed, row: fleetRow(fleet, sealed, []) };
}

test("a row has every column and no other, and the figures of its record", () => {
  const { sealed, row } = rowOf(sampleRecord());
  expect(Object.keys(row).toSorted()).toEqual(fleetColumns.map(({ name }) => name).toSorted());
  const { asFound } = sealed.phases;
  expect(row).toMatchObject({
    ...{ tag: "LT-1", calibration: "C-1", revision: 1, filed_as: null, seal_sha256: sealed.seal.sha256 },
    as_found_statement: asFound?.verdict,
    as_found_worst_error_percent_span: asFound?.worst?.errorPercentSpan,
    as_found_zero_error_percent_span: asFound?.zeroError?.percentSpan,
    as_found_hysteresis_percent_span: asFound?.hysteresis?.percentSpan ?? null,
    as_found_linearity_terminal_percent_span: asFound?.linearity.terminal,
    ...{ as_left_statement: null, as_left_worst_error_mm: null, drift_percent_span_per_year: null },
  });
  expect(asFound?.linearity.terminal).toBeTypeOf("number");
});

test("distances of a record in inches are in mm: 25.4 of them to an inch, exactly, by the agreement of 1959", () => {
  const record = sampleRecord();
  const inches = { ...record, instrument: { ...record.instrument, distanceUnit: "in" as const } };
  const { row } = rowOf(inches);
  expect(row.distance_unit).toBe("in");
  expect(row.range_upper_mm).toBeCloseTo(25.4 * record.instrument.rangeUpper, 9);
  const worst = record.phases.asFound?.worst?.errorDistance as number;
  expect(row.as_found_worst_error_mm).toBeCloseTo(25.4 * worst, 9);
  expect(row.as_found_worst_error_percent_span).toBe(record.phases.asFound?.worst?.errorPercentSpan);
});

test("a day on which it is due, or why there is none; never how it stands today", () => {
  const record = sampleRecord();
  const dated = rowOf({ ...record, nextDue: "2020-01-01" }).row;
  expect([dated.next_due_on, dated.no_due_day]).toEqual(["2020-01-01", null]);
  const { nextDue: _, ...without } = record;
  const { row } = rowOf(without);
  expect(row.next_due_on).toBeNull();
  expect(row.no_due_day).toMatch(/^(?:no date|not complete)$/u);
});
