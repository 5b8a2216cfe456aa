import { compactContent } from "./compact-svg.ts";
import { type SvgElement, svgText, svgTree } from "./svg-tree.ts";

/** What a reader is told of a picture that cannot be seen, and what the page styles it by. */
export type SvgRoot = { idPrefix: string; className: string; title: string; description: string };

/**
 * Gives vega's SVG a role, a name and a description, lets CSS set its size, writes its content short, and makes its ids
 * unique on the page: they are numbered by appearance, so that charts drawn at the same time do not see each other's.
 * @throws Error for text that is no SVG
 */
export function withRoot(svg: string, { idPrefix, className, title, description }: SvgRoot): string {
  const { attributes, children } = svgTree(svg);
  const font = fontOf(children);
  const described = `${idPrefix}-description`;
  return svgText({
    name: "svg",
    attributes: {
      ...{ xmlns: "http://www.w3.org/2000/svg", class: escaped(className) },
      ...{ viewBox: `0 0 ${attributes.width} ${attributes.height}`, role: "img" },
      ...{ "aria-label": escaped(title), "aria-describedby": described, fill: "none", ...font },
    },
    children: [
      { name: "desc", attributes: { id: described }, children: [], text: escaped(description) },
      ...withOwnIds(compactContent(children, font), idPrefix),
    ],
    text: "",
  });
}

/** The font of the first text; one that differs says so itself. */
function fontOf(elements: readonly SvgElement[]): Readonly<Record<string, string>> {
  const first = elements.flatMap(textsIn)[0];
  const named = ["font-family", "font-size"].map((name) => [name, first?.attributes[name]] as const);
  return Object.fromEntries(named.flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])));
}

function textsIn(element: SvgElement): readonly SvgElement[] {
  return element.name === "text" ? [element] : element.children.flatMap(textsIn);
}

function withOwnIds(elements: readonly SvgElement[], prefix: string): readonly SvgElement[] {
  const numbers = new Map<string, number>();
  const own = (id: string) => {
    if (!numbers.has(id)) numbers.set(id, numbers.size + 1);
    return `${prefix}-${numbers.get(id)}`;
  };
  const rename = (name: string, value: string) => {
    if (name === "id") return own(value);
    return value.replace(/^url\(#([^)]+)\)$/u, (_, id) => `url(#${own(id)})`);
  };
  const renamed = (element: SvgElement): SvgElement => ({
    ...element,
    attributes: Object.fromEntries(
      Object.entries(element.attributes).map(([name, value]) => [name, rename(name, value)]),
    ),
    children: element.children.map(renamed),
  });
  return elements.map(renamed);
}

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

function escaped(text: string): string {
  return text.replace(/[&<>"']/gu, (sign) => entities[sign] ?? sign);
}
