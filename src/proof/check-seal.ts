import type { Doubt } from "../record/doubt.ts";
import type { Seal } from "../record/seal-schema.ts";
import { sealOf } from "./seal-record.ts";

/**
 * Whether the seal of a record is that of its content.
 *
 * @param record as it was written, whatever its form
 * @returns a doubt for what of the seal differs; empty where it is whole
 * Source: RFC 8785; FIPS 180-4 (SHA-256).
 * @example checkSeal(sealRecord(record)) // []
 */
export function checkSeal(record: Readonly<Record<string, unknown>> & { seal: Seal }): readonly Doubt[] {
  const expected = faultless(() => sealOf(record));
  if (expected === undefined) {
    return [{ about: "seal", place: "the whole", says: "the record holds what JSON cannot: half of a character" }];
  }
  const { sha256, fingerprint } = record.seal;
  if (sha256 !== expected.sha256) {
    const says = `the content is not what was sealed: its SHA-256 is ${expected.sha256}, the seal says ${sha256}`;
    return [{ about: "seal", place: "seal.sha256", says }];
  }
  if (fingerprint === expected.fingerprint) return [];
  const says = `the fingerprint is ${expected.fingerprint}, the seal says ${fingerprint}`;
  return [{ about: "seal", place: "seal.fingerprint", says }];
}

/** A text with half of a surrogate pair in it has no bytes. */
function faultless(make: () => Seal): Seal | undefined {
  try {
    return make();
  } catch (fault) {
    if (fault instanceof TypeError) return undefined;
    throw fault;
  }
}
