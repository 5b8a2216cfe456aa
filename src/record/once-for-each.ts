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

/**
 * The same of texts and numbers, which are alike wherever they come from; of no more than so many, for a program that makes
 * thousands of records would hold those of all.
 *
 * @param find what is asked of a text or a number
 * @param most how many answers are held; beyond them it is asked anew
 * @returns the same question
 * Source: own choice.
 * @example onceForEachValue((tag) => tag.length, 100)("LT-1") // 4
 */
export function onceForEachValue<Of extends string | number, Found>(
  find: (of: Of) => Found,
  most: number,
): (of: Of) => Found {
  const found = new Map<Of, Found>();
  return (of) => {
    const known = found.get(of);
    if (known !== undefined) return known;
    const made = find(of);
    if (found.size < most) found.set(of, made);
    return made;
  };
}
