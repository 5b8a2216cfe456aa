import { expect, test } from "vitest";
import type { SignatureMeaning } from "../../src/model/signature-meanings.ts";
import type { Signer } from "../../src/model/signer.ts";
import { refusalsOf, signerOf } from "../../src/proof/signing-refusals.ts";
import { signingState } from "../../src/proof/signing-state.ts";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { ada, ines, type Person, recordToSign, signedBy, signers, tom } from "./sample-signing.ts";

const noon = "2026-11-25T15:00:00+01:00";

function refused(
  record: SealedRecord,
  { key, signer }: Person,
  meaning: SignatureMeaning,
  { signedAt = noon, row = {} }: { signedAt?: string; row?: Partial<Signer> } = {},
) {
  const proposed = { keyId: key.keyId, meaning, signedAt };
  return refusalsOf(record, signingState(record).given, proposed, { ...signer, ...row });
}

test("a key is known by the table, and holds from its first day to its last", () => {
  const table: readonly Signer[] = [{ ...ada.signer, validFrom: "2026-03-01", validTo: "2026-11-25" }];
  const on = (day: string) => signerOf(table, ada.key.keyId, `${day}T23:59:59-11:00`);
  expect(on("2026-03-01")).toEqual({ signer: table[0] });
  expect(on("2026-11-25")).toEqual({ signer: table[0] });
  const values = { name: "Ada Specimen", from: "2026-03-01", to: "2026-11-25" };
  expect(on("2026-02-28")).toEqual({ code: "signing/key-not-valid", values: { ...values, day: "2026-02-28" } });
  expect(on("2026-11-26")).toEqual({ code: "signing/key-not-valid", values: { ...values, day: "2026-11-26" } });
  expect(signerOf(table, ines.key.keyId, noon)).toEqual({
    code: "signing/key-unknown",
    values: { keyId: ines.key.keyId },
  });
});

test("where the role of a person changed, the row of the day holds", () => {
  const table: readonly Signer[] = [
    { ...ada.signer, role: "engineer", validTo: "2026-06-30" },
    { ...ada.signer, role: "head of quality", validFrom: "2026-07-01" },
  ];
  expect(signerOf(table, ada.key.keyId, "2026-06-30T08:00:00Z")).toMatchObject({ signer: { role: "engineer" } });
  expect(signerOf(table, ada.key.keyId, noon)).toMatchObject({ signer: { role: "head of quality" } });
});

test("in order, by whom it may be, nothing is refused", () => {
  const record = recordToSign({ signaturesNeeded: ["performed", "reviewed", "authorised"], fourEyes: true });
  expect(refused(record, ines, "performed")).toEqual([]);
  const performed = signedBy(record, [ines, "performed"]);
  expect(refused(performed, tom, "reviewed")).toEqual([]);
  expect(refused(signedBy(performed, [tom, "reviewed"]), ada, "authorised")).toEqual([]);
  expect(refused(signedBy(performed, [tom, "reviewed"]), tom, "authorised")).toEqual([]);
});

test("a meaning that the table does not allow", () => {
  expect(refused(recordToSign(), ines, "performed", { row: { maySign: ["reviewed", "authorised"] } })).toEqual([
    {
      code: "signing/meaning-not-allowed",
      values: { name: "Ines Example", meaning: "performed", allowed: "reviewed, authorised" },
    },
  ]);
  expect(refused(recordToSign(), ines, "performed", { row: { maySign: ["performed"] } })).toEqual([]);
});

test("out of order, twice, and once everything is signed", () => {
  const record = recordToSign();
  const values = { meaning: "authorised", before: "performed", order: "performed, authorised" };
  expect(refused(record, ada, "authorised")).toEqual([{ code: "signing/out-of-order", values }]);
  expect(refused(record, tom, "reviewed")[0]?.code).toBe("signing/out-of-order");
  const performed = signedBy(record, [ines, "performed"]);
  expect(refused(performed, tom, "performed")).toEqual([
    { code: "signing/signed-already", values: { name: "Ines Example", meaning: "performed" } },
  ]);
  expect(refused(performed, tom, "reviewed")).toEqual([]);
  const issued = signedBy(performed, [ada, "authorised"]);
  expect(refused(issued, tom, "reviewed")).toEqual([{ code: "signing/issued", values: {} }]);
});

const fourEyes = { code: "signing/four-eyes", values: { name: "Ines Example", meaning: "authorised" } };

test("four eyes: who performed neither reviews nor authorises, by key or by name", () => {
  const record = signedBy(recordToSign({ fourEyes: true }), [ines, "performed"]);
  expect(refused(record, ines, "authorised")).toEqual([fourEyes]);
  expect(refused(record, tom, "authorised", { row: { name: " ines  EXAMPLE" } })[0]?.code).toBe("signing/four-eyes");
  expect(refused(record, ines, "authorised", { row: { name: "Ines Newname" } })[0]?.code).toBe("signing/four-eyes");
  expect(refused(record, ada, "authorised")).toEqual([]);
});

test("four eyes hold for whom the tables name too, and the other way round", () => {
  const stated = recordToSign({ fourEyes: true, signaturesNeeded: ["authorised"] });
  const named = { ...stated, calibration: { ...stated.calibration, performedBy: "Ines Example" } };
  expect(refused(named, ines, "authorised")).toEqual([fourEyes]);
  expect(refused(named, ada, "authorised")).toEqual([]);
  const reviewed = signedBy(recordToSign({ fourEyes: true, signaturesNeeded: ["reviewed", "performed"] }), [
    tom,
    "reviewed",
  ]);
  expect(refused(reviewed, tom, "performed")[0]?.code).toBe("signing/four-eyes");
});

test("where four eyes are not asked for, one person may do it all", () => {
  expect(refused(signedBy(recordToSign(), [ines, "performed"]), ines, "authorised")).toEqual([]);
});

test("a clock that is behind another signature, or behind the work", () => {
  const record = signedBy(recordToSign(), [ines, "performed"]);
  expect(refused(record, ada, "authorised", { signedAt: "2026-11-25T13:59:59+01:00" })).toEqual([
    {
      code: "signing/clock",
      values: {
        signedAt: "2026-11-25T13:59:59+01:00",
        what: "the signature of Ines Example, 2026-11-25T14:00:00+01:00",
      },
    },
  ]);
  // The same moment in another zone is not earlier.
  expect(refused(record, ada, "authorised", { signedAt: "2026-11-25T13:00:00Z" })).toEqual([]);
  expect(recordToSign().calibration.performedOn).toBe("2026-03-02");
  expect(refused(recordToSign(), ines, "performed", { signedAt: "2026-03-01T23:00:00Z" })).toEqual([
    { code: "signing/clock", values: { signedAt: "2026-03-01T23:00:00Z", what: "the day of the work, 2026-03-02" } },
  ]);
  expect(refused(recordToSign(), ines, "performed", { signedAt: "2026-03-02T00:00:00Z" })).toEqual([]);
});

test("everything that is wrong is told at once", () => {
  const record = signedBy(recordToSign({ fourEyes: true }), [ines, "performed"]);
  const codes = refused(record, ines, "performed", {
    row: { maySign: ["reviewed"] },
    signedAt: "2026-11-25T13:00:00+01:00",
  });
  expect(codes.map(({ code }) => code)).toEqual([
    "signing/meaning-not-allowed",
    "signing/signed-already",
    "signing/clock",
  ]);
  expect(signers).toHaveLength(3);
});
