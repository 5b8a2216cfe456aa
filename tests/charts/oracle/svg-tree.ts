/** An element of an SVG; `text` is what it holds where it has no elements, entities as they were. */
export type SvgElement = {
  name: string;
  attributes: Readonly<Record<string, string>>;
  children: readonly SvgElement[];
  text: string;
};

const token = /<(?<end>\/?)(?<name>\w+)(?<attributes>(?: [\w:-]+="[^"]*")*) ?(?<empty>\/?)>|(?<text>[^<]+)/gu;
const attribute = / (?<name>[\w:-]+)="(?<value>[^"]*)"/gu;

type Open = { name: string; attributes: Record<string, string>; children: SvgElement[]; text: string };

/**
 * An SVG as vega writes it, as a tree.
 * @throws Error where its elements do not nest
 */
export function svgTree(svg: string): SvgElement {
  const root: Open = { name: "", attributes: {}, children: [], text: "" };
  const open: Open[] = [root];
  for (const { groups = {} } of svg.matchAll(token)) {
    const at = open.at(-1) ?? root;
    if (groups.text !== undefined) at.text += groups.text;
    else if (groups.end === "/") close(open, groups.name ?? "");
    else {
      const element = { name: groups.name ?? "", attributes: attributesOf(groups.attributes), children: [], text: "" };
      at.children.push(element);
      if (groups.empty !== "/") open.push(element);
    }
  }
  const [svgElement] = root.children;
  if (open.length !== 1 || svgElement === undefined) throw new Error(`svgTree: no svg element in ${svg.slice(0, 80)}`);
  return svgElement;
}

function close(open: Open[], name: string): void {
  if (open.pop()?.name !== name) throw new Error(`svgTree: ${name} ends where it is not open`);
}

function attributesOf(text = ""): Record<string, string> {
  return Object.fromEntries([...text.matchAll(attribute)].map(({ groups }) => [groups?.name, groups?.value]));
}

export function svgText({ name, attributes, children, text }: SvgElement): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${value}"`);
  const content = children.length > 0 ? children.map(svgText).join("") : text;
  return `<${name}${written.join("")}${content === "" ? "/>" : `>${content}</${name}>`}`;
}
