/**
 * Bytes as text that fits into a URL and into a JSON Web Signature.
 *
 * @param bytes any
 * @returns base64url without padding
 * Source: RFC 4648, 5; RFC 7515, 2.
 * @example toBase64Url(new Uint8Array([251, 255])) // "-_8"
 */
export function toBase64Url(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString("base64url");
}

/**
 * The bytes of a text in base64url.
 *
 * @param text without padding
 * @returns the bytes; nothing where the text is not the one form of them, so that no character of it can change unseen
 * Source: RFC 4648, 3.5 (canonical encoding).
 * @example fromBase64Url("-_9") // undefined
 */
export function fromBase64Url(text: string): Uint8Array | undefined {
  const bytes = Buffer.from(text, "base64url");
  return toBase64Url(bytes) === text ? new Uint8Array(bytes) : undefined;
}
