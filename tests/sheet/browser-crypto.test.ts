import { createHash as ofNode } from "node:crypto";
import { expect, test } from "vitest";
import { createHash } from "../../src/sheet/browser-crypto.ts";

const bytes = (text: string) => new TextEncoder().encode(text);
const hex = (digest: Uint8Array) => Buffer.from(digest).toString("hex");

test("the example of FIPS 180-4 (SHA-256 of abc), and what Node says of other texts", () => {
  expect(hex(createHash("sha256").update(bytes("abc")).digest())).toBe(
    "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
  );
  for (const text of ["", "€".repeat(1000), "a".repeat(64)]) {
    const digest = createHash("sha256").update(bytes(text)).digest();
    expect(hex(digest)).toBe(ofNode("sha256").update(text).digest("hex"));
  }
});
