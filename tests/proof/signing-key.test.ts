import { createPrivateKey, generateKeyPairSync } from "node:crypto";
import { calculateJwkThumbprint, exportJWK } from "jose";
import { expect, test } from "vitest";
import { fromBase64Url, toBase64Url } from "../../src/proof/base64-url.ts";
import {
  isPublicKey,
  isSignatureOf,
  keyFileText,
  keyIdOf,
  newSigningKey,
  openKeyFile,
  signatureOf,
} from "../../src/proof/signing-key.ts";
import { readExpected } from "../published/read-data.ts";
import { ada, ines } from "./sample-signing.ts";

type Published = {
  privateKey: { kty: "OKP"; crv: "Ed25519"; d: string; x: string };
  thumbprint: string;
  thumbprintBytes: string;
  protectedHeader: string;
  payload: string;
  signingInput: string;
  signature: string;
};

const published = readExpected<Published>("rfc8037");
const utf8 = (text: string) => new TextEncoder().encode(text);
const bytesOf = (text: string) => fromBase64Url(text) ?? new Uint8Array();
const rfcKey = {
  publicKey: published.privateKey.x,
  keyId: published.thumbprint,
  privateKey: createPrivateKey({ key: published.privateKey, format: "jwk" }),
};

// RFC 8037, A.4: exact, for Ed25519 has one signature only.
test("the published key gives the published signature", () => {
  const { protectedHeader, payload, signingInput, signature } = published;
  expect(`${toBase64Url(utf8(protectedHeader))}.${toBase64Url(utf8(payload))}`).toBe(signingInput);
  expect(toBase64Url(signatureOf(rfcKey, utf8(signingInput)))).toBe(signature);
  expect(isSignatureOf(rfcKey.publicKey, utf8(signingInput), bytesOf(signature))).toBe(true);
});

// RFC 8037, A.3, by RFC 7638.
test("the published key has the published thumbprint as its id", () => {
  expect(keyIdOf(published.privateKey.x)).toBe(published.thumbprint);
  expect(Buffer.from(bytesOf(keyIdOf(published.privateKey.x))).toString("hex")).toBe(published.thumbprintBytes);
});

test("another implementation gives a new key the same id", async () => {
  const key = newSigningKey();
  const jwk = await exportJWK(key.privateKey);
  expect(jwk).toMatchObject({ kty: "OKP", crv: "Ed25519", x: key.publicKey });
  expect(await calculateJwkThumbprint(jwk, "sha256")).toBe(key.keyId);
});

test("a new key is another each time, and no spreadsheet takes its public half for a formula", () => {
  const keys = Array.from({ length: 200 }, newSigningKey);
  expect(new Set(keys.map(({ keyId }) => keyId)).size).toBe(keys.length);
  for (const { publicKey } of keys) {
    expect(publicKey).toMatch(/^[^-]/u);
    expect(publicKey).toHaveLength(43);
    expect(isPublicKey(publicKey)).toBe(true);
  }
});

test("a signature fits its key and its bytes alone, all 64 bytes of it", () => {
  const bytes = utf8("the record");
  const signature = signatureOf(ada.key, bytes);
  expect(signature).toHaveLength(64);
  expect(isSignatureOf(ada.key.publicKey, bytes, signature)).toBe(true);
  expect(isSignatureOf(ines.key.publicKey, bytes, signature)).toBe(false);
  expect(isSignatureOf(ada.key.publicKey, utf8("the recorD"), signature)).toBe(false);
  expect(isSignatureOf(ada.key.publicKey, bytes, signature.slice(0, 63))).toBe(false);
  for (let index = 0; index < 64; index += 1) {
    const other = Uint8Array.from(signature, (byte, at) => (at === index ? byte ^ 1 : byte));
    expect(isSignatureOf(ada.key.publicKey, bytes, other), String(index)).toBe(false);
  }
});

test.each(["", "11qYAYKx", `${published.privateKey.x}=`, "11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURp", "é"])(
  "%j is no public key and fits nothing",
  (text) => {
    expect(isPublicKey(text)).toBe(false);
    expect(isSignatureOf(text, utf8(published.signingInput), bytesOf(published.signature))).toBe(false);
  },
);

test("the passphrase, and no other, opens the file; it may be typed composed or decomposed", () => {
  const text = keyFileText(ada.key, "Grüße aus Ülm 7");
  const { privateKey: _, ...known } = ada.key;
  expect(openKeyFile(text, "Grüße aus Ülm 7")).toMatchObject(known);
  expect(openKeyFile(text, "Grüße aus Ülm 7".normalize("NFD"))).toMatchObject(known);
  expect(openKeyFile(text, "Grüße aus Ülm 8")).toBeUndefined();
  expect(openKeyFile(text, "")).toBeUndefined();
  const decomposed = keyFileText(ada.key, "Grüße aus Ülm 7".normalize("NFD"));
  expect(openKeyFile(decomposed, "Grüße aus Ülm 7")).toMatchObject(known);
});

test("a key of another kind, and what is no key at all, is not opened", () => {
  const { privateKey } = generateKeyPairSync("x25519");
  const other = privateKey.export({
    type: "pkcs8",
    format: "pem",
    cipher: "aes-256-cbc",
    passphrase: "twelve characters",
  });
  expect(openKeyFile(String(other), "twelve characters")).toBeUndefined();
  expect(openKeyFile("no key", "twelve characters")).toBeUndefined();
});

/** Encodings of points of small order, https://eprint.iacr.org/2020/1244, table 1, with either bit for the sign. */
const smallOrder = [
  ...["0000000000000000000000000000000000000000000000000000000000000000"],
  ...["0100000000000000000000000000000000000000000000000000000000000000"],
  ...["26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05"],
  ...["c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a"],
  ...["ecffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f"],
].flatMap((hex) => [hex, `${hex.slice(0, -2)}${(Number.parseInt(hex.slice(-2), 16) | 0x80).toString(16)}`]);

test.each(smallOrder)("%s is no public key: whoever has no private key finds signatures that fit it", (hex) => {
  const key = Buffer.from(hex, "hex");
  expect(isPublicKey(key.toString("base64url"))).toBe(false);
  const found = Array.from({ length: 32 }, (_, index) => index).filter((index) =>
    smallOrder.some((point) => {
      const forged = Buffer.concat([Buffer.from(point, "hex"), Buffer.alloc(32)]);
      return isSignatureOf(key.toString("base64url"), Uint8Array.of(index), forged);
    }),
  );
  expect(found).toEqual([]);
});
