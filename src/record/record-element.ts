import { gunzipSync, gzipSync } from "node:zlib";
import { onceForEach } from "./once-for-each.ts";

/**
 * Where a page holds its record: JSON, packed by gzip (RFC 1952) and written as base64 (RFC 4648, 4), so that a page is
 * small and `base64 -d | gunzip` gives the record without this program. Records of form 1 stand there as plain JSON.
 */
const packedElement =
  /<script type="application\/gzip" data-encoding="base64" id="record">(?<packed>[^<]*)<\/script>/gu;
const plainStart = '<script type="application/json" id="record">';
const end = "</script>";

/** Several times what a record of 5,000 readings has; what is larger, packed or not, was made to fill the memory. */
export const mostRecordBytes = 16 * 1024 * 1024;

/** Byte 9 of a gzip header names the system that packed, which is nobody's business: 255 stands for unknown. */
const systemByte = 9;

/**
 * The element of a page that holds its record.
 *
 * @param record with its seal
 * @returns HTML; the same content always, packed the same on one version of Node and perhaps otherwise on another
 * Source: RFC 1952; RFC 4648, 4.
 * @example recordElement({}).startsWith('<script type="application/gzip"') // true
 */
export function recordElement(record: object): string {
  return `<script type="application/gzip" data-encoding="base64" id="record">${packedText(embeddedJson(record))}${end}`;
}

/**
 * A text packed by gzip, as base64.
 *
 * @param text any
 * @returns the same for the same text on every system, on one version of Node
 * Source: RFC 1952; RFC 4648, 4.
 * @example packedText("").length // 28
 */
export function packedText(text: string): string {
  const packed = gzipSync(text);
  packed[systemByte] = 255;
  return packed.toString("base64");
}

/**
 * A page with what it holds as its record unpacked; as it was where nothing is packed in it, or nothing that could be
 * the JSON of a record.
 *
 * @param page HTML, or any other text
 * @returns the page with the record's JSON in plain text
 * Source: RFC 1952; RFC 4648, 4.
 * @example withPlainRecord("<p>no record</p>") // "<p>no record</p>"
 */
export function withPlainRecord(page: string): string {
  return page.replace(packedElement, (element: string, packed: string) => {
    const json = unpacked(packed);
    return json === undefined ? element : `${plainStart}${json}${end}`;
  });
}

/**
 * Whether a text holds a packed record; asked of a page after `withPlainRecord`, whether one cannot be unpacked.
 *
 * Source: own choice.
 * @example holdsPackedRecord(recordElement({})) // true
 */
export function holdsPackedRecord(text: string): boolean {
  return text.search(packedElement) !== -1;
}

/**
 * The record as JSON that cannot close the element that it stands in.
 *
 * Source: RFC 8259, 7; HTML Living Standard, "script data".
 * @example embeddedJson({ a: 1 }) // '{"a":1}'
 */
export function embeddedJson(record: object): string {
  return jsonOf(record).replaceAll("<", "\\u003c").replaceAll("\u2028", "\\u2028").replaceAll("\u2029", "\\u2029");
}

/**
 * The record as JSON, written once for its page and for its file of JSON.
 *
 * @param record with its seal; it changes no more
 * @returns what `JSON.stringify` writes
 * Source: RFC 8259.
 * @example jsonOf({ a: 1 }) // '{"a":1}'
 */
export const jsonOf: (record: object) => string = onceForEach((record: object) => JSON.stringify(record));

/** Nothing where it is not packed so, would close its element, or is longer than any record. */
function unpacked(packed: string): string | undefined {
  try {
    const bytes = gunzipSync(Buffer.from(packed, "base64"), { maxOutputLength: mostRecordBytes });
    const json = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
    return json.includes("<") ? undefined : json;
  } catch {
    return undefined;
  }
}
