import { describe, expect, test } from "vitest";
import { assembleReteach } from "../../src/assembly/assemble-reteach.ts";
import { type CalibrationRecord, recordSchema } from "../../src/record/record-schema.ts";
import { reteachSchema } from "../../src/record/reteach-schema.ts";
import { expectNear } from "../analysis/sample-loop.ts";
import { frozen } from "../charts/frozen.ts";
import { sampleRecord } from "../charts/sample-record.ts";
import { demoRecord } from "../report/demo-records.ts";

function reteachOf(record: CalibrationRecord) {
  return assembleReteach(frozen(record)).reteach;
}

test("the worst error as it is is that of the phase, for the sensor and for the controller", () => {
  const record = sampleRecord({ hasController: true });
  const found = reteachOf(record)?.asFound;
  const worstOf = (field: "errorDistance" | "loopErrorDistance") =>
    Math.max(...(record.phases.asFound?.readings ?? []).map((reading) => Math.abs(reading[field] ?? 0)));
  // Distances of 1000 are stored to 1e-13, and taken off each other.
  expectNear(Math.abs(found?.sensor?.now.errorDistance ?? 0), worstOf("errorDistance"), 1e-11);
  expectNear(Math.abs(found?.controller?.now.errorDistance ?? 0), worstOf("loopErrorDistance"), 1e-11);
  expect(found?.sensor?.now.statement).toBe(record.phases.asFound?.verdicts.sensor);
});

test("under a guard band the statement as it is is that of the phase", () => {
  const record = sampleRecord({ decisionRule: "guard band", scale: 0.6 });
  for (const name of ["asFound", "asLeft"] as const)
    expect(reteachOf(record)?.[name]?.sensor?.now.statement).toBe(record.phases[name]?.verdicts.sensor);
});

test("LT-310 as found: a shift, which a new zero and span cure, or 4.124 and 20.134 mA in the controller", () => {
  const { asFound } = demoRecord("LT-310").reteach ?? {};
  expect(asFound?.sensor?.now.statement).toBe("fail");
  expect(asFound?.sensor?.isCurable).toBe(true);
  const constants = asFound?.newConstants;
  if (constants?.kind !== "inputs at range ends") throw new Error("no signals");
  // Planted: zero error 0.8 % of 16 mA = 0.128 mA; the noise of 0.05 % of 16 mA is 0.008 mA, and three of it are allowed.
  expectNear(constants.atLower, 4.128, 0.024);
  expectNear(constants.atUpper, 20.128, 0.024);
  expect(asFound?.newConstants?.worst.statement).toBe("pass");
});

test("ZT-407's hysteresis is cured by no re-teach", () => {
  for (const name of ["asFound", "asLeft"] as const) {
    const phase = demoRecord("ZT-407").reteach?.[name];
    expect(phase?.sensor?.isCurable).toBe(false);
    expect(phase?.sensor?.whyNot).toMatchObject({ because: "spread at one point", point: 6 });
    // Planted: 1.8 % of 8 mm between the directions, half of it 0.072 mm; noise 0.04 % of 8 mm, three of it allowed.
    expectNear(phase?.sensor?.whyNot?.halfSpread ?? 0, 0.072, 0.01);
  }
});

test("LT-702: what to type at the counts is what the sensor asks for, not what the wrong scaling would be bent to", () => {
  const { asFound, asLeft } = demoRecord("LT-702").reteach ?? {};
  expect(asFound?.sensor?.now.statement).toBe("pass");
  expect(asFound?.controller?.now.statement).toBe("fail");
  expect(asFound?.controller?.isCurable).toBe(true);
  // Planted: 2 % of 7.6 m too little at the far end, and errors up to 0.05 %.
  expectNear(asFound?.controller?.now.errorDistance, -0.152, 0.004);
  for (const constants of [asFound?.newConstants, asLeft?.newConstants]) {
    if (constants?.kind !== "values at counts") throw new Error("no values");
    expect([constants.countsLower, constants.countsUpper]).toEqual([0, 27648]);
    // Planted errors of −0.04 to +0.01 %, read as fill from 100 to 0; noise 0.03 %, four of it allowed.
    expectNear(constants.valueLower, 100 - 0.04, 0.12);
    expectNear(constants.valueUpper, 0 - 0.01, 0.12);
    expect(constants.worst.statement).toBe("pass");
  }
});

test("without counts the constants are offset and gain of those in place, and undo the loop's own line", () => {
  const found = reteachOf(sampleRecord({ hasController: true, seed: 4 }))?.asLeft?.newConstants;
  if (found?.kind !== "values in place of others") throw new Error("no values");
  expectNear(found.offset + found.gain * 0, found.valueLower, 1e-12);
  expectNear(found.offset + found.gain * 100, found.valueUpper, 1e-12);
  // Planted in the sample: errors under 0.3 % as left.
  expectNear(found.gain, 1, 0.005);
});

describe("what cannot be had says why", () => {
  test("one test point gives no correction, and the record is still one", () => {
    const record = structuredClone(sampleRecord({ phases: ["asFound"] }));
    const phase = record.phases.asFound;
    if (phase === undefined) throw new Error("no phase");
    phase.points = phase.points.slice(0, 1);
    const reteach = reteachOf(record);
    expect(reteach?.asFound?.sensor?.ends).toBeNull();
    expect(reteach?.asFound?.notDetermined["sensor.ends"]).toBe("fewer than two test points");
    expect(reteachSchema.safeParse(reteach).success).toBe(true);
  });

  test("no test point, no part", () => {
    const record = structuredClone(sampleRecord({ phases: ["asFound"] }));
    if (record.phases.asFound) record.phases.asFound.points = [];
    expect(assembleReteach(record)).toEqual({});
  });
});

test("what is assembled is what the schema describes, and readings that are left out play no part", () => {
  const record = sampleRecord({ hasController: true, leftOut: 2 });
  expect(recordSchema.parse(record).reteach).toEqual(reteachOf(record));
  const copy = structuredClone(record);
  for (const reading of copy.phases.asFound?.readings ?? []) if (reading.leftOut) reading.indicated = 1e6;
  expect(reteachOf(copy)).toEqual(reteachOf(record));
});

test("the form is strict", () => {
  const reteach = structuredClone(reteachOf(sampleRecord()));
  Object.assign(reteach?.asFound?.sensor?.best ?? {}, { colour: "red" });
  expect(reteachSchema.safeParse(reteach).success).toBe(false);
});
