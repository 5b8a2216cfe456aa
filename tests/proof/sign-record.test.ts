import { FlattenedSign, GeneralSign, generalVerify, importJWK, type JWK } from "jose";
import { expect, test } from "vitest";
import { toBase64Url } from "../../src/proof/base64-url.ts";
import { canonicalBytes } from "../../src/proof/canonical-bytes.ts";
import { checkSignatures } from "../../src/proof/check-signatures.ts";
import { signingInput, signRecord } from "../../src/proof/sign-record.ts";
import { readSignatureHeader, signatureHeader } from "../../src/proof/signature-header.ts";
import { sealedRecordSchema } from "../../src/record/record-schema.ts";
import { ada, ines, recordToSign, signedBy, signers } from "./sample-signing.ts";

const record = recordToSign();
const payload = canonicalBytes(record);
const publicJwk = (x: string): JWK => ({ kty: "OKP", crv: "Ed25519", x });

test("a signature is added behind the others, and nothing else changes", () => {
  const once = signedBy(record, [ines, "performed"]);
  const twice = signedBy(once, [ada, "authorised"]);
  expect(twice.signOff.signatures).toHaveLength(2);
  expect(twice.signOff.signatures[0]).toEqual(once.signOff.signatures[0]);
  expect({ ...twice, signOff: record.signOff }).toEqual(record);
  expect(Object.keys(twice)).toEqual(Object.keys(record));
  expect(sealedRecordSchema.parse(twice)).toEqual(twice);
  expect(record.signOff.signatures).toEqual([]);
});

test("the same key, record and time give the same signature", () => {
  expect(signedBy(record, [ines, "performed"])).toEqual(signedBy(record, [ines, "performed"]));
});

test("the signing input is header, point and payload in base64url", () => {
  expect(new TextDecoder().decode(signingInput("e30", record))).toBe(`e30.${toBase64Url(payload)}`);
  expect(toBase64Url(payload).startsWith("eyJjYWxpYnJhdGlvbiI6ey")).toBe(true);
});

// jose 6.2.18, another implementation of RFC 7515: general form, the detached payload put back (appendix F).
test("another implementation verifies our signatures, each with its key", async () => {
  const signed = signedBy(record, [ines, "performed"], [ada, "authorised"]);
  const jws = { payload: toBase64Url(payload), signatures: [...signed.signOff.signatures] };
  for (const { key } of [ines, ada]) {
    const verified = await generalVerify(jws, await importJWK(publicJwk(key.publicKey), "Ed25519"));
    expect(verified.payload).toEqual(payload);
  }
  expect((await generalVerify(jws, await importJWK(publicJwk(ines.key.publicKey), "Ed25519"))).protectedHeader).toEqual(
    expect.objectContaining({ alg: "Ed25519", kid: ines.key.keyId, meaning: "performed" }),
  );
  const other = { ...jws, payload: toBase64Url(canonicalBytes(recordToSign({ fourEyes: true }))) };
  await expect(generalVerify(other, await importJWK(publicJwk(ines.key.publicKey), "Ed25519"))).rejects.toThrow();
});

const headerOf = (person: typeof ines, meaning: "performed" | "authorised", minute: string) =>
  JSON.parse(
    Buffer.from(
      signatureHeader({
        keyId: person.key.keyId,
        name: person.signer.name,
        role: person.signer.role,
        meaning,
        signedAt: `2026-11-25T14:${minute}:00+01:00`,
      }),
      "base64url",
    ).toString(),
  );

test("we verify the signatures of another implementation, and it writes the same bytes as we do", async () => {
  const jws = new GeneralSign(payload);
  jws.addSignature(ines.key.privateKey).setProtectedHeader(headerOf(ines, "performed", "00"));
  jws.addSignature(ada.key.privateKey).setProtectedHeader(headerOf(ada, "authorised", "01"));
  const signatures = (await jws.sign()).signatures.map((one) => ({
    protected: String(one.protected),
    signature: one.signature,
  }));
  expect(checkSignatures({ ...record, signOff: { signatures } }, signers)).toEqual([]);
  expect(signatures).toEqual(signedBy(record, [ines, "performed"], [ada, "authorised"]).signOff.signatures);
});

test("a signature under the older name of the algorithm (RFC 8037) holds too", async () => {
  const header = { ...headerOf(ines, "performed", "00"), alg: "EdDSA" };
  const one = await new FlattenedSign(payload).setProtectedHeader(header).sign(ines.key.privateKey);
  const signatures = [{ protected: String(one.protected), signature: one.signature }];
  expect(checkSignatures({ ...record, signOff: { signatures } }, signers)).toEqual([]);
});

test("what is signed reads as it was stated", () => {
  const statement = {
    name: "Ada Specimen",
    role: "engineer",
    meaning: "authorised",
    signedAt: "2026-11-25T14:05:00+01:00",
  } as const;
  const { signOff } = signRecord(record, ada.key, statement);
  expect(signOff.signatures).toHaveLength(1);
  expect(readSignatureHeader(signOff.signatures[0]?.protected ?? "")).toEqual({
    given: { ...statement, keyId: ada.key.keyId },
  });
});
