/**
 * What each pin carries, from a text such as "1 L+; 2 signal; 3 0 V; 4 Q1".
 *
 * @param text pins with ; or , between them, each a number and what it carries
 * @returns role by pin in small letters without spaces; undefined where a part does not read so, or a pin stands twice
 * Source: own choice.
 * @example pinRoles("1 L+; 4 Q1")?.get("4") // "q1"
 */
export function pinRoles(text: string): ReadonlyMap<string, string> | undefined {
  const roles = new Map<string, string>();
  for (const named of namedPins(text)) {
    if (named === undefined || roles.has(named.pin)) return undefined;
    roles.set(named.pin, foldedRole(named.role));
  }
  return roles.size === 0 ? undefined : roles;
}

/** Each part of the text that is not empty: a pin and what it carries, as typed; undefined for one that does not read so. */
function namedPins(text: string): readonly ({ pin: string; role: string } | undefined)[] {
  const parts = text.split(/[;,]/u).filter((part) => part.trim() !== "");
  return parts.map((part) => {
    const [, pin, role] = /^\s*(?:pin\s*)?(\d+)\s*[:=\s]\s*(\S.*)$/iu.exec(part) ?? [];
    return pin === undefined || role === undefined ? undefined : { pin, role: role.trim() };
  });
}

/**
 * A role as it is compared: capitals and spaces do not count.
 *
 * @param role as typed
 * @returns the same for spellings that a person takes for one
 * Source: own choice.
 * @example foldedRole("0 V") // "0v"
 */
export function foldedRole(role: string): string {
  return role.toLowerCase().replace(/\s+/gu, "");
}

/**
 * The pin that a text names twice, which one pin cannot be.
 *
 * @param text as `pinRoles` takes it
 * @returns its number and what it carries, as typed; undefined where none stands twice
 * Source: own choice.
 * @example pinTwice("1 L+; 1 signal") // { pin: "1", roles: ["L+", "signal"] }
 */
export function pinTwice(text: string): { pin: string; roles: readonly string[] } | undefined {
  const named = namedPins(text).flatMap((one) => one ?? []);
  const twice = named.find(({ pin }, place) => named.findIndex((one) => one.pin === pin) < place);
  if (twice === undefined) return undefined;
  return { pin: twice.pin, roles: named.filter(({ pin }) => pin === twice.pin).map(({ role }) => role) };
}
