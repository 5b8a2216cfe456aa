import { expect, test } from "vitest";
import { signatureMeanings } from "../../src/model/signature-meanings.ts";
import { signerSchema } from "../../src/model/signer.ts";
import { tableColumns } from "../../src/model/table-columns.ts";
import { tableNames } from "../../src/model/table-names.ts";

const signer = { name: "Ada Specimen", role: "engineer", publicKey: "11qYAYKx", validFrom: "2026-01-01" };

test("name, role, key and first day make a signer", () => {
  expect(signerSchema.parse(signer)).toEqual(signer);
  const whole = { ...signer, validTo: "2026-12-31", maySign: ["reviewed", "authorised"] };
  expect(signerSchema.parse(whole)).toEqual(whole);
  for (const key of Object.keys(signer)) {
    const { [key as keyof typeof signer]: _, ...less } = signer;
    expect(signerSchema.safeParse(less).success, key).toBe(false);
  }
  expect(signerSchema.safeParse({ ...signer, maySign: ["seen"] }).success).toBe(false);
});

test("the table of signers has its columns, and is none of a workbook's tables", () => {
  expect(tableColumns("signers").map(({ name }) => name)).toEqual([
    "name",
    "role",
    "public_key",
    "valid_from",
    "valid_to",
    "may_sign",
    "revoked_at",
    "revoked_reason",
  ]);
  expect(tableNames).not.toContain("signers");
});

test("a signature means that the work was performed, reviewed or authorised, in this order", () => {
  expect(signatureMeanings).toEqual(["performed", "reviewed", "authorised"]);
});
