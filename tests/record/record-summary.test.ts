import { expect, test } from "vitest";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { recordSummary } from "../../src/record/record-summary.ts";
import { recordSummarySchema } from "../../src/record/record-summary-schema.ts";
import { sampleRecord } from "../charts/sample-record.ts";
import { demoRecord, demoRecords } from "../report/demo-records.ts";

test("every record of the demo has a summary, of the published form, also after it was written and read", () => {
  for (const record of demoRecords) {
    const summary = recordSummary(sealRecord(record));
    expect(recordSummarySchema.parse(JSON.parse(JSON.stringify(summary)))).toEqual(summary);
  }
});

test("the figures are the record's own, at full precision", () => {
  const record = sealRecord(demoRecord("LT-310"));
  const summary = recordSummary(record);
  const { asFound, asLeft } = record.phases;
  expect(summary).toMatchObject({
    tag: "LT-310",
    calibration: record.calibration.calibration,
    revision: 1,
    sha256: record.seal.sha256,
    performedOn: record.calibration.performedOn,
    adjustment: "re-teach",
    nextDue: record.nextDue,
  });
  expect(summary.asFound?.statement).toBe(asFound?.verdict);
  expect(summary.asFound?.zeroError).toBe(asFound?.zeroError?.percentSpan);
  expect(summary.asLeft?.spanError).toBe(asLeft?.spanError?.percentSpan);
  const worst = asFound?.readings.find(({ row }) => row === asFound.worst?.row);
  expect(summary.asFound?.worst?.reference).toBe(worst?.reference);
  expect(summary.asFound?.points.map(({ point }) => point)).toEqual(asFound?.points.map(({ point }) => point));
});

test("a test point knows what each certificate contributes: what two visits with the same one share", () => {
  const record = demoRecord("LT-310");
  const [point] = recordSummary(sealRecord(record)).asFound?.points ?? [];
  const [judged] = record.phases.asFound?.points ?? [];
  expect(point?.combinedUncertainty).toBe(judged?.budget.combinedUncertainty);
  expect(point?.effectiveDegreesOfFreedom).toBe(judged?.budget.effectiveDegreesOfFreedom);
  const expected = record.standards.flatMap(({ standard, certificate }) => {
    const line = judged?.budget.lines.find(({ source }) => source === `${standard}: certificate`);
    return line === undefined ? [] : [{ standard, certificate, standardUncertainty: line.standardUncertainty }];
  });
  expect(expected.length).toBeGreaterThan(0);
  expect(point?.certificates).toEqual(expected);
});

test("where the controller was read, the points are those of the loop", () => {
  const record = sealRecord(sampleRecord({ hasController: true }));
  const { asFound } = record.phases;
  expect(asFound?.endPoints?.length).toBeGreaterThan(0);
  expect(recordSummary(record).asFound?.points.map(({ errorDistance }) => errorDistance)).toEqual(
    asFound?.endPoints?.map(({ errorDistance }) => errorDistance),
  );
});

test("what the record does not have is null, never 0", () => {
  const record = sealRecord(sampleRecord({ phases: ["asFound"] }));
  expect(recordSummary(record)).toMatchObject({ asLeft: null, nextDue: null, adjustment: null });
});

test("the points of every phase are of one part of the loop: the controller only where it was read in each of them", () => {
  const both = sampleRecord({ hasController: true });
  expect(recordSummary(sealRecord(both)).pointsOf).toBe("controller");
  const { endPoints: _, ...sensorOnly } = both.phases.asLeft!;
  const mixed = sealRecord({ ...both, phases: { ...both.phases, asLeft: sensorOnly } });
  const summary = recordSummary(mixed);
  expect(summary.pointsOf).toBe("sensor");
  expect(summary.asFound?.points.map(({ errorDistance }) => errorDistance)).toEqual(
    both.phases.asFound?.points.map(({ errorDistance }) => errorDistance),
  );
});
