import { fromBase64Url } from "../../proof/base64-url.ts";
import { canonicalText } from "../../proof/canonical-text.ts";
import { isSignatureOf, keyIdOf } from "../../proof/signing-key.ts";
import type { PublishedExample } from "./published-example.ts";

/** RFC 8785, 3.2.2, and 3.2.4 as text. */
export const canonical = {
  sample: String.raw`{"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001], "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/", "literals": [null, true, false]}`,
  text: String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
} as const;

/** RFC 8037, appendix A: public key, thumbprint, what was signed, and the signature. */
export const edwards = {
  publicKey: "11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo",
  thumbprint: "kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k",
  signingInput: "eyJhbGciOiJFZERTQSJ9.RXhhbXBsZSBvZiBFZDI1NTE5IHNpZ25pbmc",
  signature: "hgyY0il_MGCjP0JzlnLWG1PPOt7-09PGcvMg3AIbQR6dWbhijcNR4ki4iylGjg5BhVsPt9g7sVvpAr_MuM0KAg",
} as const;

const bytesOf = (text: string) => new TextEncoder().encode(text);

function isTaken(signed: string): string {
  const signature = fromBase64Url(edwards.signature) ?? new Uint8Array();
  return isSignatureOf(edwards.publicKey, bytesOf(signed), signature) ? "taken" : "refused";
}

/** What seals and signatures rest on. */
export const proofExamples: readonly PublishedExample[] = [
  {
    name: "canonical JSON",
    source: "RFC 8785, 3.2.2 and 3.2.4",
    compare: () => [
      { figure: "text", computed: canonicalText(JSON.parse(canonical.sample)), published: canonical.text },
    ],
  },
  {
    name: "key id (SHA-256) and signature",
    source: "RFC 8037, A.3 and A.4",
    compare: () => [
      { figure: "key id", computed: keyIdOf(edwards.publicKey), published: edwards.thumbprint },
      { figure: "signature", computed: isTaken(edwards.signingInput), published: "taken" },
      { figure: "of another text", computed: isTaken(`${edwards.signingInput}A`), published: "refused" },
    ],
  },
];
