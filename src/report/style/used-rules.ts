import { onceForEachValue } from "../../record/once-for-each.ts";

const rule = /(?<selectors>[^{}@]+)\{(?<declarations>[^{}]*)\}/gu;
const classAttribute = /\sclass="(?<names>[^"]*)"/gu;
const classInSelector = /\.(?<name>[a-z][\w-]*)/gu;

/** A selector, with the classes that an element or its surroundings must have. */
type Selector = { text: string; classes: readonly string[] };
/** What stands between rules as it is, such as the head of a block for paper; and a rule. */
type Piece = string | { selectors: readonly Selector[]; declarations: string };

/** A style without the rules for classes that no element of a page has, and without its blanks between rules. */
export function usedRules(style: string, html: string): string {
  const values = new Set(Array.from(html.matchAll(classAttribute), ({ groups }) => groups?.names ?? ""));
  const names = new Set([...values].flatMap((value) => value.split(" ")));
  return piecesOf(style)
    .map((piece) => (typeof piece === "string" ? piece : writtenRule(piece, names)))
    .join("")
    .replace(/\n\s*/gu, "");
}

function writtenRule({ selectors, declarations }: Exclude<Piece, string>, names: ReadonlySet<string>): string {
  const used = selectors.filter(({ classes }) => classes.every((name) => names.has(name)));
  return used.length === 0 ? "" : `${used.map(({ text }) => text).join(",")}{${declarations}}`;
}

/** The program has a handful of styles, which every page of its kind has. */
const piecesOf = onceForEachValue(parted, 20);

function parted(style: string): readonly Piece[] {
  let end = 0;
  const pieces = [...style.matchAll(rule)].flatMap((found): readonly Piece[] => {
    const before = style.slice(end, found.index);
    end = found.index + found[0].length;
    const selectors = (found.groups?.selectors ?? "").trim().split(",").map(selectorOf);
    return [before, { selectors, declarations: found.groups?.declarations ?? "" }];
  });
  return [...pieces, style.slice(end)];
}

/** One that an element must not have is none of its classes. */
function selectorOf(text: string): Selector {
  const found = text.replace(/:not\([^)]*\)/gu, "").matchAll(classInSelector);
  return { text, classes: Array.from(found, ({ groups }) => groups?.name ?? "") };
}
