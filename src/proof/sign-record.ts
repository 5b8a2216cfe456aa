import type { SealedRecord } from "../record/record-schema.ts";
import { toBase64Url } from "./base64-url.ts";
import { canonicalBytes } from "./canonical-bytes.ts";
import { type GivenSignature, signatureHeader } from "./signature-header.ts";
import { type SigningKey, signatureOf } from "./signing-key.ts";

/**
 * A record with one signature more; whether it may be signed so is asked of `signing-refusals.ts` before.
 *
 * @param record sealed
 * @param key of who signs
 * @param statement name and role as printed, meaning, and the time with its offset
 * @returns the record with the signature behind those that it had; its content and seal are as before
 * @throws TypeError for a record that JSON cannot hold
 * Source: RFC 7515, 5.1, 7.2.1 (general form) and appendix F (detached payload).
 * @example signRecord(sealed, key, { name: "Ada Specimen", role: "engineer", meaning: "authorised", signedAt:
 *   "2026-11-25T14:05:00+01:00" }).signOff.signatures.length // 1
 */
export function signRecord(
  record: SealedRecord,
  key: SigningKey,
  statement: Omit<GivenSignature, "keyId">,
): SealedRecord {
  const protectedHeader = signatureHeader({ ...statement, keyId: key.keyId });
  const signature = toBase64Url(signatureOf(key, signingInput(protectedHeader, record)));
  const signatures = [...record.signOff.signatures, { protected: protectedHeader, signature }];
  return { ...record, signOff: { signatures } };
}

/**
 * The bytes that a signature signs: its header and the record's content.
 *
 * @param protectedHeader base64url
 * @param record as it is written, with or without seal and signatures, which are no part of its content
 * @returns ASCII of header, a point, and base64url of the record's canonical bytes
 * @throws TypeError for a record that JSON cannot hold
 * Source: RFC 7515, 5.1, step 8.
 * @example new TextDecoder().decode(signingInput("e30", record)).startsWith("e30.eyJjYWxpYnJhdGlvbiI6ey") // true
 */
export function signingInput(protectedHeader: string, record: object): Uint8Array {
  return new TextEncoder().encode(`${protectedHeader}.${toBase64Url(canonicalBytes(record))}`);
}
