/** A place at which two records differ. */
export type Difference = {
  /** Path in the record, such as phases.asFound.readings[3].signal; empty for the whole. */
  place: string;
  /** As JSON; null where there is nothing. */
  expected: string | null;
  found: string | null;
  /** Another value; a number that differs in its last digits only; the same keys in another order. */
  kind: "value" | "last digits" | "order";
};

/**
 * Numbers this close differ by another computer's arithmetic. A unit in the last place is 1 in 10^16; figures are
 * differences of readings that may be a thousand times as large, and sums of many such: 1 in 10^12 is left of it. No
 * figure is shown with half as many digits.
 */
const lastDigits = 1e-12;

/**
 * Every place at which two records differ, exactly: the same computer with the same program gives the same bits.
 *
 * @param expected plain data as JSON has it, the way it should be
 * @param found the same, the way it is
 * @returns in the order of `expected`; an object with the same keys in another order is one difference
 * Source: own choice.
 * @example compareRecords({ zeroError: { percentSpan: 0.1 } }, { zeroError: { percentSpan: 0.2 } })
 *   // [{ place: "zeroError.percentSpan", expected: "0.1", found: "0.2", kind: "value" }]
 */
export function compareRecords(expected: unknown, found: unknown): readonly Difference[] {
  return differencesAt("", expected, found);
}

function differencesAt(place: string, expected: unknown, found: unknown): readonly Difference[] {
  if (expected === found) return [];
  if (Array.isArray(expected) && Array.isArray(found)) return arrayDifferences(place, expected, found);
  if (isObject(expected) && isObject(found)) return objectDifferences(place, expected, found);
  return [{ place, expected: jsonOf(expected), found: jsonOf(found), kind: kindOf(expected, found) }];
}

function arrayDifferences(place: string, expected: readonly unknown[], found: readonly unknown[]) {
  const longest = Math.max(expected.length, found.length);
  const indices = Array.from({ length: longest }, (_, index) => index);
  return indices.flatMap((index) => differencesAt(`${place}[${index}]`, expected[index], found[index]));
}

function objectDifferences(place: string, expected: Keyed, found: Keyed): readonly Difference[] {
  const [wanted, given] = [Object.keys(expected), Object.keys(found)];
  const keys = [...new Set([...wanted, ...given])];
  const differences = keys.flatMap((key) =>
    differencesAt(place === "" ? key : `${place}.${key}`, own(expected, key), own(found, key)),
  );
  const isSameSet = keys.length === wanted.length && keys.length === given.length;
  if (!isSameSet || wanted.every((key, index) => key === given[index])) return differences;
  return [{ place, expected: wanted.join(", "), found: given.join(", "), kind: "order" }, ...differences];
}

function kindOf(expected: unknown, found: unknown): Difference["kind"] {
  if (typeof expected !== "number" || typeof found !== "number") return "value";
  const largest = Math.max(Math.abs(expected), Math.abs(found));
  return Math.abs(expected - found) <= lastDigits * largest ? "last digits" : "value";
}

type Keyed = Readonly<Record<string, unknown>>;

function isObject(value: unknown): value is Keyed {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** What every object inherits is no key of it. */
function own(object: Keyed, key: string): unknown {
  return Object.hasOwn(object, key) ? object[key] : undefined;
}

function jsonOf(value: unknown): string | null {
  return value === undefined ? null : JSON.stringify(value);
}
