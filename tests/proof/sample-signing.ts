import { createPrivateKey } from "node:crypto";
import { readFileSync } from "node:fs";
import type { Instrument } from "../../src/model/instrument.ts";
import type { SignatureMeaning } from "../../src/model/signature-meanings.ts";
import type { Signer } from "../../src/model/signer.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { signRecord } from "../../src/proof/sign-record.ts";
import { keyIdOf, type SigningKey } from "../../src/proof/signing-key.ts";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { sampleRecord } from "../charts/sample-record.ts";

/** Invented people, each with a key that a number makes: the same in every run. */
export const ines = person("Ines Example", "technician", 1);
export const tom = person("Tom Sample", "engineer", 2);
export const ada = person("Ada Specimen", "quality manager", 3);

export type Person = { key: SigningKey; signer: Signer };

/** What opens the key files. */
export const passphrase = "twelve characters";

/**
 * The key files of these people by their names. OpenSSL made them (pkcs8 -topk8 -scrypt -scrypt_N 2), with the least cost
 * there is: opening one takes no time, where a file of our own takes a fifth of a second to make and another to open.
 */
export const keyFiles: Readonly<Record<string, string>> = Object.fromEntries(
  ["ines.pem", "tom.pem", "ada.pem"].map((name) => [
    name,
    readFileSync(new URL(`keys/${name}`, import.meta.url), "utf8"),
  ]),
);

export const signers: readonly Signer[] = [ines, tom, ada].map(({ signer }) => signer);

function person(name: string, role: string, number: number): Person {
  const seed = Buffer.alloc(32, number);
  // PKCS#8 of an Ed25519 key: RFC 8410, 7, with the 32 bytes of the seed at its end.
  const der = Buffer.concat([Buffer.from("302e020100300506032b657004220420", "hex"), seed]);
  const privateKey = createPrivateKey({ key: der, format: "der", type: "pkcs8" });
  const publicKey = String(privateKey.export({ format: "jwk" }).x);
  const signer = { name, role, publicKey, validFrom: "2026-01-01" };
  return { key: { publicKey, keyId: keyIdOf(publicKey), privateKey }, signer };
}

/** A record of the sample loop, with rules of its own for the signatures. */
export function recordToSign(
  rules: Pick<Instrument, "signaturesNeeded" | "fourEyes"> = {},
  work: { performedBy?: string } = {},
): SealedRecord {
  const record = sampleRecord({ points: 3, cycles: 1, phases: ["asFound"] });
  const calibration = { ...record.calibration, ...work };
  return sealRecord({ ...record, instrument: { ...record.instrument, ...rules }, calibration });
}

/** Signed on 2026-11-25, a minute after each other. */
export function signedBy(record: SealedRecord, ...signatures: readonly (readonly [Person, SignatureMeaning])[]) {
  return signatures.reduce((signed, [{ key, signer }, meaning], index) => {
    const minute = String(record.signOff.signatures.length + index).padStart(2, "0");
    const signedAt = `2026-11-25T14:${minute}:00+01:00`;
    return signRecord(signed, key, { name: signer.name, role: signer.role, meaning, signedAt });
  }, record);
}
