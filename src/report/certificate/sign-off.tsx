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

/** Who signed what and when, side by side, and room for ink where nobody has. */
export function SignOff({ record }: { record: SealedRecord }) {
  const state = signingState(record);
  return (
    <section class="sign-off" aria-labelledby="sign-off-title">
      <h2 id="sign-off-title">Sign-off</h2>
      <p class="small">
        <strong>{stateSentence(state)}</strong> {sameSignerWords(state.given)} Seal: fingerprint{" "}
        <strong class="fingerprint">{record.seal.fingerprint}</strong>; what a signature here is: annex I.
      </p>
      <DataTable kind="plain signatures" columns={columnsOf(state)} rows={rowsOf(record, state)} />
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

type SignRow = { name: string; isInk: boolean; of: (meaning: SignatureMeaning) => preact.ComponentChild };

/** A column for each signature, so that all of them take one strip of the sheet. */
function columnsOf({ needed, given }: SigningState): readonly Column<SignRow>[] {
  return [
    { heading: <span class="hidden">What</span>, isRowHeader: true, text: ({ name }) => name },
    ...signatureMeanings.map(
      (meaning): Column<SignRow> => ({
        heading: (
          <>
            {titles[meaning]} <span class="where">{needed.includes(meaning) ? "needed" : "not asked for"}</span>
          </>
        ),
        classOf: ({ isInk }) => (isInk && given.every((one) => one.meaning !== meaning) ? "ink" : undefined),
        cell: ({ of }) => of(meaning),
      }),
    ),
  ];
}

const titles: Record<SignatureMeaning, string> = {
  performed: "Performed by",
  reviewed: "Reviewed by",
  authorised: "Authorised by",
};

function rowsOf({ calibration }: SealedRecord, { given }: SigningState): readonly SignRow[] {
  const stated = {
    performed: [calibration.performedBy, calibration.performedOn],
    reviewed: [calibration.reviewedBy, calibration.reviewedOn],
    authorised: [calibration.approvedBy, calibration.approvedOn],
  };
  return [
    {
      ...{ name: "Stated in the tables", isInk: false },
      of: (meaning) => {
        const words = stated[meaning].filter((one) => one !== undefined);
        return words.length === 0 ? <span class="not-stated">not stated</span> : words.join(", ");
      },
    },
    {
      ...{ name: "Signature and date", isInk: true },
      of: (meaning) =>
        given.filter((one) => one.meaning === meaning).map((one) => <Signature key={one.signedAt} given={one} />),
    },
  ];
}

function Signature({ given: { name, role, meaning, signedAt, keyId } }: { given: GivenSignature }) {
  return (
    <>
      <strong>
        <bdi>{name}</bdi>
      </strong>
      , {role}
      <br />
      signed as {meaning}, <span class="when">{timeWords(signedAt)}</span>
      <span class="where">
        key <code>{keyId}</code>
      </span>
    </>
  );
}
