/** What is found of a thing, found once for each: nothing that a page is made of changes while it is made. */
export function onceForEach<Of extends object, Found>(find: (of: Of) => Found): (of: Of) => Found {
  const found = new WeakMap<Of, Found>();
  return (of) => {
    if (!found.has(of)) found.set(of, find(of));
    return found.get(of) as Found;
  };
}
