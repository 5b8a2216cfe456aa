import { expect, test } from "vitest";
import { missingOf, neededBefore, signaturesNeeded, signingState } from "../../src/proof/signing-state.ts";
import { ada, ines, recordToSign, signedBy, tom } from "./sample-signing.ts";

test("without a word in the tables, who performed and who authorises have to sign", () => {
  expect(signaturesNeeded(recordToSign())).toEqual(["performed", "authorised"]);
  expect(signaturesNeeded(recordToSign({ signaturesNeeded: ["reviewed", "performed"] }))).toEqual([
    "reviewed",
    "performed",
  ]);
});

test("an empty list of needed signatures never makes an unsigned record an issued one", () => {
  const record = recordToSign({ signaturesNeeded: [] });
  expect(signaturesNeeded(record)).toEqual(["performed", "authorised"]);
  expect(signingState(record).isIssued).toBe(false);
});

test("unsigned, partly signed, issued", () => {
  const record = recordToSign();
  expect(signingState(record)).toEqual({
    given: [],
    unreadable: 0,
    needed: ["performed", "authorised"],
    missing: ["performed", "authorised"],
    isIssued: false,
    issuedAt: undefined,
  });
  const partly = signedBy(record, [ines, "performed"]);
  expect(signingState(partly)).toMatchObject({ missing: ["authorised"], isIssued: false, issuedAt: undefined });
  const issued = signingState(signedBy(partly, [ada, "authorised"]));
  expect(issued).toMatchObject({ missing: [], isIssued: true, issuedAt: "2026-11-25T14:01:00+01:00" });
  expect(issued.given).toEqual([
    {
      keyId: ines.key.keyId,
      name: "Ines Example",
      role: "technician",
      meaning: "performed",
      signedAt: "2026-11-25T14:00:00+01:00",
    },
    {
      keyId: ada.key.keyId,
      name: "Ada Specimen",
      role: "quality manager",
      meaning: "authorised",
      signedAt: "2026-11-25T14:01:00+01:00",
    },
  ]);
});

test("the date of issue is that of the last signature that was needed, not of another", () => {
  const record = signedBy(recordToSign(), [ines, "performed"], [ada, "authorised"], [tom, "reviewed"]);
  expect(signingState(record)).toMatchObject({ isIssued: true, issuedAt: "2026-11-25T14:01:00+01:00" });
});

test("a signature that cannot be read counts for nothing, and is counted", () => {
  const record = recordToSign();
  const signatures = [{ protected: "e30", signature: "AA" }];
  expect(signingState({ ...record, signOff: { signatures } })).toMatchObject({
    given: [],
    unreadable: 1,
    missing: ["performed", "authorised"],
  });
});

test("what has to come before: the needed ones in their order; before another, what is earlier in the work", () => {
  expect(neededBefore("authorised", ["performed", "reviewed", "authorised"])).toEqual(["performed", "reviewed"]);
  expect(neededBefore("performed", ["reviewed", "performed"])).toEqual(["reviewed"]);
  expect(neededBefore("reviewed", ["performed", "authorised"])).toEqual(["performed"]);
  expect(neededBefore("performed", ["authorised"])).toEqual([]);
  expect(missingOf(["performed", "authorised"], [{ meaning: "authorised" }])).toEqual(["performed"]);
});
