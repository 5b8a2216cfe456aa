/** Why a figure cannot be had from these data, in words that a page can print after "not determined: ". */
export type NotDetermined = { notDetermined: string };

/** A figure, or the reason why the data do not allow it; never a zero or a NaN in its place. */
export type Figure<Value> = Value | NotDetermined;

/**
 * Says that a figure cannot be had.
 *
 * @param reason in words, without "not determined"
 * @returns the reason in the form that `isDetermined` recognises
 * Source: own choice.
 * @example notDetermined("one cycle only") // { notDetermined: "one cycle only" }
 */
export function notDetermined(reason: string): NotDetermined {
  return { notDetermined: reason };
}

/**
 * Whether a figure was determined.
 *
 * @param figure a value, or the reason why there is none
 * @returns true for a value
 * Source: own choice.
 * @example isDetermined(notDetermined("one cycle only")) // false
 */
export function isDetermined<Value>(figure: Figure<Value>): figure is Value {
  if (typeof figure !== "object" || figure === null || !("notDetermined" in figure)) return true;
  return typeof figure.notDetermined !== "string";
}
