import { describe, expect, test } from "vitest";
import type { Signer } from "../../src/model/signer.ts";
import { toBase64Url } from "../../src/proof/base64-url.ts";
import { checkSignatures } from "../../src/proof/check-signatures.ts";
import { sealOf } from "../../src/proof/seal-record.ts";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { ada, ines, recordToSign, signedBy, signers, tom } from "./sample-signing.ts";

const record = signedBy(recordToSign(), [ines, "performed"], [ada, "authorised"]);
const [first, second] = record.signOff.signatures as [Signature, Signature];

type Signature = SealedRecord["signOff"]["signatures"][number];

const withSignatures = (...signatures: readonly Signature[]): SealedRecord => ({
  ...record,
  signOff: { signatures: [...signatures] },
});

function doubtsOf(changed: SealedRecord, table: readonly Signer[] = signers): readonly string[] {
  return checkSignatures(changed, table).map(({ about, place, says }) => {
    expect(about).toBe("signatures");
    return `${place}: ${says}`;
  });
}

const doesNotFit = (name: string) =>
  `it does not fit: ${name} did not sign this content with this header; the record or the signature was changed, or the signature comes from another record`;

test("what was signed in order, by those who may, is without doubt; and so is a record without signatures", () => {
  expect(doubtsOf(record)).toEqual([]);
  expect(doubtsOf(withSignatures())).toEqual([]);
  expect(doubtsOf(withSignatures(), [])).toEqual([]);
});

describe("the header, each part of it", () => {
  const header = JSON.parse(Buffer.from(first.protected, "base64url").toString());
  const withHeader = (changes: object) =>
    withSignatures({
      ...first,
      protected: toBase64Url(new TextEncoder().encode(JSON.stringify({ ...header, ...changes }))),
    });

  test.each([
    ["alg", { alg: "EdDSA" }, doesNotFit("Ines Example")],
    ["alg none", { alg: "none" }, "its header lacks or misstates alg"],
    ["typ", { typ: "JWT" }, "its header lacks or misstates typ"],
    ["kid of another signer", { kid: ada.key.keyId }, doesNotFit("Ada Specimen")],
    ["kid of nobody", { kid: "AAAA" }, "the key AAAA is not in the table of signers"],
    ["name", { name: "Ada Specimen" }, doesNotFit("Ines Example")],
    ["role", { role: "head of quality" }, doesNotFit("Ines Example")],
    ["meaning", { meaning: "authorised" }, doesNotFit("Ines Example")],
    ["time", { signedAt: "2026-11-25T14:00:01+01:00" }, doesNotFit("Ines Example")],
    ["offset", { signedAt: "2026-11-25T13:00:00+00:00" }, doesNotFit("Ines Example")],
    ["crit", { crit: ["b64"], b64: false }, "its header has the unknown parameter crit, b64"],
    ["jku", { jku: "x" }, "its header has the unknown parameter jku"],
  ])("%s", (_, changes, says) => {
    expect(doubtsOf(withHeader(changes))[0]).toBe(`signOff.signatures[0]: the signature 1: ${says}`);
  });

  test("a name that is not the table's is told beside", () => {
    expect(doubtsOf(withHeader({ name: "Ada Specimen" }))[1]).toBe(
      "signOff.signatures[0]: the signature 1: it says Ada Specimen, technician; the table of signers has Ines Example, technician for this key",
    );
  });

  test("every character of it", () => {
    const letters = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_"];
    for (const [index, letter] of [...first.protected].entries()) {
      const other = letters[(letters.indexOf(letter) + 1) % 64];
      const changed = first.protected.slice(0, index) + other + first.protected.slice(index + 1);
      expect(doubtsOf(withSignatures({ ...first, protected: changed })).length, String(index)).toBeGreaterThan(0);
    }
  });
});

describe("the signature", () => {
  test("every character of it; the last one has four values for the same bytes, of which one is right", () => {
    const letters = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_"];
    for (const index of first.signature.split("").keys()) {
      for (const letter of index === first.signature.length - 1 ? letters : ["A", "B"]) {
        const changed = first.signature.slice(0, index) + letter + first.signature.slice(index + 1);
        if (changed === first.signature) continue;
        const [doubt] = doubtsOf(withSignatures({ ...first, signature: changed }));
        expect(doubt, String(index)).toMatch(/does not fit|not in the one form of base64url/u);
      }
    }
  });

  test("cut off, drawn out, padded, empty", () => {
    for (const signature of [first.signature.slice(0, -2), `${first.signature}AA`, `${first.signature}==`, ""]) {
      expect(doubtsOf(withSignatures({ ...first, signature }))).toHaveLength(1);
    }
  });

  test("that of another header", () => {
    expect(doubtsOf(withSignatures({ ...first, signature: second.signature }))).toEqual([
      `signOff.signatures[0]: the signature 1: ${doesNotFit("Ines Example")}`,
    ]);
  });
});

describe("the content", () => {
  test("any change of it, resealed or not, breaks every signature", () => {
    const changed = structuredClone(record);
    const reading = changed.phases.asFound?.readings[0];
    if (reading === undefined) throw new Error("the sample has readings");
    reading.reference += 1e-9;
    const resealed = { ...changed, seal: sealOf(changed) };
    for (const one of [changed, resealed]) {
      expect(doubtsOf(one)).toEqual([
        `signOff.signatures[0]: the signature 1: ${doesNotFit("Ines Example")}`,
        `signOff.signatures[1]: the signature 2: ${doesNotFit("Ada Specimen")}`,
      ]);
    }
  });

  test("a signature that was moved here from another record", () => {
    const other = recordToSign({ signaturesNeeded: ["performed"] });
    const moved = { ...other, signOff: { signatures: [first] } };
    expect(doubtsOf(moved)).toEqual([`signOff.signatures[0]: the signature 1: ${doesNotFit("Ines Example")}`]);
  });
});

describe("who may sign, in which order", () => {
  const doubt = (index: number, says: string) => `signOff.signatures[${index}]: the signature ${index + 1}: ${says}`;

  test("a key that is not in the table, and one whose row was taken out of it", () => {
    expect(doubtsOf(record, [ines.signer])).toEqual([
      doubt(1, `the key ${ada.key.keyId} is not in the table of signers`),
    ]);
  });

  test("a key that had expired on the day of signing", () => {
    const table = [{ ...ines.signer, validTo: "2026-11-24" }, ada.signer];
    expect(doubtsOf(record, table)).toEqual([doubt(0, "the key of Ines Example was not valid on 2026-11-25")]);
    expect(doubtsOf(record, [{ ...ines.signer, validTo: "2026-11-25" }, ada.signer])).toEqual([]);
  });

  test("another public key in the table under the same name", () => {
    const table = [{ ...ines.signer, publicKey: tom.signer.publicKey }, ada.signer];
    expect(doubtsOf(record, table)[0]).toContain("is not in the table of signers");
  });

  test("a person who may not sign so", () => {
    expect(doubtsOf(record, [ines.signer, { ...ada.signer, maySign: ["reviewed"] }])).toEqual([
      doubt(1, "Ada Specimen may not sign as authorised"),
    ]);
  });

  test("signatures in another order, one given twice, one left out before another", () => {
    expect(doubtsOf(withSignatures(second, first))[0]).toBe(
      doubt(0, "authorised comes after performed, which is missing"),
    );
    expect(doubtsOf(withSignatures(first, first))).toEqual([doubt(1, "Ines Example has signed as performed already")]);
    expect(doubtsOf(withSignatures(second))).toEqual([doubt(0, "authorised comes after performed, which is missing")]);
  });

  test("one person where two are asked for", () => {
    const alone = signedBy(recordToSign({ fourEyes: true }), [ines, "performed"], [ines, "authorised"]);
    expect(doubtsOf(alone)).toEqual([
      doubt(
        1,
        "Ines Example may not both perform and review or authorise: the instrument asks for two people (four_eyes)",
      ),
    ]);
  });

  test("a signature added after the record was issued", () => {
    expect(doubtsOf(signedBy(record, [tom, "reviewed"]))).toEqual([
      doubt(2, "the record is issued: every signature that it needs is there, and it is changed no more"),
    ]);
  });

  test("the last signature taken away leaves a draft that is whole: only a ledger can tell that it was there", () => {
    expect(doubtsOf(withSignatures(first))).toEqual([]);
  });
});

test("more signatures than there are meanings are told once, and not gone through", () => {
  const start = performance.now();
  const doubts = doubtsOf(withSignatures(...Array.from({ length: 20_000 }, () => first)));
  expect(doubts).toEqual([
    "signOff.signatures[1]: the signature 2: Ines Example has signed as performed already",
    "signOff.signatures[2]: the signature 3: Ines Example has signed as performed already",
    "signOff.signatures: the record has 20000 signatures; more than 3 cannot be, each meaning once",
  ]);
  expect(performance.now() - start).toBeLessThan(2_000);
});

test("a signature of more than a day later than the clock is told; within a day clocks may differ", () => {
  const at = (now: string) => checkSignatures(record, signers, now).map(({ says }) => says);
  expect(at("2026-11-24T14:01:00+01:00")).toEqual([]);
  expect(at("2026-11-24T14:00:00+01:00")).toEqual([
    "the signature 2: its time, 2026-11-25T14:01:00+01:00, is yet to come: the clock here says 2026-11-24T14:00:00+01:00",
  ]);
});
