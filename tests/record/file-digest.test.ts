import { expect, test } from "vitest";
import { digestOf, fileDigest, toHex } from "../../src/record/file-digest.ts";

// FIPS 180-4 test vectors of NIST (Cryptographic Standards and Guidelines, examples with intermediate values, SHA-256).
test("SHA-256 of abc", () => {
  expect(fileDigest(new TextEncoder().encode("abc")).sha256).toBe(
    "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
  );
});

test("SHA-256 of a message of two blocks, and of none", () => {
  const twoBlocks = "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq";
  expect(fileDigest(new TextEncoder().encode(twoBlocks))).toEqual({
    sha256: "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
    byteLength: 56,
  });
  expect(fileDigest(new Uint8Array())).toEqual({
    sha256: "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
    byteLength: 0,
  });
});

test("the digest is 32 bytes, and hexadecimal digits say the same", () => {
  expect(digestOf(new Uint8Array()).length).toBe(32);
  expect(toHex(new Uint8Array([255, 0]))).toBe("ff00");
  const bytes = new TextEncoder().encode("abc");
  expect(toHex(digestOf(bytes))).toBe(fileDigest(bytes).sha256);
});
