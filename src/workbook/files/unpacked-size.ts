import { inflateRawSync } from "node:zlib";

/** A sheet of 132,000 readings takes 50 MB; what unpacks to more was made to fill the memory. */
export const mostUnpackedBytes = 64 * 1024 * 1024;

const endRecord = 0x06054b50;
const endRecordBytes = 22;
const longestComment = 0xffff;
const centralRecord = 0x02014b50;
const centralRecordBytes = 46;
const localRecordBytes = 30;
const deflated = 8;

/**
 * How many bytes the parts of a packed file (.xlsx, .ods) take when they are unpacked, without unpacking more than is
 * allowed: neither what its directory says nor what its parts truly hold may be more.
 *
 * @param bytes of the file
 * @returns bytes; Infinity where they are more than `mostUnpackedBytes`; undefined where it is no packed file
 * Source: ISO/IEC 21320-1:2015 and the ZIP application note that it refers to, 4.3.7, 4.3.12 and 4.3.16.
 * @example unpackedSize(new Uint8Array(30)) // undefined
 */
export function unpackedSize(bytes: Uint8Array): number | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOf(view);
  if (end === undefined) return undefined;
  try {
    const parts = partsOf(view, end);
    const stated = parts.reduce((sum, { size }) => sum + size, 0);
    return stated > mostUnpackedBytes || !parts.every((part) => holdsItsSize(bytes, view, part)) ? Infinity : stated;
  } catch (fault) {
    if (fault instanceof RangeError) return undefined;
    throw fault;
  }
}

type Part = { method: number; packed: number; size: number; at: number };

/** Where the last record of the file begins, which says where its directory lies. */
function endOf(view: DataView): number | undefined {
  const last = view.byteLength - endRecordBytes;
  for (let at = last; at >= Math.max(0, last - longestComment); at -= 1) {
    if (view.getUint32(at, true) === endRecord) return at;
  }
  return undefined;
}

/** Sizes over 4 GB stand elsewhere, and 2³² − 1 in their place, which is more than is allowed in any case. */
function partsOf(view: DataView, end: number): readonly Part[] {
  const parts: Part[] = [];
  let at = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0 && view.getUint32(at, true) === centralRecord; left -= 1) {
    const method = view.getUint16(at + 10, true);
    const [packed, size] = [view.getUint32(at + 20, true), view.getUint32(at + 24, true)];
    parts.push({ method, packed, size, at: view.getUint32(at + 42, true) });
    const lengths = [28, 30, 32].map((place) => view.getUint16(at + place, true));
    at += lengths.reduce((sum, length) => sum + length, centralRecordBytes);
  }
  return parts;
}

/** A directory may say less than there is. */
function holdsItsSize(bytes: Uint8Array, view: DataView, { method, packed, size, at }: Part): boolean {
  if (method !== deflated) return true;
  const start = at + localRecordBytes + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  try {
    inflateRawSync(bytes.subarray(start, start + packed), { maxOutputLength: Math.max(1, size) });
    return true;
  } catch (fault) {
    // Whatever else is wrong with it, the library that reads it tells.
    return (fault as { code?: string }).code !== "ERR_BUFFER_TOO_LARGE";
  }
}
