import { digestOf, toHex } from "../record/file-digest.ts";
import type { CalibrationRecord, SealedRecord } from "../record/record-schema.ts";
import type { Seal } from "../record/seal-schema.ts";
import { sealDigest, sealForm } from "../record/seal-words.ts";
import { canonicalBytes } from "./canonical-bytes.ts";
import { fingerprintOf } from "./fingerprint-words.ts";

/**
 * The seal that belongs to a record's content.
 *
 * @param record as it is written, with or without a seal and signatures; these are left out of it
 * @returns the digest of its canonical bytes, and the digest's short form
 * @throws TypeError for what JSON cannot hold
 * Source: RFC 8785; FIPS 180-4 (SHA-256).
 * @example sealOf(record).sha256 === sealOf({ ...record }).sha256 // true
 */
export function sealOf(record: object): Seal {
  const sha256 = toHex(digestOf(canonicalBytes(record)));
  return { form: sealForm, digest: sealDigest, sha256, fingerprint: fingerprintOf(sha256) };
}

/**
 * A record with its seal and no signature yet.
 *
 * @param record as assembled
 * @returns the same with `seal` and an empty `signOff`
 * @throws TypeError for what JSON cannot hold
 * Source: own choice.
 * @example sealRecord(record).signOff.signatures.length // 0
 */
export function sealRecord(record: CalibrationRecord): SealedRecord {
  return { ...record, signOff: { signatures: [] }, seal: sealOf(record) };
}
