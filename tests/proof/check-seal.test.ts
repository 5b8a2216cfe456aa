import { expect, test } from "vitest";
import { checkSeal } from "../../src/proof/check-seal.ts";
import { ines, recordToSign, signedBy } from "./sample-signing.ts";

const record = recordToSign();
const { sha256, fingerprint } = record.seal;

test("a record as it was sealed is whole, signed or not", () => {
  expect(checkSeal(record)).toEqual([]);
  expect(checkSeal(signedBy(record, [ines, "performed"]))).toEqual([]);
  expect(checkSeal(JSON.parse(JSON.stringify(record)))).toEqual([]);
});

test("changed content, and a changed seal, are told with both digests", () => {
  const changed = { ...record, figureBasis: "another" };
  expect(checkSeal(changed)).toEqual([
    {
      about: "seal",
      place: "seal.sha256",
      says: expect.stringMatching(
        new RegExp(`^the content is not what was sealed: its SHA-256 is [0-9a-f]{64}, the seal says ${sha256}$`, "u"),
      ),
    },
  ]);
  const other = { ...record, seal: { ...record.seal, sha256: "0".repeat(64) } };
  expect(checkSeal(other)).toMatchObject([{ place: "seal.sha256", says: expect.stringContaining(sha256) }]);
});

test("a fingerprint that is not that of the digest is told, though the digest is right", () => {
  const other = { ...record, seal: { ...record.seal, fingerprint: fingerprint.replace("·", "-") } };
  expect(checkSeal(other)).toMatchObject([{ place: "seal.fingerprint" }]);
});

test("half of a character, which no seal can be taken of, is a doubt and no crash", () => {
  expect(checkSeal({ ...record, figureBasis: "\ud800" })).toEqual([
    { about: "seal", place: "the whole", says: "the record holds what JSON cannot: half of a character" },
  ]);
});
