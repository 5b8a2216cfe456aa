import type { FileDescription } from "./raw-table.ts";

/** The characters of Windows-1252 for the bytes 0x80 to 0x9F; a blank stands for the five that have none. */
const windows1252 = "€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ";
const undefinedByte = " ";

type Decoded = { text: string; encoding: FileDescription["encoding"] };

/**
 * The text of a file that a spreadsheet saved. A byte order mark decides; without one, what is not strict UTF-8
 * is Windows-1252. Nothing comes back for bytes that are no text in any of these.
 */
export function decodeText(bytes: Uint8Array): Decoded | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return utf16(bytes, "utf-16le");
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return utf16(bytes, "utf-16be");
  if (isFullOfNulls(bytes)) return undefined;
  const text = strictUtf8(bytes);
  if (text !== undefined) return { text, encoding: "utf-8" };
  const hasMark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  return hasMark ? undefined : fromWindows1252(bytes);
}

/** Half a surrogate pair becomes U+FFFD here, and a warning where its cell is read. */
function utf16(bytes: Uint8Array, encoding: "utf-16le" | "utf-16be"): Decoded | undefined {
  if (bytes.length % 2 === 1) return undefined;
  return { text: new TextDecoder(encoding).decode(bytes), encoding };
}

function strictUtf8(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

/** Own table, because some releases of Node decode this encoding as Latin-1. */
function fromWindows1252(bytes: Uint8Array): Decoded | undefined {
  const units = new Uint16Array(bytes);
  for (const [index, byte] of bytes.entries()) {
    if (byte < 0x80 || byte > 0x9f) continue;
    const character = windows1252.charAt(byte - 0x80);
    if (character === undefinedByte) return undefined;
    units[index] = character.charCodeAt(0);
  }
  return { text: new TextDecoder("utf-16le", { ignoreBOM: true }).decode(units), encoding: "windows-1252" };
}

/** Every tenth byte: UTF-16 without its mark, or no text at all. */
function isFullOfNulls(bytes: Uint8Array): boolean {
  let nulls = 0;
  for (const byte of bytes) if (byte === 0) nulls += 1;
  return nulls * 10 > bytes.length;
}
