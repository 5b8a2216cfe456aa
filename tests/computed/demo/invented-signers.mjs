import { createHash, createPrivateKey, createPublicKey } from "node:crypto";
import { keyIdOf } from "../../../src/proof/signing-key.ts";

// Everybody can make these keys: they show how signing works and protect nothing.
const seedWords = "Emberlow Granulate Works is invented, and this key protects nothing";

/** The people of the invented plant who sign: a key each, and a new one for the quality manager in 2024. */
export const inventedSigners = [
  person("Ines Example", "technician (invented)", "2021-01-01", "", "performed"),
  person("Tom Sample", "technician (invented)", "2021-01-01", "", "performed"),
  person("Ada Specimen", "quality manager (invented)", "2021-01-01", "2023-12-31", "reviewed; authorised"),
  person("Ada Specimen", "quality manager (invented)", "2024-01-01", "", "reviewed; authorised"),
];

/** The table of signers as rows, the first one naming the columns. */
export const signerRows = [
  ["name", "role", "public_key", "valid_from", "valid_to", "may_sign"],
  ...inventedSigners.map(({ name, role, key, validFrom, validTo, maySign }) => [
    ...[name, role, key.publicKey, validFrom, validTo, maySign],
  ]),
];

function person(name, role, validFrom, validTo, maySign) {
  return { name, role, validFrom, validTo, maySign, key: keyOf(`${seedWords}: ${name}, ${validFrom}`) };
}

/** An Ed25519 key whose 32 secret bytes are the SHA-256 of some words, in the frame of PKCS#8 (RFC 8410, 7). */
function keyOf(words) {
  const frame = Buffer.from("302e020100300506032b657004220420", "hex");
  const der = Buffer.concat([frame, createHash("sha256").update(words).digest()]);
  const privateKey = createPrivateKey({ key: der, format: "der", type: "pkcs8" });
  const publicKey = createPublicKey(privateKey).export({ format: "jwk" }).x;
  return { publicKey, keyId: keyIdOf(publicKey), privateKey };
}
