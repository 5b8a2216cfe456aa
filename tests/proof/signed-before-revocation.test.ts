import { expect, test } from "vitest";
import { signedBeforeRevocation } from "../../src/proof/signed-before-revocation.ts";
import { ada, ines, recordToSign, signedBy } from "./sample-signing.ts";

const record = signedBy(recordToSign(), [ines, "performed"], [ada, "authorised"]);
const revokedAt = "2026-12-01T08:00:00+01:00";
const revoked = { ...ines.signer, revokedAt, revokedReason: "the key was on a lost stick" };
const doubtsAt = (at: string, isFiled = true) => signedBeforeRevocation(record, [revoked, ada.signer], { at, isFiled });

test("a page that was filed before the key was revoked is as good as it was", () => {
  expect(doubtsAt("2026-11-30T08:00:00+01:00")).toEqual([]);
  // The same moment, as another place writes it, less a second.
  expect(doubtsAt("2026-12-01T06:59:59Z")).toEqual([]);
});

test("one that nobody had before is in doubt, however early its signature says that it is", () => {
  expect(doubtsAt("2026-12-01T07:00:00Z")).toEqual([
    {
      about: "signatures",
      place: "signOff.signatures[0]",
      says: "the signature 1: the key of Ines Example was revoked at 2026-12-01T08:00:00+01:00: the key was on a lost stick; that it was given before, at 2026-11-25T14:00:00+01:00, it says itself alone: the page was filed at 2026-12-01T07:00:00Z only",
    },
  ]);
  expect(doubtsAt("2027-01-01T00:00:00Z", false)[0]?.says).toMatch(/: the page was never filed$/u);
});

test("keys that were not revoked, and signatures of a later time, which are refused in any case, give none here", () => {
  const seen = { at: "2027-01-01T00:00:00Z", isFiled: true };
  expect(signedBeforeRevocation(record, [ines.signer, ada.signer], seen)).toEqual([]);
  const earlier = { ...revoked, revokedAt: "2026-11-25T14:00:00+01:00" };
  expect(signedBeforeRevocation(record, [earlier], seen)).toEqual([]);
});
