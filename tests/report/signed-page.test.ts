import { expect, test } from "vitest";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { renderPage } from "../../src/report/page.tsx";
import { ada, ines, recordToSign, signedBy } from "../proof/sample-signing.ts";

const noDrawings = { errorWide: undefined, errorNarrow: undefined, stages: [], others: [], absent: [] };
const pageOf = (record: SealedRecord) => renderPage(record, noDrawings);
const record = recordToSign();
const performed = signedBy(record, [ines, "performed"]);
const issued = signedBy(performed, [ada, "authorised"]);

function partOf(page: string, pattern: RegExp): string {
  return (pattern.exec(page)?.[0] ?? "").replace(/<[^>]+>/gu, " ").replace(/\s+/gu, " ");
}

const headingOf = (one: SealedRecord) => partOf(pageOf(one), /<header.*<\/header>/su);
const signOffOf = (one: SealedRecord) => partOf(pageOf(one), /<section class="sign-off".*?<nav/su);
const inkLinesOf = (one: SealedRecord) =>
  (/<section class="sign-off".*?<nav/su.exec(pageOf(one))?.[0] ?? "").split('<td class="ink">').length - 1;
const marksOf = (one: SealedRecord) => partOf(pageOf(one), /<div class="running".*?<\/div>/su);

test("a record without signatures is a draft in the heading, in the sign-off and on every printed page", () => {
  expect(headingOf(record)).toContain("Calibration record Draft, not signed");
  expect(signOffOf(record)).toContain("This is a draft: nobody has signed it.");
  expect(marksOf(record)).toContain("DRAFT, not signed");
});

test("half signed it says what is missing, at the same three places", () => {
  expect(headingOf(performed)).toContain("Draft, not yet authorised");
  expect(signOffOf(performed)).toContain("This is a draft: it is not yet authorised.");
  expect(marksOf(performed)).toContain("DRAFT, not yet authorised");
});

test("issued it is a draft nowhere, and has the date of its last needed signature", () => {
  const page = pageOf(issued);
  expect(page).not.toMatch(/draft, n|This is a draft/iu);
  expect(headingOf(issued)).toContain("Issued 2026-11-25");
  expect(signOffOf(issued)).toContain("Issued 2026-11-25 14:01:00 +01:00, with the last signature that it needs.");
  expect(marksOf(issued)).toContain("issued 2026-11-25");
  expect(page.replace(/<[^>]+>/gu, " ")).toMatch(/Issued on\s+2026-11-25/u);
});

test("beside each signature stand name, role, meaning, date and time with offset, and the key", () => {
  expect(signOffOf(issued)).toContain(
    `Ines Example , technician signed as performed, 2026-11-25 14:00:00 +01:00 key ${ines.key.keyId}`,
  );
  expect(signOffOf(issued)).toContain(
    `Ada Specimen , quality manager signed as authorised, 2026-11-25 14:01:00 +01:00 key ${ada.key.keyId}`,
  );
});

test("which signatures are asked for stands there; the others keep their line for ink", () => {
  expect(signOffOf(record)).toMatch(/Performed by needed .*Reviewed by not asked for .*Authorised by needed /u);
  const three = recordToSign({ signaturesNeeded: ["performed", "reviewed", "authorised"] });
  expect(signOffOf(three)).toContain("Reviewed by needed");
  expect(inkLinesOf(record)).toBe(3);
  expect(inkLinesOf(issued)).toBe(1);
});

test("the fingerprint stands in the heading, in the sign-off and at the head of every sheet, the whole digest once", () => {
  const { fingerprint, sha256 } = record.seal;
  for (const text of [headingOf(record), signOffOf(record)]) expect(text).toContain(fingerprint);
  expect(
    pageOf(record)
      .replace(/<script.*/su, "")
      .split(sha256),
  ).toHaveLength(2);
  expect(marksOf(record)).toContain(`fingerprint ${fingerprint}`);
});

test("what a signature here is, and who decides whether it counts, is said", () => {
  const text = partOf(pageOf(record), /aria-labelledby="seal-title".*?<\/section>/su);
  expect(text).toContain("made with a key that opens only with its owner’s passphrase");
  expect(text).toContain("Whether a signature counts, beside or instead of one in ink, is for the site’s own rules.");
  expect(text).toContain("What this page shows proves nothing by itself");
});

test("one person for two is said where the instrument allows it", () => {
  expect(signOffOf(signedBy(record, [ines, "performed"], [ines, "authorised"]))).toContain(
    "Ines Example signed it as performed and as authorised: one person, not two.",
  );
});

test("a signature that cannot be read is counted, and the page is there all the same", () => {
  const broken = { ...record, signOff: { signatures: [{ protected: "e30", signature: "AA" }] } };
  expect(signOffOf(broken)).toContain("nobody has signed it. Signatures that cannot be read: 1.");
});

test("a tag that is too long for the head of a page does not push the state off it", () => {
  const long = { ...record, instrument: { ...record.instrument, tag: "T".repeat(500) } };
  expect(marksOf(long)).toContain("DRAFT, not signed");
});

test("names are text and never markup", () => {
  const odd = { ...ines, signer: { ...ines.signer, name: '<b onclick="x">&' } };
  const page = pageOf(signedBy(record, [odd, "performed"]));
  expect(page).not.toContain("<b onclick");
  expect(page).toContain("&lt;b onclick=");
});

test("the page is the same whenever it is made, and another for any other signature", () => {
  expect(pageOf(structuredClone(issued))).toBe(pageOf(issued));
  expect(pageOf(performed)).not.toBe(pageOf(issued));
});
