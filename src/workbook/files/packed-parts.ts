import { inflateRawSync } from "node:zlib";

/** One part of a packed file, such as "xl/workbook.xml", as the directory of the file says. */
export type PackedPart = { name: string; method: number; packed: number; size: number; at: number };

const endRecord = 0x06054b50;
const endRecordBytes = 22;
const longestComment = 0xffff;
const centralRecord = 0x02014b50;
const centralRecordBytes = 46;
const localRecordBytes = 30;
const deflated = 8;

/**
 * The parts of a packed file (.xlsx, .ods), none of them unpacked.
 *
 * @param bytes of the file
 * @returns the parts in the order of the directory; undefined where it is no packed file, or a broken one
 * Source: ISO/IEC 21320-1:2015 and the ZIP application note that it refers to, 4.3.7, 4.3.12 and 4.3.16.
 * @example packedParts(new Uint8Array(30)) // undefined
 */
export function packedParts(bytes: Uint8Array): readonly PackedPart[] | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOf(view);
  if (end === undefined) return undefined;
  try {
    return partsOf(bytes, view, end);
  } catch (fault) {
    if (fault instanceof RangeError) return undefined;
    throw fault;
  }
}

/**
 * The bytes of one part.
 *
 * @param bytes of the file
 * @param part one of its parts
 * @returns bytes; undefined where they are broken; "more" where they are more than the directory says
 * Source: ZIP application note, 4.3.7; RFC 1951.
 * @example unpackedPart(new Uint8Array(30), { name: "a", method: 8, packed: 2, size: 1, at: 0 }) // undefined
 */
export function unpackedPart(
  bytes: Uint8Array,
  { method, packed, size, at }: PackedPart,
): Uint8Array | "more" | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (at + localRecordBytes > bytes.length) return undefined;
  const start = at + localRecordBytes + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  const content = bytes.subarray(start, start + packed);
  if (method !== deflated) return content;
  try {
    return inflateRawSync(content, { maxOutputLength: Math.max(1, size) });
  } catch (fault) {
    return (fault as { code?: string }).code === "ERR_BUFFER_TOO_LARGE" ? "more" : undefined;
  }
}

/** Where the last record of the file begins, which says where its directory lies. */
function endOf(view: DataView): number | undefined {
  const last = view.byteLength - endRecordBytes;
  for (let at = last; at >= Math.max(0, last - longestComment); at -= 1) {
    if (view.getUint32(at, true) === endRecord) return at;
  }
  return undefined;
}

/** Sizes over 4 GB stand elsewhere, and 2³² − 1 in their place, which is more than is allowed in any case. */
function partsOf(bytes: Uint8Array, view: DataView, end: number): readonly PackedPart[] {
  const parts: PackedPart[] = [];
  let at = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0 && view.getUint32(at, true) === centralRecord; left -= 1) {
    const method = view.getUint16(at + 10, true);
    const [packed, size] = [view.getUint32(at + 20, true), view.getUint32(at + 24, true)];
    const [nameLength = 0, ...lengths] = [28, 30, 32].map((place) => view.getUint16(at + place, true));
    const nameAt = at + centralRecordBytes;
    const name = new TextDecoder().decode(bytes.subarray(nameAt, nameAt + nameLength));
    parts.push({ name, method, packed, size, at: view.getUint32(at + 42, true) });
    at = lengths.reduce((sum, length) => sum + length, nameAt + nameLength);
  }
  return parts;
}
