import { expect, test } from "vitest";
import { sealSchema } from "../../src/record/seal-schema.ts";
import { sealDigest, sealForm } from "../../src/record/seal-words.ts";

test("a seal says these words and no others", () => {
  const seal = { form: sealForm, digest: sealDigest, sha256: "0".repeat(64), fingerprint: "" };
  expect(sealSchema.safeParse(seal).success).toBe(true);
  expect(sealSchema.safeParse({ ...seal, digest: "SHA-1" }).success).toBe(false);
});
