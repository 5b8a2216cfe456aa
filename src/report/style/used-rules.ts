const rule = /(?<selectors>[^{}@]+)\{(?<declarations>[^{}]*)\}/gu;
const classAttribute = /\sclass="(?<names>[^"]*)"/gu;
const classInSelector = /\.(?<name>[a-z][\w-]*)/gu;

/** A style without the rules for classes that no element of a page has, and without its blanks between rules. */
export function usedRules(style: string, html: string): string {
  const names = new Set([...html.matchAll(classAttribute)].flatMap(({ groups }) => groups?.names?.split(" ") ?? []));
  const isUsed = (selector: string) => classesOf(selector).every((name) => names.has(name));
  return style
    .replace(rule, (_, selectors: string, declarations: string) => {
      const used = selectors.trim().split(",").filter(isUsed);
      return used.length === 0 ? "" : `${used.join(",")}{${declarations}}`;
    })
    .replace(/\n\s*/gu, "");
}

/** The classes that an element or its surroundings must have; one that they must not have is none of them. */
function classesOf(selector: string): readonly string[] {
  return [...selector.replace(/:not\([^)]*\)/gu, "").matchAll(classInSelector)].map(({ groups }) => groups?.name ?? "");
}
