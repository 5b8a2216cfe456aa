import { createHash } from "node:crypto";

/** What proves later that a file is the one that was read. */
export type FileDigest = { sha256: string; byteLength: number };

/**
 * The SHA-256 of a file's bytes and their number.
 *
 * @param bytes of the file, as they lay on the disk
 * @returns 64 hexadecimal digits, lower case, and the length in bytes
 * Source: FIPS 180-4 (SHA-256).
 * @example fileDigest(new TextEncoder().encode("abc")).sha256
 *   // "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
 */
export function fileDigest(bytes: Uint8Array): FileDigest {
  return { sha256: toHex(digestOf(bytes)), byteLength: bytes.byteLength };
}

/**
 * The SHA-256 of bytes.
 *
 * @param bytes any
 * @returns 32 bytes
 * Source: FIPS 180-4 (SHA-256).
 * @example digestOf(new Uint8Array()).length // 32
 */
export function digestOf(bytes: Uint8Array): Uint8Array {
  return createHash("sha256").update(bytes).digest();
}

/**
 * Bytes as hexadecimal digits.
 *
 * @param bytes any
 * @returns two lower-case digits a byte
 * Source: own choice.
 * @example toHex(new Uint8Array([255, 0])) // "ff00"
 */
export function toHex(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString("hex");
}
