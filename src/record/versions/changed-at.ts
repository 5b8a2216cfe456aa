/** An object as JSON has it. */
export type JsonObject = Readonly<Record<string, unknown>>;

/**
 * Plain data with the objects at a path changed; what is not there, or is no object there, stays as it is, so that a
 * reader of an older form needs no check of its own: what is wrong in a record is told when its form is checked.
 *
 * @param value plain data as JSON has it; it is not touched
 * @param path field names with points between them; `[]` for every element of a list, `*` for every field of an object;
 *   empty for the value itself
 * @param change gives the object that takes the place of the one it is given
 * @returns a copy wherever something changed, else the same
 * Source: own choice.
 * @example changedAt({ a: [{ b: 1 }, { b: 2 }] }, "a[]", ({ b, ...rest }) => ({ ...rest, c: b }))
 *   // { a: [{ c: 1 }, { c: 2 }] }
 */
export function changedAt(value: unknown, path: string, change: (found: JsonObject) => JsonObject): unknown {
  return changedBelow(value, path.match(/\[\]|[^.[\]]+/gu) ?? [], change);
}

function changedBelow(
  value: unknown,
  [step, ...further]: readonly string[],
  change: (found: JsonObject) => JsonObject,
): unknown {
  if (step === "[]") return Array.isArray(value) ? value.map((one) => changedBelow(one, further, change)) : value;
  if (!isJsonObject(value)) return value;
  if (step === undefined) return change(value);
  return Object.fromEntries(
    Object.entries(value).map(([name, field]) =>
      step === "*" || step === name ? [name, changedBelow(field, further, change)] : [name, field],
    ),
  );
}

/**
 * Whether a value is an object with fields.
 *
 * @param value as JSON has it
 * @returns false for null and for a list
 * Source: own choice.
 * @example isJsonObject([]) // false
 */
export function isJsonObject(value: unknown): value is JsonObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
