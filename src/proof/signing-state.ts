import type { CalibrationRecord, SealedRecord } from "../record/record-schema.ts";
import { type SignatureMeaning, signatureMeanings } from "../record/seal-words.ts";
import { type GivenSignature, readSignatureHeader } from "./signature-header.ts";

export { type SignatureMeaning, signatureMeanings };

/** How far the signing of a record has come, as its signatures read; `check-signatures.ts` says whether they hold. */
export type SigningState = {
  given: readonly GivenSignature[];
  /** How many signatures cannot be read. */
  unreadable: number;
  needed: readonly SignatureMeaning[];
  missing: readonly SignatureMeaning[];
  isIssued: boolean;
  /** Time of the last needed signature; nothing for a draft. */
  issuedAt: string | undefined;
};

/** Whoever did the work, and whoever stands for the record (ISO/IEC 17025:2017, 7.5.1 and 7.8.2.1 o). */
const usuallyNeeded = ["performed", "authorised"] as const;

/**
 * The signatures that a record needs to be issued.
 *
 * @param record its instrument may name others
 * @returns meanings in the order in which they have to be given; performed and authorised where nothing is said
 * Source: own choice; ISO/IEC 17025:2017, 7.5.1 and 7.8.2.1 o, for the usual two.
 * @example signaturesNeeded(record) // ["performed", "authorised"]
 */
export function signaturesNeeded({ instrument }: CalibrationRecord): readonly SignatureMeaning[] {
  const { signaturesNeeded: stated = [] } = instrument;
  return stated.length > 0 ? stated : usuallyNeeded;
}

/**
 * How far the signing of a record has come.
 *
 * @param record sealed
 * @returns what was given, in the order of the record; what is missing; issued when nothing needed is missing
 * Source: own choice; ISO/IEC 17025:2017, 7.8.1.1 (a record is authorised before it is released).
 * @example signingState(sealRecord(record)).missing // ["performed", "authorised"]
 */
export function signingState(record: SealedRecord): SigningState {
  const read = record.signOff.signatures.map((one) => readSignatureHeader(one.protected));
  const given = read.flatMap((one) => ("given" in one ? [one.given] : []));
  const needed = signaturesNeeded(record);
  const missing = missingOf(needed, given);
  const isIssued = missing.length === 0;
  return {
    given,
    unreadable: read.length - given.length,
    needed,
    missing,
    isIssued,
    issuedAt: isIssued ? latest(given.filter(({ meaning }) => needed.includes(meaning))) : undefined,
  };
}

/**
 * The needed signatures that were not given.
 *
 * @param needed in their order
 * @param given so far
 * @returns meanings in their order
 * Source: own choice.
 * @example missingOf(["performed", "authorised"], []) // ["performed", "authorised"]
 */
export function missingOf(
  needed: readonly SignatureMeaning[],
  given: readonly Pick<GivenSignature, "meaning">[],
): readonly SignatureMeaning[] {
  return needed.filter((meaning) => !given.some((one) => one.meaning === meaning));
}

/**
 * The needed signatures that come before one.
 *
 * @param meaning to be signed
 * @param needed in their order
 * @returns what stands before it among the needed; before one that is not needed, what comes earlier in the work
 * Source: own choice.
 * @example neededBefore("reviewed", ["performed", "authorised"]) // ["performed"]
 */
export function neededBefore(
  meaning: SignatureMeaning,
  needed: readonly SignatureMeaning[],
): readonly SignatureMeaning[] {
  const order = needed.includes(meaning) ? needed : signatureMeanings;
  return needed.filter((one) => order.indexOf(one) < order.indexOf(meaning));
}

function latest(given: readonly GivenSignature[]): string | undefined {
  return given.toSorted((one, other) => Date.parse(one.signedAt) - Date.parse(other.signedAt)).at(-1)?.signedAt;
}
