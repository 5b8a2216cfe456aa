import { layersOf } from "../../../src/charts/drawing/mark-layers.ts";
import { type Outline, readPath, short, writePath } from "../../../src/charts/drawing/svg-path.ts";
import type { SvgElement } from "./svg-tree.ts";

/** What draws something: a path in absolute places, a text at its place, or a group that is clipped. */
type Drawn =
  | { kind: "path"; style: Style; outline: Outline }
  | { kind: "text"; style: Style; place: Style; text: string }
  | { kind: "group"; element: SvgElement };

type Style = Readonly<Record<string, string>>;
type At = { x: number; y: number; style: Style };

/** What is so without being said. */
const defaults: Style = {
  ...{ opacity: "1", "stroke-width": "1", "stroke-miterlimit": "4", "font-weight": "400", "text-anchor": "start" },
  ...{ fill: "none", "stroke-opacity": "1", "fill-opacity": "1", "stroke-dasharray": "1,0" },
};
/** Where things are, and what vega keeps for itself. */
const noStyle = new Set([
  ...["class", "transform", "pointer-events", "id", "clip-path", "role", "aria-hidden", "aria-roledescription"],
  ...["d", "x", "y", "x2", "y2", "width", "height", "display"],
]);

/**
 * The content of a drawing as short as it looks the same: places absolute, marks of one style that follow each other one
 * path, what is not seen gone, what all texts share said once by the root.
 */
export function compactContent(content: readonly SvgElement[], shared: Style): readonly SvgElement[] {
  return grouped(content.flatMap((one) => flat(one, { x: 0, y: 0, style: {} }, shared)));
}

function flat(one: SvgElement, at: At, shared: Style): readonly Drawn[] {
  const { name, attributes, children } = one;
  if (attributes.display === "none") return [];
  if (name === "defs" || name === "clipPath") return [{ kind: "group", element: one }];
  const [x, y, turn] = movedBy(attributes.transform ?? "");
  const style = { ...at.style, ...styleOf(attributes) };
  const inside = { x: at.x + x, y: at.y + y, style };
  if (name === "text") return [textAt(one, inside, turn, shared)];
  if (name === "path" || name === "line") return pathAt(one, inside);
  if (attributes["clip-path"] === undefined) return children.flatMap((child) => flat(child, inside, shared));
  const clipped = children.flatMap((child) => flat(child, { x: 0, y: 0, style }, shared));
  const place = inside.x === 0 && inside.y === 0 ? {} : { transform: `translate(${placeText(inside)})` };
  const group = { "clip-path": attributes["clip-path"], ...place };
  return [{ kind: "group", element: element("g", group, { children: grouped(clipped) }) }];
}

function placeText({ x, y }: { x: number; y: number }): string {
  return `${short(x)},${short(y)}`;
}

/** How far a transform moves, and the quarter turn in the middle of it. */
function movedBy(transform: string): [x: number, y: number, turn: number] {
  let [x, y, turn] = [0, 0, 0];
  for (const [, name, numbers = ""] of transform.matchAll(/(\w+)\(([^)]*)\)/gu)) {
    const [one = 0, other = 0] = numbers.split(",").map(Number);
    if (name === "rotate") turn += one;
    else if (name !== "translate") throw new Error(`compactContent: ${name} is not known`);
    else {
      const angle = (turn * Math.PI) / 180;
      x += one * Math.cos(angle) - other * Math.sin(angle);
      y += one * Math.sin(angle) + other * Math.cos(angle);
    }
  }
  return [x, y, turn];
}

function styleOf(attributes: Style): Style {
  return Object.fromEntries(Object.entries(attributes).filter(([name]) => !noStyle.has(name)));
}

function textAt({ text }: SvgElement, { x, y, style }: At, turn: number, shared: Style): Drawn {
  const own = Object.entries(said(style)).filter(([name, value]) => shared[name] !== value);
  const place: Style =
    turn === 0
      ? { x: short(x), y: short(y) }
      : { transform: `translate(${placeText({ x, y })})rotate(${short(turn)})` };
  return { kind: "text", style: Object.fromEntries(own), place, text };
}

function pathAt({ name, attributes }: SvgElement, { x, y, style }: At): readonly Drawn[] {
  const seen = said(style);
  if (seen.stroke === undefined && seen.fill === undefined) return [];
  const d = name === "line" ? `M0,0L${attributes.x2 ?? 0},${attributes.y2 ?? 0}` : (attributes.d ?? "");
  const outline = readPath(d, x, y);
  return outline.subpaths.length === 0 ? [] : [{ kind: "path", style: seen, outline }];
}

/** A style without what is so anyway; the width of a stroke that is not there among it. */
function said(style: Style): Style {
  const hasStroke = style.stroke !== undefined && style.stroke !== "none";
  return Object.fromEntries(
    Object.entries(style).filter(
      ([name, value]) => defaults[name] !== value && (hasStroke || !name.startsWith("stroke")),
    ),
  );
}

/** Neighbours of one style as one element. */
function grouped(drawn: readonly Drawn[]): readonly SvgElement[] {
  const elements: SvgElement[] = [];
  for (let start = 0; start < drawn.length; ) {
    const first = drawn[start] as Drawn;
    const length = drawn.slice(start).findIndex((one) => !isOfOneStyle(first, one));
    const run = drawn.slice(start, length === -1 ? undefined : start + length);
    elements.push(...(first.kind === "group" ? [first.element] : [together(first, run)]));
    start += first.kind === "group" ? 1 : run.length;
  }
  return elements;
}

function isOfOneStyle(one: Drawn, other: Drawn): boolean {
  if (one.kind === "group" || other.kind === "group" || one.kind !== other.kind) return one === other;
  return JSON.stringify(one.style) === JSON.stringify(other.style);
}

/** Marks that have an edge hide each other's: those that touch stay in their order. */
function together({ kind, style }: Exclude<Drawn, { kind: "group" }>, run: readonly Drawn[]): SvgElement {
  const hasEdge = style.fill !== undefined && style.stroke !== undefined;
  const paths = run.flatMap((one) => (one.kind === "path" ? [one.outline] : []));
  const texts = run.flatMap((one) => (one.kind === "text" ? [element("text", one.place, { text: one.text })] : []));
  const layers = hasEdge ? layersOf(paths) : [paths];
  const parts = kind === "text" ? texts : layers.map((layer) => element("path", { d: writePath(layer) }));
  const [only] = parts;
  if (parts.length === 1 && only !== undefined) return { ...only, attributes: { ...style, ...only.attributes } };
  return element("g", style, { children: parts });
}

function element(name: string, attributes: Style, more: Partial<SvgElement> = {}): SvgElement {
  return { name, attributes, children: [], text: "", ...more };
}
