/** What is found of a thing, found once for each: nothing that a page is made of changes while it is made. */
export function onceForEach<Of extends object, Found extends object>(find: (of: Of) => Found): (of: Of) => Found {
  const found = new WeakMap<Of, Found>();
  return (of) => {
    const known = found.get(of) ?? find(of);
    found.set(of, known);
    return known;
  };
}
