import { ProblemList } from "../problems/problem-list.ts";
import { whatIsWrong } from "../problems/sentence.ts";
import type { Doubt } from "../record/doubt.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import type { RecordSignature } from "../record/seal-schema.ts";
import type { Signer } from "../record/seal-words.ts";
import { signatureMeanings } from "../record/seal-words.ts";
import { fromBase64Url } from "./base64-url.ts";
import { signingInput } from "./sign-record.ts";
import { type GivenSignature, readSignatureHeader } from "./signature-header.ts";
import { isSignatureOf } from "./signing-key.ts";
import { type Refusal, refusalsOf, signerOf } from "./signing-refusals.ts";

const mostSignatures = signatureMeanings.length;

/** Clocks of two computers differ by less: own choice. */
const furthestAhead = 86_400_000;

/**
 * Every doubt about the signatures under a record: their form, whether they fit the record's content, and whether their
 * signers might give them, in this order, on that day.
 *
 * @param record in the present form
 * @param signers rows of the table of signers
 * @param now date and time with offset; a signature of more than a day later is doubtful; nothing where no clock is asked
 * @param written the record as it was written, which the signatures are of, where it was in another form
 * @returns empty where all of them hold, also where there is none
 * @throws TypeError for a record that JSON cannot hold
 * Source: RFC 7515, 5.2; RFC 8032, 5.1.7; `signing-refusals.ts` for who may sign.
 * @example checkSignatures(sealRecord(record), []) // []
 */
export function checkSignatures(
  record: SealedRecord,
  signers: readonly Signer[],
  now?: string,
  written: object = record,
): readonly Doubt[] {
  const given: GivenSignature[] = [];
  const { signatures } = record.signOff;
  const doubts = signatures.slice(0, mostSignatures).flatMap((signature, index) => {
    const read = readSignatureHeader(signature.protected);
    const doubt = doubtsAt(index);
    if ("says" in read) return doubt([read.says]);
    const before = [...given];
    given.push(read.given);
    return doubt([
      ...faultsOf({ record, written }, signature, { ...read, before }, signers),
      ...aheadOf(now, read.given),
    ]);
  });
  return signatures.length > mostSignatures ? [...doubts, tooMany(signatures.length)] : doubts;
}

function tooMany(count: number): Doubt {
  const says = `the record has ${count} signatures; more than ${mostSignatures} cannot be, each meaning once`;
  return { about: "signatures", place: "signOff.signatures", says };
}

function doubtsAt(index: number): (sayings: readonly string[]) => readonly Doubt[] {
  const place = `signOff.signatures[${index}]`;
  return (sayings) =>
    sayings.map((says) => ({ about: "signatures", place, says: `the signature ${index + 1}: ${says}` }));
}

function faultsOf(
  { record, written }: { record: SealedRecord; written: object },
  signature: RecordSignature,
  { given, before }: { given: GivenSignature; before: readonly GivenSignature[] },
  signers: readonly Signer[],
): readonly string[] {
  const found = signerOf(signers, given.keyId, given.signedAt);
  if ("code" in found) return [inWords(found)];
  const { signer } = found;
  return [
    ...fitFaults(written, signature, signer),
    ...nameFaults(given, signer),
    ...refusalsOf(record, before, given, signer).map(inWords),
  ];
}

function fitFaults(written: object, signature: RecordSignature, { name, publicKey }: Signer): readonly string[] {
  const bytes = fromBase64Url(signature.signature);
  if (bytes === undefined) return ["it is not in the one form of base64url"];
  if (isSignatureOf(publicKey, signingInput(signature.protected, written), bytes)) return [];
  return [
    `it does not fit: ${name} did not sign this content with this header; the record or the signature was changed, or the signature comes from another record`,
  ];
}

function aheadOf(now: string | undefined, { signedAt }: GivenSignature): readonly string[] {
  if (now === undefined || Date.parse(signedAt) - Date.parse(now) <= furthestAhead) return [];
  return [`its time, ${signedAt}, is yet to come: the clock here says ${now}`];
}

function nameFaults(given: GivenSignature, { name, role }: Signer): readonly string[] {
  if (given.name === name && given.role === role) return [];
  return [`it says ${given.name}, ${given.role}; the table of signers has ${name}, ${role} for this key`];
}

function inWords({ code, values }: Refusal): string {
  const problems = new ProblemList();
  problems.add(code, { file: "" }, { values });
  return problems.all.map(whatIsWrong).join("");
}
