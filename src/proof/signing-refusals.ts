import type { ProblemCode } from "../problems/catalogue.ts";
import type { Problem } from "../problems/problem.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import type { Signer } from "../record/seal-words.ts";
import { type SignatureMeaning, signatureMeanings } from "../record/seal-words.ts";
import type { GivenSignature } from "./signature-header.ts";
import { keyIdOf } from "./signing-key.ts";
import { missingOf, neededBefore, signaturesNeeded } from "./signing-state.ts";

/** Why a signature is refused, as the catalogue of problems says it. */
export type Refusal = { code: ProblemCode; values: Problem["values"] };

/** Whoever wants to sign, what for and when. */
type Proposed = Pick<GivenSignature, "keyId" | "meaning" | "signedAt">;

/**
 * The person whose key it is.
 *
 * @param signers rows of the table of signers
 * @param keyId of the key
 * @param signedAt date and time with offset; its day is the day where the signer stands
 * @returns the row of the key that holds on that day; or why there is none
 * Source: own choice; 21 CFR 11.100 (a signature belongs to one person).
 * @example signerOf([], "kPrK", "2026-11-25T14:05:00+01:00") // { code: "signing/key-unknown", values: { keyId: "kPrK" } }
 */
export function signerOf(signers: readonly Signer[], keyId: string, signedAt: string): { signer: Signer } | Refusal {
  const rows = signers.filter(({ publicKey }) => keyIdOf(publicKey) === keyId);
  const [first] = rows;
  if (first === undefined) return { code: "signing/key-unknown", values: { keyId } };
  const day = signedAt.slice(0, 10);
  const signer = rows.find(({ validFrom, validTo }) => validFrom <= day && (validTo === undefined || day <= validTo));
  const revoked = rows.find(
    ({ revokedAt }) => revokedAt !== undefined && Date.parse(signedAt) >= Date.parse(revokedAt),
  );
  if (revoked !== undefined) {
    const { name, revokedAt: at = "", revokedReason: reason = "no reason is stated" } = revoked;
    return { code: "signing/key-revoked", values: { name, at, reason } };
  }
  if (signer !== undefined) return { signer };
  const { name, validFrom, validTo } = first;
  return { code: "signing/key-not-valid", values: { name, day, from: validFrom, to: validTo ?? "now on" } };
}

/**
 * Everything that keeps a person from signing a record.
 *
 * @param record its instrument sets which signatures are needed, in which order, and whether by two people
 * @param given signatures before this one
 * @param proposed key, meaning and time
 * @param signer the row of the key
 * @returns empty where it may be signed so
 * Source: own choice; ISO/IEC 17025:2017, 7.8.1.1; 21 CFR 11.10 (f) and (g), for order and authority.
 * @example refusalsOf(record, [], { keyId: key.keyId, meaning: "authorised", signedAt: "2026-11-25T14:05:00+01:00" },
 *   signer)[0]?.code // "signing/out-of-order"
 */
export function refusalsOf(
  record: CalibrationRecord,
  given: readonly GivenSignature[],
  proposed: Proposed,
  signer: Signer,
): readonly Refusal[] {
  return [
    ...notAllowed(proposed, signer),
    ...outOfOrder(signaturesNeeded(record), given, proposed),
    ...oneForTwo(record, given, proposed, signer),
    ...clockFaults(record, given, proposed),
  ];
}

function notAllowed({ meaning }: Proposed, { name, maySign }: Signer): readonly Refusal[] {
  const allowed: readonly SignatureMeaning[] = maySign ?? signatureMeanings;
  if (allowed.includes(meaning)) return [];
  return [{ code: "signing/meaning-not-allowed", values: { name, meaning, allowed: allowed.join(", ") } }];
}

function outOfOrder(
  needed: readonly SignatureMeaning[],
  given: readonly GivenSignature[],
  { meaning }: Proposed,
): readonly Refusal[] {
  const earlier = given.find((one) => one.meaning === meaning);
  if (earlier !== undefined) return [{ code: "signing/signed-already", values: { name: earlier.name, meaning } }];
  if (missingOf(needed, given).length === 0) return [{ code: "signing/issued", values: {} }];
  const before = missingOf(neededBefore(meaning, needed), given);
  if (before.length === 0) return [];
  return [{ code: "signing/out-of-order", values: { meaning, before: before.join(", "), order: needed.join(", ") } }];
}

/** Both ways round: who reviewed or authorised did not perform either. */
function oneForTwo(
  { instrument, calibration }: CalibrationRecord,
  given: readonly GivenSignature[],
  { keyId, meaning }: Proposed,
  { name }: Signer,
): readonly Refusal[] {
  if (instrument.fourEyes !== true) return [];
  const isPerforming = meaning === "performed";
  const others = given.filter((one) => (one.meaning === "performed") !== isPerforming);
  const isStated = !isPerforming && isSameName(calibration.performedBy ?? "", name);
  const isSame = isStated || others.some((one) => one.keyId === keyId || isSameName(one.name, name));
  return isSame ? [{ code: "signing/four-eyes", values: { name, meaning } }] : [];
}

/**
 * Whether another did the work, as the record states it, than signs for having done it; who is stated.
 *
 * @param record with or without a name in performed_by
 * @param given what a signature says
 * @returns nothing where no other is stated, or where it is a signature of another meaning
 * Source: own choice; ISO/IEC 17025:2017, 7.5.1 (who performed the work is on the record).
 * @example otherThanStated(record, { meaning: "authorised", name: "Tom Sample" }) // undefined
 */
export function otherThanStated(
  { calibration: { performedBy } }: CalibrationRecord,
  { meaning, name }: Pick<GivenSignature, "meaning" | "name">,
): string | undefined {
  if (meaning !== "performed" || performedBy === undefined) return undefined;
  const stated = [performedBy, ...performedBy.split(/[,;/&]|\band\b/u)];
  return stated.some((one) => isSameName(one, name) || isShortFor(one, name)) ? undefined : performedBy;
}

/** "I. Example" may be Ines Example: the last name, and the first letter of the first. */
function isShortFor(short: string, name: string): boolean {
  const [first = "", ...rest] = short.trim().toLowerCase().split(/\s+/u);
  const [full = "", ...others] = name.trim().toLowerCase().split(/\s+/u);
  return /^\p{L}\.?$/u.test(first) && first[0] === full[0] && rest.join(" ") === others.join(" ") && rest.length > 0;
}

function isSameName(one: string, other: string): boolean {
  const folded = (name: string) => name.normalize("NFC").trim().replace(/\s+/gu, " ").toLowerCase();
  return folded(one) === folded(other);
}

function clockFaults(
  { calibration: { performedOn } }: CalibrationRecord,
  given: readonly GivenSignature[],
  { signedAt }: Proposed,
): readonly Refusal[] {
  const last = given.find((one) => Date.parse(one.signedAt) > Date.parse(signedAt));
  if (last !== undefined) {
    const what = `the signature of ${last.name}, ${last.signedAt}`;
    return [{ code: "signing/clock", values: { signedAt, what } }];
  }
  if (performedOn === undefined || signedAt.slice(0, 10) >= performedOn) return [];
  return [{ code: "signing/clock", values: { signedAt, what: `the day of the work, ${performedOn}` } }];
}
