import type { FileDescription } from "./raw-table.ts";

/** The characters of Windows-1252 for the bytes 0x80 to 0x9F; a blank stands for the five that have none. */
const windows1252 = "€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ";
const undefinedByte = " ";

/** So many bytes are decoded at once: a text is never there as a whole beside its bytes. */
const bytesAtOnce = 2 ** 18;

/** The text in pieces that follow each other, made anew each time they are asked for. */
type Decoded = { pieces: () => Iterable<string>; encoding: FileDescription["encoding"] };

/**
 * The text of a file that a spreadsheet saved. A byte order mark decides; without one, what is not strict UTF-8
 * is Windows-1252. Nothing comes back for bytes that are no text in any of these.
 */
export function decodeText(bytes: Uint8Array): Decoded | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return utf16(bytes, "utf-16le");
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return utf16(bytes, "utf-16be");
  if (isFullOfNulls(bytes)) return undefined;
  if (isStrictUtf8(bytes)) return { pieces: () => decoded(bytes, "utf-8"), encoding: "utf-8" };
  const hasMark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  if (hasMark || bytes.some((byte) => isOwn(byte) && ownCharacter(byte) === undefinedByte)) return undefined;
  return { pieces: () => fromWindows1252(bytes), encoding: "windows-1252" };
}

/** Half a surrogate pair becomes U+FFFD here, and a warning where its cell is read. */
function utf16(bytes: Uint8Array, encoding: "utf-16le" | "utf-16be"): Decoded | undefined {
  return bytes.length % 2 === 1 ? undefined : { pieces: () => decoded(bytes, encoding), encoding };
}

/** @throws TypeError where it is strict and the bytes are no such text */
function* decoded(bytes: Uint8Array, encoding: string, isStrict = false): Iterable<string> {
  const decoder = new TextDecoder(encoding, { fatal: isStrict });
  for (const piece of piecesOf(bytes)) yield decoder.decode(piece, { stream: true });
  yield decoder.decode();
}

function isStrictUtf8(bytes: Uint8Array): boolean {
  try {
    for (const _ of decoded(bytes, "utf-8", true));
    return true;
  } catch {
    return false;
  }
}

/** Own table, because some releases of Node decode this encoding as Latin-1. */
function* fromWindows1252(bytes: Uint8Array): Iterable<string> {
  for (const piece of piecesOf(bytes)) {
    const units = new Uint16Array(piece);
    for (const [index, byte] of piece.entries()) if (isOwn(byte)) units[index] = ownCharacter(byte).charCodeAt(0);
    yield new TextDecoder("utf-16le", { ignoreBOM: true }).decode(units);
  }
}

/** Whether Windows-1252 has a character of its own for a byte, or none. */
function isOwn(byte: number): boolean {
  return byte >= 0x80 && byte <= 0x9f;
}

function ownCharacter(byte: number): string {
  return windows1252.charAt(byte - 0x80);
}

function* piecesOf(bytes: Uint8Array): Iterable<Uint8Array> {
  for (let start = 0; start < bytes.length; start += bytesAtOnce) yield bytes.subarray(start, start + bytesAtOnce);
}

/** Every tenth byte: UTF-16 without its mark, or no text at all. */
function isFullOfNulls(bytes: Uint8Array): boolean {
  let nulls = 0;
  for (const byte of bytes) if (byte === 0) nulls += 1;
  return nulls * 10 > bytes.length;
}
