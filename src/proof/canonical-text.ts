import canonicalize from "canonicalize";

/**
 * Plain data as the one text that stands for it.
 *
 * @param value strings, finite numbers, booleans, null, arrays and objects of those; a key whose value is undefined is
 *   left out
 * @returns canonical JSON on one line
 * @throws TypeError for what JSON cannot hold: NaN, an infinite number, a lone surrogate, undefined alone
 * Source: RFC 8785 (JSON Canonicalization Scheme).
 * @example canonicalText({ b: 1e21, a: "é" }) // '{"a":"é","b":1e+21}'
 */
export function canonicalText(value: unknown): string {
  const text = faultless(value);
  if (text === undefined) throw new TypeError("canonicalText: this is no JSON");
  return text;
}

function faultless(value: unknown): string | undefined {
  try {
    return canonicalize(value);
  } catch (fault) {
    throw new TypeError("canonicalText: this is no JSON", { cause: fault });
  }
}
