import { createHash } from "node:crypto";
import canonicalize from "canonicalize";
import fc from "fast-check";
import { expect, test } from "vitest";
import { sealOf, sealRecord } from "../../src/proof/seal-record.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { sealedRecordSchema } from "../../src/record/record-schema.ts";
import { sampleRecord } from "../charts/sample-record.ts";

const record = sampleRecord({ points: 5, cycles: 2 });
const { sha256 } = sealOf(record);

test("the seal is the SHA-256 of the canonical text, and its form is said", () => {
  const digest = createHash("sha256")
    .update(canonicalize(record) ?? "")
    .digest("hex");
  expect(sealOf(record)).toEqual({
    form: "RFC 8785",
    digest: "SHA-256",
    sha256: digest,
    fingerprint: expect.stringMatching(/^(?:[a-z]+ ){4}· (?:[0-9a-f]{4} ?){4}$/u),
  });
});

test("a sealed record has the form of one, and no signature yet", () => {
  const sealed = sealRecord(record);
  expect(sealedRecordSchema.parse(sealed)).toEqual(sealed);
  expect(sealed.signOff.signatures).toEqual([]);
  expect(sealOf(sealed)).toEqual(sealed.seal);
});

type Json = unknown;
const isObject = (value: Json): value is Record<string, Json> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** The same data with the keys of every object in another order. */
function shuffled(value: Json, next: () => number): Json {
  if (Array.isArray(value)) return value.map((one) => shuffled(one, next));
  if (!isObject(value)) return value;
  const order = Object.entries(value).map((entry) => ({ entry, at: next() }));
  return Object.fromEntries(
    order.sort((a, b) => a.at - b.at).map(({ entry: [key, one] }) => [key, shuffled(one, next)]),
  );
}

test("the seal does not depend on the order of the keys", () => {
  fc.assert(
    fc.property(fc.infiniteStream(fc.nat()), (numbers) => {
      const copy = shuffled(record, () => numbers.next().value as number) as CalibrationRecord;
      expect(sealOf(copy).sha256).toBe(sha256);
    }),
    { numRuns: 20, seed: 20261125 },
  );
});

/** Every place of a value that is no object and no list. */
function leavesOf(value: Json, path: readonly (string | number)[] = []): readonly (readonly (string | number)[])[] {
  if (Array.isArray(value)) return value.flatMap((one, index) => leavesOf(one, [...path, index]));
  if (isObject(value)) return Object.entries(value).flatMap(([key, one]) => leavesOf(one, [...path, key]));
  return [path];
}

function changed(value: Json): Json {
  if (typeof value === "number") return value === 0 ? Number.MIN_VALUE : value * (1 + 2 * Number.EPSILON);
  if (typeof value === "string") return `${value}\u200b`;
  return typeof value === "boolean" ? !value : "something";
}

const leaves = leavesOf(record);

test("any one value that is another by the least amount gives another seal", () => {
  expect(leaves.length).toBeGreaterThan(400);
  fc.assert(
    fc.property(fc.constantFrom(...leaves), (path) => {
      const copy = structuredClone(record);
      const holder = path.slice(0, -1).reduce<Record<string, Json>>((at, key) => at[key] as Record<string, Json>, copy);
      const last = path.at(-1) as string;
      holder[last] = changed(holder[last]);
      expect(sealOf(copy).sha256, path.join(".")).not.toBe(sha256);
    }),
    { numRuns: 300, seed: 20261125 },
  );
});

test("a value more, a value less and another order of a list give another seal", () => {
  const more = { ...record, warnings: [{ code: "a", place: "b", says: "c" }] };
  const { figureBasis: _, ...less } = record;
  const turned = structuredClone(record);
  turned.phases.asFound?.readings.reverse();
  for (const other of [more, less as CalibrationRecord, turned]) expect(sealOf(other).sha256).not.toBe(sha256);
});
