import { packedParts, unpackedPart } from "./packed-parts.ts";

/** A sheet of 132,000 readings takes 50 MB; what unpacks to more was made to fill the memory. */
export const mostUnpackedBytes = 64 * 1024 * 1024;

/** Parts of a spreadsheet are a few dozen; ten thousand were made to take time. */
const mostParts = 10_000;

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
  const parts = packedParts(bytes);
  if (parts === undefined) return undefined;
  const stated = parts.reduce((sum, { size }) => sum + size, 0);
  if (stated > mostUnpackedBytes || parts.length > mostParts) return Infinity;
  // Whatever else is wrong with a part, the reader of spreadsheets tells.
  return parts.some((part) => unpackedPart(bytes, part) === "more") ? Infinity : stated;
}
