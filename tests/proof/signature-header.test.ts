import { expect, test } from "vitest";
import { toBase64Url } from "../../src/proof/base64-url.ts";
import { readSignatureHeader, signatureHeader } from "../../src/proof/signature-header.ts";
import { ada } from "./sample-signing.ts";

const given = Object.freeze({
  keyId: ada.key.keyId,
  name: "Ada Specimen",
  role: "quality manager",
  meaning: "authorised",
  signedAt: "2026-11-25T14:05:00+01:00",
} as const);

const inside = JSON.parse(Buffer.from(signatureHeader(given), "base64url").toString());
const encoded = (text: string) => toBase64Url(new TextEncoder().encode(text));

test("the header names algorithm, key, kind, and whose signature it is, what for and when", () => {
  expect(inside).toEqual({
    alg: "Ed25519",
    kid: ada.key.keyId,
    typ: "spanwright-signature/1",
    name: "Ada Specimen",
    role: "quality manager",
    meaning: "authorised",
    signedAt: "2026-11-25T14:05:00+01:00",
  });
});

test("what was written is read, also under the older name of the algorithm", () => {
  expect(readSignatureHeader(signatureHeader(given))).toEqual({ given });
  expect(readSignatureHeader(encoded(JSON.stringify({ ...inside, alg: "EdDSA" })))).toEqual({ given });
});

test("a name in any script survives", () => {
  const other = { ...given, name: "Zoë Müster-Łąk 東京" };
  expect(readSignatureHeader(signatureHeader(other))).toEqual({ given: other });
});

const { name: _name, ...nameless } = inside;

test.each([
  ["another encoding", `${signatureHeader(given)}=`, "its header is not in the one form of base64url"],
  ["no JSON", encoded("{"), "its header is no plain JSON object"],
  ["bytes that are no text", toBase64Url(new Uint8Array([0xff])), "its header is no plain JSON object"],
  ["a blank between", encoded(` ${JSON.stringify(inside)}`), "its header is no plain JSON object"],
  [
    "a parameter that stands there twice",
    encoded(JSON.stringify(inside).replace("{", '{"meaning":"performed",')),
    "its header is no plain JSON object",
  ],
  ["a list", encoded("[]"), "its header lacks or misstates "],
  ["an unknown parameter", encoded(JSON.stringify({ ...inside, jwk: {} })), "its header has the unknown parameter jwk"],
  ["crit", encoded(JSON.stringify({ ...inside, crit: ["exp"] })), "its header has the unknown parameter crit"],
  [
    "b64, for which payloads are taken otherwise (RFC 7797)",
    encoded(JSON.stringify({ ...inside, b64: false })),
    "its header has the unknown parameter b64",
  ],
  ["nothing", encoded("{}"), "its header lacks or misstates alg, kid, typ, name, role, meaning, signedAt"],
  ["no name", encoded(JSON.stringify(nameless)), "its header lacks or misstates name"],
  ["no algorithm", encoded(JSON.stringify({ ...inside, alg: "none" })), "its header lacks or misstates alg"],
  ["another algorithm", encoded(JSON.stringify({ ...inside, alg: "HS256" })), "its header lacks or misstates alg"],
  ["another kind", encoded(JSON.stringify({ ...inside, typ: "JWT" })), "its header lacks or misstates typ"],
  ["another meaning", encoded(JSON.stringify({ ...inside, meaning: "seen" })), "its header lacks or misstates meaning"],
  [
    "a time without offset",
    encoded(JSON.stringify({ ...inside, signedAt: "2026-11-25T14:05:00" })),
    "its header lacks or misstates signedAt",
  ],
])("%s is refused", (_, text, says) => {
  expect(readSignatureHeader(text)).toEqual({ says });
});
