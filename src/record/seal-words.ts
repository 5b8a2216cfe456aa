/** Who may sign, and what for: words of the tables that signatures use. */
export { type SignatureMeaning, signatureMeanings } from "../model/signature-meanings.ts";
export type { Signer } from "../model/signer.ts";

/** The form that the bytes of a seal are in, and the digest that is taken of them. */
export const sealForm = "RFC 8785";
export const sealDigest = "SHA-256";
