import { onceForEachValue } from "../record/once-for-each.ts";

/**
 * Plain data as the one text that stands for it.
 *
 * @param value strings, finite numbers, booleans, null, arrays and objects of those; a key whose value is undefined is
 *   left out
 * @returns canonical JSON on one line
 * @throws TypeError for what JSON cannot hold: NaN, an infinite number, a lone surrogate, undefined alone
 * Source: RFC 8785 (JSON Canonicalization Scheme): keys in the order of their UTF-16 units, numbers and strings as
 *   ECMAScript writes them. A walk of our own, because every record is sealed and every seal checked by it.
 * @example canonicalText({ b: 1e21, a: "é" }) // '{"a":"é","b":1e+21}'
 */
export function canonicalText(value: unknown): string {
  const text = written(value);
  if (text.includes("\\ud") && loneSurrogate.test(text)) throw notJson("a lone surrogate");
  return text;
}

/** So JSON.stringify writes half of a pair; before it stands an even number of backslashes. */
const loneSurrogate = /(?<!\\)(?:\\\\)*\\ud[89a-f]/u;

function written(value: unknown): string {
  switch (typeof value) {
    case "string":
      return quoted(value);
    case "number":
      if (!Number.isFinite(value)) throw notJson(String(value));
      return String(value);
    case "boolean":
      return value ? "true" : "false";
    case "object":
      if (value === null) return "null";
      return Array.isArray(value) ? `[${value.map(written).join(",")}]` : writtenObject(value as PlainObject);
    default:
      throw notJson(typeof value);
  }
}

/** Letters and signs that stand for themselves, as in most texts of a record. */
const plain = /^[ !#-[\]-~]*$/u;

function quoted(text: string): string {
  return plain.test(text) ? `"${text}"` : JSON.stringify(text);
}

type PlainObject = Readonly<Record<string, unknown>>;

function writtenObject(object: PlainObject): string {
  let members = "";
  for (const { key, name } of orderedNames(object)) {
    const value = object[key];
    if (value !== undefined) members += `${members === "" ? "" : ","}${name}${written(value)}`;
  }
  return `{${members}}`;
}

/** A key, and how it begins its member. */
type Name = { key: string; name: string };

function orderedNames(object: PlainObject): readonly Name[] {
  const keys = Object.keys(object);
  const all = keys.join("\n");
  const names = all.length < longestKept ? namesIn(all) : [];
  // A key with a line end would be taken for two.
  return names.length === keys.length ? names : inOrder(keys);
}

/** A record has hundreds of readings and lines of budgets with the same keys, which are ordered once. */
const namesIn = onceForEachValue((all: string) => inOrder(all.split("\n")), 1000);
const longestKept = 500;

function inOrder(keys: string[]): readonly Name[] {
  return keys.sort().map((key) => ({ key, name: `${quoted(key)}:` }));
}

function notJson(what: string): TypeError {
  return new TypeError(`canonicalText: this is no JSON: ${what}`);
}
