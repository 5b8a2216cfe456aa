import type { Signer } from "../../model/signer.ts";
import { checkSeal } from "../../proof/check-seal.ts";
import { checkSignatures } from "../../proof/check-signatures.ts";
import { signedBeforeRevocation } from "../../proof/signed-before-revocation.ts";
import type { Doubt } from "../../record/doubt.ts";
import { type Reading, readSealedRecord } from "../../record/read-sealed-record.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import type { ReadRecord } from "../../record/written-record.ts";
import { pageDifference } from "../../report/page-difference.ts";
import { recordJson, recordPage } from "../records/write-record.ts";
import { cannotBeMade, type FigureDoubts, figureDoubts } from "./figure-doubts.ts";
import { jsonDoubts } from "./json-doubts.ts";
import { type SharedFigures, sharedFigures, verifyOtherVersion } from "./verify-other-version.ts";

export type VerifyOptions = {
  /** Of the program that verifies. */
  softwareVersion: string;
  /** Rows of the table of signers; nothing where there is none to check signatures by. */
  signers: readonly Signer[] | undefined;
  /** Date and time with offset; nothing where no clock is asked. */
  now?: string | undefined;
  /** Number of the ledger's line that filed these very bytes, where there is one. */
  filedBy?: number | undefined;
  /** When that was. */
  filedAt?: string | undefined;
  /** That very bytes were verified before: what follows from them alone is not made again. */
  isKnown?: boolean | undefined;
  /** What was read of that very text, where it was read before. */
  read?: Reading;
};

/** Gives the doubts about the text of one file, one after the other as they are found; at last what else is to be said. */
export type RecordVerifier = (
  text: string,
  file: string,
  options: VerifyOptions,
) => AsyncGenerator<Doubt, string | undefined>;

/** What follows from a record alone; made once for its page and for the JSON beside it. */
type Consequences = {
  json: string;
  seal?: readonly Doubt[];
  figures?: FigureDoubts;
  page?: Promise<string>;
  shared?: SharedFigures;
};

/** Every doubt about a record: the text of a page, or of its JSON alone. Nothing but the text is read. */
export async function verifyRecord(text: string, file: string, options: VerifyOptions): Promise<readonly Doubt[]> {
  const doubts: Doubt[] = [];
  for await (const doubt of recordVerifier()(text, file, options)) doubts.push(doubt);
  return doubts;
}

/**
 * Verifies one text after the other, each in the order file, seal, signatures, figures, page. A record of this version
 * is made and drawn once more and compared with what stands there, byte for byte; one of another version as
 * `verify-other-version.ts` says. What was made last is kept, because the text that is verified next often holds the
 * same record.
 */
export function recordVerifier(): RecordVerifier {
  let last: Consequences = { json: "" };
  let sealed: { written?: object; doubts: readonly Doubt[] } = { doubts: [] };
  return async function* doubtsOf(text, file, options) {
    const read = options.read ?? readSealedRecord(text, file);
    if ("doubts" in read) return void (yield* read.doubts);
    const { record, written } = read;
    if (sealed.written !== written) sealed = { written, doubts: checkSeal(written) };
    yield* sealed.doubts;
    yield* signatureDoubts(read, options);
    if (options.isKnown === true) return knownBefore;
    const json = JSON.stringify(written);
    if (last.json !== json) last = { json };
    if (record.software.version !== options.softwareVersion) {
      last.shared ??= sharedFigures(record);
      const { doubts, note } = verifyOtherVersion(text, read, last.shared, options);
      yield* doubts;
      return note;
    }
    last.figures ??= figureDoubts(record);
    yield* last.figures.doubts;
    const { doubts, note } = await textDoubts(text, record, last);
    yield* doubts;
    return [last.figures.note, note].filter((says) => says !== undefined).join("; ") || undefined;
  };
}

function signatureDoubts({ record, written }: ReadRecord, options: VerifyOptions): readonly Doubt[] {
  const { signers, now, filedAt } = options;
  if (record.signOff.signatures.length === 0) return [];
  if (signers !== undefined) {
    const seenAt = filedAt ?? now;
    const seen = seenAt === undefined ? undefined : { at: seenAt, isFiled: filedAt !== undefined };
    return [
      ...checkSignatures(record, signers, now, written),
      ...(seen === undefined ? [] : signedBeforeRevocation(record, signers, seen)),
    ];
  }
  const says = "the record is signed, and there is no table of signers to check the signatures by";
  return [{ about: "signatures", place: "signOff", says }];
}

const knownBefore =
  "unchanged since the head that was noted: figures and page were not made again, seal and signatures were checked";

type Compared = { doubts: readonly Doubt[]; note?: string };

async function textDoubts(text: string, record: SealedRecord, known: Consequences): Promise<Compared> {
  if (text.trimStart().startsWith("{")) return { doubts: jsonDoubts(text, recordJson(record)) };
  try {
    known.page ??= recordPage(record);
    const page = await known.page;
    const difference = pageDifference(page, text);
    if (difference === undefined) return { doubts: [], ...(page === text ? {} : { note: packedOtherwise }) };
    const { place, expected, found } = difference;
    return { doubts: [{ about: "page", place, says: `the record gives "${expected}", the page has "${found}"` }] };
  } catch (fault) {
    return { doubts: [cannotBeMade("page", "the whole", fault)] };
  }
}

const packedOtherwise =
  "the page is the one that its record gives; the record inside it was packed otherwise than here, and unpacks to the same";
