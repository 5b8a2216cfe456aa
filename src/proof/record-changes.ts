import type { Change } from "../record/amendment-schema.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import { canonicalText } from "./canonical-text.ts";

type Rows = readonly { cells: Readonly<Record<string, string>> }[];
type Tables = Readonly<Record<string, Rows | undefined>>;
type Leaf = { pattern: string; indices: string; value: unknown };

/** What a revision always changes, its own number among the records of the loop too, and what is compared as rows of cells. */
const leftOut = new Set(["seal", "signOff", "revision", "overTheYears.records[].revision", "amendment", "inputs.rows"]);

/**
 * What differs between a record and the one that it replaces: first what was typed, cell by cell, then every other field.
 *
 * Rows of a table are told apart by their cells: equal rows at its beginning and at its end belong together, those
 * between them are compared one by one, and what is left over was added or taken away. Fields that repeat along a list,
 * such as an error of every reading, stand under one place with `[]` for the index, before and after as an object of the
 * values that differ by their index.
 *
 * @param before the record that is replaced
 * @param after the later record
 * @returns places as paths, values as JSON; null where there was nothing, or is nothing any more; in an order that does
 *   not depend on the order of keys
 * @throws TypeError for what JSON cannot hold
 * Source: own choice; what must be told is ISO/IEC 17025:2017, 7.5.2 and 7.8.8.
 * @example recordChanges(record, { ...record, nextDue: "2027-03-04" }) // [{ place: "nextDue", before: '"2026-09-17"',
 *   after: '"2027-03-04"' }]
 */
export function recordChanges(before: CalibrationRecord, after: CalibrationRecord): readonly Change[] {
  return [...cellChanges(before.inputs.rows, after.inputs.rows), ...fieldChanges(before, after)];
}

/** Where a change is one of what was typed. */
const typedPlace = "inputs.rows.";
/** Where a change says only that the files or the program are others, or that a row lies elsewhere in its file. */
const circumstance = /^(?:inputs\.files|software\.|monteCarloSeed$)|\.row$|^warnings\[\]\.place$/u;

/**
 * Whether anything changed that a record says of its loop: other files, other lines in them, or another version of the
 * program alone are no change.
 *
 * @param changes as `recordChanges` gives them
 * @returns false where a further revision would say the same as the one before
 * Source: own choice.
 * @example saysAnythingElse([{ place: "inputs.files[].sha256", before: "{}", after: "{}" }]) // false
 */
export function saysAnythingElse(changes: readonly Change[]): boolean {
  return changes.some(({ place }) => !circumstance.test(place));
}

/**
 * Whether a change is one of what was typed, rather than of what follows from it.
 *
 * @param change as `recordChanges` gives it
 * @returns true for cells and rows of the tables
 * Source: own choice.
 * @example isTyped({ place: "inputs.rows.readings[3].cells.signal", before: '"12.1"', after: '"12.0"' }) // true
 */
export function isTyped({ place }: Change): boolean {
  return place.startsWith(typedPlace);
}

function cellChanges(before: Tables, after: Tables): readonly Change[] {
  const tables = [...new Set([...Object.keys(before), ...Object.keys(after)])].toSorted();
  return tables.flatMap((table) => rowChanges(`${typedPlace}${table}`, before[table] ?? [], after[table] ?? []));
}

function rowChanges(table: string, before: Rows, after: Rows): readonly Change[] {
  const texts = [before, after].map((rows) => rows.map(({ cells }) => canonicalText(cells))) as [string[], string[]];
  const start = equalLength(texts[0], texts[1]);
  const end = equalLength(texts[0].slice(start).toReversed(), texts[1].slice(start).toReversed());
  const [older, newer] = [before.slice(start, before.length - end), after.slice(start, after.length - end)];
  const changes: Change[] = [];
  for (let index = 0; index < Math.max(older.length, newer.length); index += 1) {
    const place = `${table}[${start + index}]`;
    const [one, other] = [older[index]?.cells, newer[index]?.cells];
    if (one !== undefined && other !== undefined) changes.push(...cellsOfRow(place, one, other));
    else changes.push({ place, before: jsonOf(one), after: jsonOf(other) });
  }
  return changes;
}

function cellsOfRow(
  place: string,
  before: Readonly<Record<string, string>>,
  after: Readonly<Record<string, string>>,
): readonly Change[] {
  return [...new Set([...Object.keys(before), ...Object.keys(after)])]
    .toSorted()
    .filter((column) => before[column] !== after[column])
    .map((column) => ({
      place: `${place}.cells.${column}`,
      before: jsonOf(before[column]),
      after: jsonOf(after[column]),
    }));
}

/** How many texts are the same from the first on. */
function equalLength(one: readonly string[], other: readonly string[]): number {
  const differing = one.findIndex((text, index) => text !== other[index]);
  return differing === -1 ? Math.min(one.length, other.length) : differing;
}

function fieldChanges(before: CalibrationRecord, after: CalibrationRecord): readonly Change[] {
  const [older, newer] = [leavesByPath(before), leavesByPath(after)];
  const differing = [...new Set([...older.keys(), ...newer.keys()])].filter(
    (path) => jsonOf(older.get(path)?.value) !== jsonOf(newer.get(path)?.value),
  );
  const patterns = new Map<string, string[]>();
  for (const path of differing) {
    const pattern = (older.get(path) ?? newer.get(path))?.pattern ?? path;
    patterns.set(pattern, [...(patterns.get(pattern) ?? []), path]);
  }
  return [...patterns]
    .toSorted(([one], [other]) => (one < other ? -1 : 1))
    .map(([place, paths]) => ({ place, before: valuesAt(paths, older), after: valuesAt(paths, newer) }));
}

/** One value as it is; those along a list by their indices. */
function valuesAt(paths: readonly string[], leaves: ReadonlyMap<string, Leaf>): string | null {
  const found = paths.flatMap((path) => leaves.get(path) ?? []);
  if (found.length === 0) return null;
  if (found[0]?.indices === "") return jsonOf(found[0].value);
  return canonicalText(Object.fromEntries(found.map(({ indices, value }) => [indices, value])));
}

function leavesByPath(record: CalibrationRecord): ReadonlyMap<string, Leaf> {
  const leaves = new Map<string, Leaf>();
  const visit = (value: unknown, path: string, pattern: string, indices: readonly number[]): void => {
    if (leftOut.has(pattern) || value === undefined) return;
    const children = childrenOf(value);
    if (children.length === 0) leaves.set(path, { pattern, indices: indices.join("."), value });
    for (const [name, child] of children) {
      if (typeof name === "number") visit(child, `${path}[${name}]`, `${pattern}[]`, [...indices, name]);
      else visit(child, joined(path, name), joined(pattern, name), indices);
    }
  };
  visit(record, "", "", []);
  return leaves;
}

function childrenOf(value: unknown): readonly (readonly [string | number, unknown])[] {
  if (Array.isArray(value)) return value.map((child, index) => [index, child] as const);
  return typeof value === "object" && value !== null ? Object.entries(value) : [];
}

function joined(path: string, name: string): string {
  return path === "" ? name : `${path}.${name}`;
}

function jsonOf(value: unknown): string | null {
  return value === undefined ? null : canonicalText(value);
}
