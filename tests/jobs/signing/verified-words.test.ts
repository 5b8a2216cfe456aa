import { expect, test } from "vitest";
import { verifiedWords } from "../../../src/jobs/signing/verified-words.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { sampleLines } from "../../filing/sample-lines.ts";
import { sampleRecord } from "../../filing/sample-pages.ts";
import { ada, ines, signedBy } from "../../proof/sample-signing.ts";

const sample = sampleRecord();
const draft = sealRecord({ ...sample, calibration: { ...sample.calibration, performedBy: "I. Example" } });
const signed = signedBy(draft, [ines, "performed"], [ada, "authorised"]);
const [line] = sampleLines(1);
const filed = { line: { ...line!, at: "2026-12-24T10:00:00Z" } };

test("a record signed in ink is signed where its paper lies, and one that nobody signed is not", () => {
  expect(verifiedWords(draft, undefined)).toBe("LT-1, C-1, revision 1, not signed");
  const onPaper = { line: { ...filed.line, paper: "binder 7" } };
  expect(verifiedWords(draft, onPaper)).toBe("LT-1, C-1, revision 1, signed on paper: binder 7, filed on 2026-12-24");
  const inPart = signedBy(draft, [ines, "performed"]);
  expect(verifiedWords(inPart, undefined)).toBe("LT-1, C-1, revision 1, signed in part");
  expect(verifiedWords(inPart, onPaper)).toContain("signed in part, and on paper: binder 7");
});

test("how long after its last signature it was filed, and which revision took its place", () => {
  expect(verifiedWords(signed, filed)).toBe("LT-1, C-1, revision 1, signed, filed 29 days after the last signature");
  expect(verifiedWords(signed, { line: { ...line!, at: "2026-11-25T23:00:00Z" }, replacedBy: 2 })).toBe(
    "LT-1, C-1, revision 1, signed, filed on the day of the last signature, superseded by revision 2",
  );
});

test("that another signed for the work than the record states is told", () => {
  const byTom = sealRecord({ ...sample, calibration: { ...sample.calibration, performedBy: "Tom Sample" } });
  expect(verifiedWords(signedBy(byTom, [ines, "performed"]), undefined)).toBe(
    "LT-1, C-1, revision 1, signed in part, Ines Example signed for the work, which by the record Tom Sample did",
  );
});
