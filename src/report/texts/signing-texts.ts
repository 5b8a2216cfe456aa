import type { GivenSignature } from "../../proof/signature-header.ts";
import type { SignatureMeaning, SigningState } from "../../proof/signing-state.ts";

/** What a record is by its signatures, in words: for the heading of a page. */
export function stateWords({ issuedAt, given, missing }: Pick<SigningState, "issuedAt" | "given" | "missing">): string {
  if (issuedAt !== undefined) return `Issued ${dayOf(issuedAt)}`;
  return given.length === 0 ? "Draft, not signed" : `Draft, ${missingWords(missing)}`;
}

/** The same for the head of each printed page, where a draft is called one in capitals. */
export function printedStateWords(state: Pick<SigningState, "issuedAt" | "given" | "missing">): string {
  return stateWords(state)
    .replace(/^Draft/u, "DRAFT")
    .replace(/^Issued/u, "issued");
}

/** "not yet authorised", "not yet reviewed and authorised". */
export function missingWords(missing: readonly SignatureMeaning[]): string {
  const [last = "", ...before] = missing.toReversed();
  return `not yet ${before.length === 0 ? last : `${before.toReversed().join(", ")} and ${last}`}`;
}

/** "2026-11-25 14:05:00 +01:00": the offset says where the clock stood. */
export function timeWords(signedAt: string): string {
  const [, day = signedAt, clock = "", offset = ""] = /^(.{10})T([\d:.]+)(.*)$/u.exec(signedAt) ?? [];
  return [day, clock, offset === "Z" ? "+00:00" : offset].filter((part) => part !== "").join(" ");
}

/** The calendar day where the signer stood. */
export function dayOf(signedAt: string): string {
  return signedAt.slice(0, 10);
}

/** Who gave more than one of the signatures; nothing where each is by another person. */
export function sameSignerWords(given: readonly GivenSignature[]): string | undefined {
  const twice = given.find(({ name }, index) => given.findIndex((one) => one.name === name) !== index);
  if (twice === undefined) return undefined;
  const meanings = given.filter(({ name }) => name === twice.name).map(({ meaning }) => meaning);
  return `${twice.name} signed it as ${meanings.join(" and as ")}: one person, not two.`;
}
