import { layersOf } from "./mark-layers.ts";
import { type Outline, writePath } from "./svg-path.ts";

/** What draws something: a path in absolute places, a text at its place, or a group as it is written. */
export type Drawn =
  | Readonly<{ kind: "path"; style: string; hasEdge: boolean; outline: Outline }>
  | Readonly<{ kind: "text"; style: string; place: string; text: string }>
  | Readonly<{ kind: "group"; text: string }>;

/** The text of drawn parts, neighbours of one style as one element. */
export function groupedText(drawn: readonly Drawn[]): string {
  const texts: string[] = [];
  for (let start = 0; start < drawn.length; ) {
    const first = drawn[start] as Drawn;
    let end = start + 1;
    while (end < drawn.length && isOfOneStyle(first, drawn[end] as Drawn)) end += 1;
    texts.push(first.kind === "group" ? first.text : together(first, drawn.slice(start, end)));
    start = end;
  }
  return texts.join("");
}

function isOfOneStyle(one: Drawn, other: Drawn): boolean {
  return one.kind !== "group" && one.kind === other.kind && one.style === other.style;
}

/** Marks that have an edge hide each other's: those that touch stay in their order, the others are one path. */
function together(first: Exclude<Drawn, { kind: "group" }>, run: readonly Drawn[]): string {
  if (first.kind === "text" && run.length === 1) return partText(first, first.style);
  if (first.kind === "text") return `<g${first.style}>${run.map((one) => partText(one, "")).join("")}</g>`;
  const outlines = run.flatMap((one) => (one.kind === "path" ? [one.outline] : []));
  if (!first.hasEdge) return pathText(first.style, outlines);
  const layers = layersOf(outlines);
  if (layers.length === 1) return pathText(first.style, outlines);
  return `<g${first.style}>${layers.map((layer) => pathText("", layer)).join("")}</g>`;
}

function partText(one: Drawn, style: string): string {
  if (one.kind === "group") return one.text;
  if (one.kind === "path") return pathText(style, [one.outline]);
  return one.text === "" ? `<text${style}${one.place}/>` : `<text${style}${one.place}>${one.text}</text>`;
}

function pathText(style: string, outlines: readonly Outline[]): string {
  return `<path${style} d="${writePath(outlines)}"/>`;
}
