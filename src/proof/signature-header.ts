import * as z from "zod";
import { signatureMeanings } from "../record/seal-words.ts";
import { fromBase64Url, toBase64Url } from "./base64-url.ts";

/** What kind of signature it is, so that none of another kind can stand in its place (RFC 8725, 3.11). */
const signatureType = "spanwright-signature/1";

/** What a signature says besides the record: each parameter is signed with it, and there is no other. */
const headerSchema = z.strictObject({
  alg: z.enum(["Ed25519", "EdDSA"]),
  kid: z.string(),
  typ: z.literal(signatureType),
  name: z.string().min(1),
  role: z.string().min(1),
  meaning: z.enum(signatureMeanings),
  signedAt: z.iso.datetime({ offset: true }),
});

type SignatureHeader = z.infer<typeof headerSchema>;

/** A signature under a record as it reads: whose, what for, when, and with which key. */
export type GivenSignature = Pick<SignatureHeader, "name" | "role" | "meaning" | "signedAt"> & { keyId: string };

/**
 * The protected header of a signature.
 *
 * @param given who signs, as the table of signers has it; `signedAt` is a date and time with its offset
 * @returns base64url of the header's JSON; the algorithm is called Ed25519
 * Source: RFC 7515, 4; RFC 9864, 2.2 (the name of the algorithm).
 * @example readSignatureHeader(signatureHeader({ keyId: key.keyId, name: "Ada", role: "engineer", meaning: "performed",
 *   signedAt: "2026-11-25T14:05:00Z" })).given.name // "Ada"
 */
export function signatureHeader({ keyId, name, role, meaning, signedAt }: GivenSignature): string {
  const header: SignatureHeader = { alg: "Ed25519", kid: keyId, typ: signatureType, name, role, meaning, signedAt };
  return toBase64Url(new TextEncoder().encode(JSON.stringify(header)));
}

/**
 * What a protected header says.
 *
 * @param text base64url, as it stands in the record
 * @returns the signature as it reads; or why the header is refused: another encoding, a parameter that is unknown
 *   (`crit` too) or missing, a key that stands there twice, an algorithm other than Ed25519 (or EdDSA, its older name)
 * Source: RFC 7515, 4 and 5.2; RFC 9864, 2.2; RFC 8037, 3.1.
 * @example readSignatureHeader("e30") // { says: "its header lacks or misstates alg, kid, typ, name, role, meaning, signedAt" }
 */
export function readSignatureHeader(text: string): { given: GivenSignature } | { says: string } {
  const bytes = fromBase64Url(text);
  if (bytes === undefined) return { says: "its header is not in the one form of base64url" };
  const parsed = plainJson(bytes);
  if (parsed === undefined) return { says: "its header is no plain JSON object" };
  const result = headerSchema.safeParse(parsed);
  if (!result.success) return { says: whatIsRefused(result.error) };
  const { kid, name, role, meaning, signedAt } = result.data;
  return { given: { keyId: kid, name, role, meaning, signedAt } };
}

/** JSON that is written in one way only: without blanks, and without a key that stands there twice. */
function plainJson(bytes: Uint8Array): unknown {
  try {
    const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
    const parsed: unknown = JSON.parse(text);
    return JSON.stringify(parsed) === text ? parsed : undefined;
  } catch {
    return undefined;
  }
}

function whatIsRefused({ issues }: z.ZodError): string {
  const unknown = issues.flatMap((issue) => (issue.code === "unrecognized_keys" ? issue.keys : []));
  if (unknown.length > 0) return `its header has the unknown parameter ${unknown.join(", ")}`;
  return `its header lacks or misstates ${[...new Set(issues.map(({ path }) => path.join(".")))].join(", ")}`;
}
