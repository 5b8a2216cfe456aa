import { canonicalText } from "./canonical-text.ts";

/**
 * The bytes that a seal is taken of and that signatures sign: the record without seal and sign-off, in canonical JSON.
 *
 * @param record as it is written, in whatever form, valid by that, so that every value is a string, a finite number, a boolean, null, an array or an
 *   object of those; what was measured stands in `inputs` as text, with the digits as typed
 * @returns UTF-8, the same on every machine whatever the order of the keys
 * @throws TypeError for what JSON cannot hold: NaN, an infinite number, a lone surrogate
 * Source: RFC 8785 (JSON Canonicalization Scheme).
 * @example new TextDecoder().decode(canonicalBytes(record)).startsWith('{"calibration":{') // true
 */
export function canonicalBytes(record: object): Uint8Array {
  const { seal: _seal, signOff: _signOff, ...content } = record as Record<string, unknown>;
  return new TextEncoder().encode(canonicalText(content));
}
