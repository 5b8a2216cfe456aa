import type { GivenSignature } from "../../proof/signature-header.ts";
import {
  type SignatureMeaning,
  type SigningState,
  signatureMeanings,
  signingState,
} from "../../proof/signing-state.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";
import { missingWords, sameSignerWords, timeWords } from "../texts/signing-texts.ts";

/** Who signed what and when, lines for ink where nobody has, the seal, and what a signature here is worth. */
export function SignOff({ record }: { record: SealedRecord }) {
  const { calibration } = record;
  const state = signingState(record);
  return (
    <section class="sign-off" aria-labelledby="sign-off-title">
      <h2 id="sign-off-title">Sign-off</h2>
      <p>
        <strong>{stateSentence(state)}</strong> {sameSignerWords(state.given)}
      </p>
      <DataTable columns={signatureColumns(record, state)} rows={signatureMeanings} />
      <SealOfRecord record={record} />
      <p class="end">End of record {calibration.calibration}</p>
    </section>
  );
}

function stateSentence({ issuedAt, given, missing, unreadable }: SigningState): string {
  const state =
    issuedAt === undefined
      ? `This is a draft: ${given.length === 0 ? "nobody has signed it." : `it is ${missingWords(missing)}.`}`
      : `Issued ${timeWords(issuedAt)}, with the last signature that it needs.`;
  return unreadable === 0 ? state : `${state} Signatures that cannot be read: ${unreadable}.`;
}

function signatureColumns(
  { calibration }: SealedRecord,
  { given, needed }: SigningState,
): readonly Column<SignatureMeaning>[] {
  const stated = {
    performed: [calibration.performedBy, calibration.performedOn],
    reviewed: [calibration.reviewedBy, calibration.reviewedOn],
    authorised: [calibration.approvedBy, calibration.approvedOn],
  };
  const givenAs = (meaning: SignatureMeaning) => given.filter((one) => one.meaning === meaning);
  return [
    { heading: "Meaning", isRowHeader: true, text: (meaning) => titles[meaning] },
    {
      ...{ heading: "Needed", under: "Meaning" },
      text: (meaning) => (needed.includes(meaning) ? "needed" : "not asked for"),
    },
    {
      heading: "Stated in the tables",
      cell: (meaning) => {
        const words = stated[meaning].filter((one) => one !== undefined);
        return words.length === 0 ? <span class="not-stated">not stated</span> : words.join(", ");
      },
    },
    {
      heading: "Signature",
      classOf: (meaning) => (givenAs(meaning).length === 0 ? "ink" : undefined),
      cell: (meaning) => givenAs(meaning).map((one) => <Signature key={one.signedAt} given={one} />),
    },
  ];
}

const titles: Record<SignatureMeaning, string> = {
  performed: "Performed by",
  reviewed: "Reviewed by",
  authorised: "Authorised by",
};

function Signature({ given: { name, role, meaning, signedAt, keyId } }: { given: GivenSignature }) {
  return (
    <>
      <strong>{name}</strong>, {role}
      <br />
      signed as {meaning}, <span class="when">{timeWords(signedAt)}</span>
      <span class="where">
        key <code>{keyId}</code>
      </span>
    </>
  );
}

function SealOfRecord({ record: { seal } }: { record: SealedRecord }) {
  return (
    <>
      <h3>Seal</h3>
      <p>
        Fingerprint: <strong class="fingerprint">{seal.fingerprint}</strong>
      </p>
      <p class="small">
        {seal.digest} of the record’s content in canonical JSON ({seal.form}): <code>{seal.sha256}</code>
      </p>
      <h3>What a signature here is</h3>
      <p class="small">
        An electronic signature (Ed25519, as a JSON Web Signature) over the whole content of this record, made with a
        key that opens only with its owner’s passphrase. It binds the name, the meaning and the time shown by the
        signing computer to exactly this content: another value anywhere, and neither seal nor signature fits. Whose key
        it is and what its owner may sign stands in the site’s table of signers. Whether a signature counts, beside or
        instead of one in ink, is for the site’s own rules. What this page shows proves nothing by itself;{" "}
        <code>spanwright verify</code> checks it against the record inside it.
      </p>
    </>
  );
}
