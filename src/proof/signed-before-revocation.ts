import type { Doubt } from "../record/doubt.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import type { Signer } from "../record/seal-words.ts";
import { readSignatureHeader } from "./signature-header.ts";
import { keyIdOf } from "./signing-key.ts";

/** When others than its signers had a page first: when it was filed, by the ledger; or now, where nobody filed it. */
export type Seen = { at: string; isFiled: boolean };

/**
 * Signatures that say a time before their key was revoked, on a page that nobody had then: whoever got the key can write
 * the time that he likes, and nothing but the signature itself says when it was given.
 *
 * @param record in the present form
 * @param signers rows of the table of signers
 * @param seen date and time with offset
 * @returns one doubt a signature; none for keys that were not revoked, and for pages that were filed before
 * Source: own choice; 21 CFR 11.300 (c), for keys that were lost or stolen.
 * @example signedBeforeRevocation(sealRecord(record), [], { at: "2026-11-25T14:05:00+01:00", isFiled: true }) // []
 */
export function signedBeforeRevocation(
  { signOff }: SealedRecord,
  signers: readonly Signer[],
  seen: Seen,
): readonly Doubt[] {
  return signOff.signatures.flatMap((signature, index) => {
    const read = readSignatureHeader(signature.protected);
    if ("says" in read) return [];
    const { keyId, signedAt } = read.given;
    const row = signers.find(
      ({ publicKey, revokedAt }) => keyIdOf(publicKey) === keyId && isBetween(signedAt, revokedAt, seen.at),
    );
    return row === undefined ? [] : [doubtAt(index, row, signedAt, seen)];
  });
}

/** Whether a key was revoked after it signed, and before others had the page. */
function isBetween(signedAt: string, revokedAt: string | undefined, seenAt: string): boolean {
  if (revokedAt === undefined) return false;
  const revoked = Date.parse(revokedAt);
  return Date.parse(signedAt) < revoked && revoked <= Date.parse(seenAt);
}

function doubtAt(index: number, { name, revokedAt, revokedReason }: Signer, signedAt: string, seen: Seen): Doubt {
  const why = revokedReason ?? "no reason is stated";
  const first = seen.isFiled ? `the page was filed at ${seen.at} only` : "the page was never filed";
  const says = `the signature ${index + 1}: the key of ${name} was revoked at ${revokedAt}: ${why}; that it was given before, at ${signedAt}, it says itself alone: ${first}`;
  return { about: "signatures", place: `signOff.signatures[${index}]`, says };
}
