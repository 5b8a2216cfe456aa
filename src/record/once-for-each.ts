/**
 * What is found of a thing, found once for each: nothing that a page is made of changes while it is made.
 *
 * @param find what is asked of a thing; the same thing gives the same
 * @returns the same question, which asks a thing once as long as it is held
 * Source: own choice.
 * @example onceForEach(({ tag }) => tag.length)({ tag: "LT-1" }) // 4
 */
export function onceForEach<Of extends object, Found>(find: (of: Of) => Found): (of: Of) => Found {
  const found = new WeakMap<Of, Found>();
  return (of) => {
    if (!found.has(of)) found.set(of, find(of));
    return found.get(of) as Found;
  };
}
