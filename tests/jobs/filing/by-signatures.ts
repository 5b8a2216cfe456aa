import type { RecordVerifier } from "../../../src/jobs/signing/verify-record.ts";
import { checkSignatures } from "../../../src/proof/check-signatures.ts";
import { readSealedRecord } from "../../../src/record/read-sealed-record.ts";

/** Looks at the signatures alone: pages of these tests hold a record, and were never drawn. */
const ofSignatures: RecordVerifier = async function* (text, file, { signers, now }) {
  const read = readSealedRecord(text, file);
  if ("record" in read && signers !== undefined) yield* checkSignatures(read.record, signers, now, read.written);
  return undefined;
};

/** Options of filing with which no page is drawn. */
export const bySignatures = { verify: ofSignatures, softwareVersion: "0.0.0" };
