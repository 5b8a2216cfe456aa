import type { Cause } from "./cause.ts";
import { causes, rivalsOnly } from "./causes.ts";
import type { NamedCause } from "./finding.ts";

/**
 * The entry of a cause.
 *
 * @param id of one that is looked for
 * @returns its entry
 * @throws RangeError for an id that no cause has
 * Source: own choice.
 * @example causeOf("datum-shifted").place // "sensor"
 */
export function causeOf(id: string): Cause {
  const cause = causes.find((one) => one.id === id);
  if (cause === undefined) throw new RangeError(`causeOf: there is no cause ${id}`);
  return cause;
}

/**
 * A cause as a record names it among the rivals of another.
 *
 * @param id of a cause that is looked for, or of one that can only be a rival
 * @returns id and title
 * @throws RangeError for an id that no cause has
 * Source: own choice.
 * @example namedCause("curved-characteristic").title // "curved characteristic"
 */
export function namedCause(id: string): NamedCause {
  const { title } = rivalsOnly.find((one) => one.id === id) ?? causeOf(id);
  return { id, title };
}
