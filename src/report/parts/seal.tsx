import type { SealedRecord } from "../../record/record-schema.ts";
import { Part } from "../annexes/part.tsx";

/** The seal, and what a signature here is worth. */
export function Seal({ record: { seal } }: { record: SealedRecord }) {
  return (
    <Part id="seal" title="Seal, and what a signature here is">
      <p>
        Fingerprint: <strong class="fingerprint">{seal.fingerprint}</strong>
      </p>
      <p class="small">
        {seal.digest} of the record’s content in canonical JSON ({seal.form}): <code>{seal.sha256}</code>
      </p>
      <p class="small">
        An electronic signature (Ed25519, as a JSON Web Signature) over the whole content of this record, made with a
        key that opens only with its owner’s passphrase. It binds the name, the meaning and the time shown by the
        signing computer to exactly this content: another value anywhere, and neither seal nor signature fits. Whose key
        it is and what its owner may sign stands in the site’s table of signers. Whether a signature counts, beside or
        instead of one in ink, is for the site’s own rules. What this page shows proves nothing by itself;{" "}
        <code>spanwright verify</code> checks it against the record inside it.
      </p>
    </Part>
  );
}
