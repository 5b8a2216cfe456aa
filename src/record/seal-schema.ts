import * as z from "zod";
import { sealDigest, sealForm } from "./seal-words.ts";

/** What binds a record: the digest of its canonical bytes, without seal and sign-off. */
export const sealSchema = z.strictObject({
  form: z.literal(sealForm).describe("canonical JSON that the digest is taken of"),
  digest: z.literal(sealDigest),
  sha256: z.string().regex(/^[0-9a-f]{64}$/u),
  fingerprint: z.string().describe("the digest's beginning, in words and in digits, as pages and labels show it"),
});

export type Seal = z.infer<typeof sealSchema>;

/** One signature of JWS general form (RFC 7515, 7.2.1) whose payload, the canonical bytes, is left out (appendix F). */
const signatureSchema = z.strictObject({
  protected: z.string().describe("base64url of the protected header: alg, kid, and who signs what it means and when"),
  signature: z.string(),
});

export type RecordSignature = z.infer<typeof signatureSchema>;

export const signOffSchema = z.strictObject({ signatures: z.array(signatureSchema) });
