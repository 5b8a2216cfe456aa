import type { JsonObject } from "./changed-at.ts";
import { from1 } from "./from-1.ts";

/** From each earlier form to the one after it, the earliest first: the reader of form 1 stands first. */
const readers: readonly ((written: JsonObject) => JsonObject)[] = [from1];

/** Number of the form in which records are written today. */
export const presentForm = readers.length + 1;

/**
 * The number of the form that a record says it is of.
 *
 * @param schema what stands under `schema`, whatever it is
 * @returns a whole number from 1 on; undefined where it says no such thing
 * Source: own choice.
 * @example formOf("spanwright-record/1") // 1
 */
export function formOf(schema: unknown): number | undefined {
  const [, number] = typeof schema === "string" ? (/^spanwright-record\/([1-9]\d{0,5})$/u.exec(schema) ?? []) : [];
  return number === undefined ? undefined : Number(number);
}

/**
 * A record of any form up to the present one in the present one.
 *
 * @param written as it stands in its file; it is not touched
 * @param form its number
 * @returns the same object where it is of the present form; undefined for a form that came later than this program
 * Source: own choice.
 * @example inPresentForm({ schema: "spanwright-record/99" }, 99) // undefined
 */
export function inPresentForm(written: JsonObject, form: number): JsonObject | undefined {
  if (form > presentForm) return undefined;
  return readers.slice(form - 1).reduce((record, reader) => reader(record), written);
}
