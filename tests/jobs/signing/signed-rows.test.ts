import { expect, test } from "vitest";
import { signedRows } from "../../../src/jobs/signing/signed-rows.ts";
import { ada, ines, recordToSign, signedBy } from "../../proof/sample-signing.ts";

test("a row a record says who signed as what, and what is still missing", () => {
  const record = signedBy(recordToSign(), [ines, "performed"]);
  const issued = signedBy(record, [ada, "authorised"]);
  expect(
    signedRows([
      { record, page: "a.html", signedBy: "Ines Example", signedAs: "performed" },
      { record: issued, page: "b.html", signedBy: "Ada Specimen", signedAs: "authorised" },
    ]),
  ).toEqual([
    ["tag", "calibration", "signed as", "by", "the record is", "page"],
    ["LT-204", "C-0001", "performed", "Ines Example", "a draft: authorised missing", "a.html"],
    ["LT-204", "C-0001", "authorised", "Ada Specimen", "issued 2026-11-25", "b.html"],
  ]);
});
