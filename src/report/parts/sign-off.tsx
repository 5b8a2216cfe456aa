import type { GivenSignature } from "../../proof/signature-header.ts";
import {
  type SignatureMeaning,
  type SigningState,
  signatureMeanings,
  signingState,
} from "../../proof/signing-state.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
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
      <div class="wide">
        <table class="plain">
          <thead>
            <tr>
              <th scope="col">Meaning</th>
              <th scope="col">Stated in the tables</th>
              <th scope="col">Signature</th>
            </tr>
          </thead>
          <tbody>
            {signatureMeanings.map((meaning) => (
              <SignatureRow key={meaning} meaning={meaning} record={record} state={state} />
            ))}
          </tbody>
        </table>
      </div>
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

function SignatureRow({
  meaning,
  record: { calibration },
  state,
}: {
  meaning: SignatureMeaning;
  record: SealedRecord;
  state: SigningState;
}) {
  const stated = {
    performed: [calibration.performedBy, calibration.performedOn],
    reviewed: [calibration.reviewedBy, calibration.reviewedOn],
    authorised: [calibration.approvedBy, calibration.approvedOn],
  }[meaning].filter((one) => one !== undefined);
  const given = state.given.filter((one) => one.meaning === meaning);
  return (
    <tr>
      <th scope="row">
        {titles[meaning]}
        <span class="where">{state.needed.includes(meaning) ? "needed" : "not asked for"}</span>
      </th>
      <td>{stated.length === 0 ? <span class="not-stated">not stated</span> : stated.join(", ")}</td>
      {given.length === 0 ? (
        <td class="ink" />
      ) : (
        <td>
          {given.map((one) => (
            <Signature key={one.signedAt} given={one} />
          ))}
        </td>
      )}
    </tr>
  );
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
