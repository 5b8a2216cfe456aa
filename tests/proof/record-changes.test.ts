import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isTyped, recordChanges, saysAnythingElse } from "../../src/proof/record-changes.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { frozen } from "../charts/frozen.ts";
import { recordOf } from "../filing/sample-pages.ts";
import { smallestWorkbook, withColumn, withText } from "../workbook/smallest-workbook.ts";

const record = frozen(await recordOf(smallestWorkbook));
const typed = async (texts: Parameters<typeof recordOf>[0]) =>
  recordChanges(record, await recordOf(texts)).filter(isTyped);

test("the examples of the docblocks", () => {
  expect(recordChanges(record, { ...record, nextDue: "2027-03-04" })).toEqual([
    { place: "nextDue", before: null, after: '"2027-03-04"' },
  ]);
  expect(saysAnythingElse([{ place: "inputs.files[].sha256", before: "{}", after: "{}" }])).toBe(false);
  expect(isTyped({ place: "inputs.rows.readings[3].cells.signal", before: '"12.1"', after: '"12.0"' })).toBe(true);
});

test("a record does not differ from itself, sealed or not, of whatever revision", () => {
  expect(recordChanges(record, record)).toEqual([]);
  expect(recordChanges(record, { ...sealRecord(record), revision: 2 })).toEqual([]);
});

test("its number among the records of its loop is of the revision, and no change", () => {
  const withRevision = (revision: number) =>
    ({ ...record, revision, overTheYears: { records: [{ calibration: "C-1", revision }], leftOut: [] } }) as never;
  expect(recordChanges(withRevision(1), withRevision(2))).toEqual([]);
});

describe("what was typed", () => {
  test("a cell", async () => {
    expect(await typed(withText("readings.csv", "50,12.01", "50,12.02"))).toEqual([
      { place: "inputs.rows.readings[2].cells.signal", before: '"12.01"', after: '"12.02"' },
    ]);
  });

  test("digits count, though the number is the same", async () => {
    expect(await typed(withText("readings.csv", "50,12.01", "50,12.010"))).toEqual([
      { place: "inputs.rows.readings[2].cells.signal", before: '"12.01"', after: '"12.010"' },
    ]);
  });

  test("a cell that was empty", async () => {
    expect(await typed(withColumn("calibrations.csv", "remarks", "windy"))).toEqual([
      { place: "inputs.rows.calibrations[0].cells.remarks", before: null, after: '"windy"' },
    ]);
  });

  test("a row more in the middle is one change, though all after it moved on", async () => {
    expect(
      await typed(
        withText("readings.csv", "C-1,as_found,rising,50", "C-1,as_found,rising,40,10.41\nC-1,as_found,rising,50"),
      ),
    ).toEqual([
      {
        place: "inputs.rows.readings[2]",
        before: null,
        after: '{"calibration":"C-1","direction":"rising","phase":"as_found","reference":"40","signal":"10.41"}',
      },
    ]);
  });

  test("a row less is one change", async () => {
    expect(await typed(withText("readings.csv", "C-1,as_found,rising,50,12.01\n", ""))).toEqual([
      {
        place: "inputs.rows.readings[2]",
        before: '{"calibration":"C-1","direction":"rising","phase":"as_found","reference":"50","signal":"12.01"}',
        after: null,
      },
    ]);
  });

  test("where a row lies in its file does not count", async () => {
    const moved = { ...smallestWorkbook, "readings.csv": smallestWorkbook["readings.csv"].replace("\n", "\n\n") };
    const changes = recordChanges(record, await recordOf(moved));
    expect(changes.map(({ place }) => place)).toContain("phases.asFound.readings[].row");
    expect(saysAnythingElse(changes)).toBe(false);
  });
});

describe("what follows from it", () => {
  test("is told field by field, and along a list under one place with the index of each value", () => {
    const change = (error: number, index: number) => (index === 1 || index === 3 ? error + 1 : error);
    const { asFound } = record.phases;
    if (asFound === undefined) throw new TypeError("the record has readings as found");
    const readings = asFound.readings.map((one, index) => ({ ...one, reference: change(one.reference, index) }));
    const after = { ...record, phases: { asFound: { ...asFound, readings, verdict: "fail" as const } } };
    expect(recordChanges(record, after)).toEqual([
      { place: "phases.asFound.readings[].reference", before: '{"1":25,"3":75}', after: '{"1":26,"3":76}' },
      { place: "phases.asFound.verdict", before: '"pass"', after: '"fail"' },
    ]);
  });

  test("a list that grew shows the new indices after, and null before", () => {
    const warnings = [{ code: "model/few-points", place: "x", says: "few" }];
    expect(recordChanges({ ...record, warnings: [] }, { ...record, warnings })).toEqual([
      { place: "warnings", before: "[]", after: null },
      { place: "warnings[].code", before: null, after: '{"0":"model/few-points"}' },
      { place: "warnings[].place", before: null, after: '{"0":"x"}' },
      { place: "warnings[].says", before: null, after: '{"0":"few"}' },
    ]);
  });

  test("other files or another version alone say nothing else", () => {
    const [file, ...files] = record.inputs.files;
    if (file === undefined) throw new TypeError("the record names its files");
    const other = {
      ...record,
      software: { ...record.software, version: "9.9.9" },
      inputs: { ...record.inputs, files: [{ ...file, sha256: "0".repeat(64) }, ...files] },
    };
    const changes = recordChanges(record, other);
    expect(changes.map(({ place }) => place)).toEqual(["inputs.files[].sha256", "software.version"]);
    expect(saysAnythingElse(changes)).toBe(false);
    expect(saysAnythingElse(recordChanges(record, { ...other, figureBasis: "another" }))).toBe(true);
  });
});

/** Every value of a record with its path, without what a revision always changes; another road than the one tested. */
function values(value: unknown, path = ""): readonly (readonly [string, string])[] {
  if (/^(?:seal|signOff|revision|amendment|inputs\.rows)(?:\.|$)/u.test(path) || value === undefined) return [];
  if (typeof value !== "object" || value === null) return [[path, JSON.stringify(value)]];
  const children = Object.entries(value);
  const isList = Array.isArray(value);
  if (children.length === 0) return [[path, isList ? "[]" : "{}"]];
  return children.flatMap(([name, child]) =>
    values(child, isList ? `${path}[${name}]` : path === "" ? name : `${path}.${name}`),
  );
}

// fast-check prints the seed of a counterexample.
test("of any number of a record that is changed exactly its place is told, and nothing of the order of keys", () => {
  const numbers = values(record).filter(([, json]) => /^-?\d/u.test(json));
  fc.assert(
    fc.property(fc.nat(numbers.length - 1), fc.boolean(), (chosen, isTurned) => {
      const [path, json] = numbers[chosen] as (typeof numbers)[number];
      const after = withValue(record, path, Number(json) + 1);
      const changes = recordChanges(record, isTurned ? (turned(after) as CalibrationRecord) : after);
      expect(changes.map(({ place }) => place)).toEqual([path.replace(/\[\d+\]/gu, "[]")]);
      const indices = [...path.matchAll(/\[(\d+)\]/gu)].map(([, index]) => index).join(".");
      expect(changes[0]?.before).toBe(indices === "" ? json : JSON.stringify({ [indices]: Number(json) }));
    }),
    { numRuns: 300 },
  );
});

function withValue(of: CalibrationRecord, path: string, value: number): CalibrationRecord {
  const copy = structuredClone(of) as unknown as Record<string, unknown>;
  const parts = path.split(/[.[\]]+/u).filter((part) => part !== "");
  let holder = copy;
  for (const part of parts.slice(0, -1)) holder = holder[part] as Record<string, unknown>;
  holder[parts.at(-1) ?? ""] = value;
  return copy as unknown as CalibrationRecord;
}

/** The same with every object's keys in the opposite order. */
function turned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .toReversed()
      .map(([name, child]) => [name, turned(child)]),
  );
}
