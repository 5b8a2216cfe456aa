import { Marks } from "vega-scenegraph";
import { type Drawn, groupedText } from "./drawn-parts.ts";
import { areStyledAlike, itemStyle, rootStyle, type Style } from "./item-style.ts";
import type { Item, Mark } from "./scene.ts";
import { placeOfText, textOf } from "./scene-text.ts";
import { type Outline, readPath, rectanglePath, type Subpath, short, straightPath } from "./svg-path.ts";

/** A drawing as marks in marks, and where its plot begins. */
export type Scene = Readonly<{
  root: Mark;
  size: Readonly<{ width: number; height: number }>;
  origin: readonly [number, number];
}>;

type At = Readonly<{ x: number; y: number }>;

/** What is remembered while a scene is written: the ids it needs, and how the item before looked. */
type Writing = {
  prefix: string;
  font: Item | undefined;
  clips: string[];
  before: Readonly<{ item: Item; style: Style }> | undefined;
};

/** The outlines of symbols, by shape and size: a handful. */
const outlines = new Map<string, readonly Subpath[]>();

/**
 * A scene as SVG text, as short as it looks the same: places absolute, marks of one style that follow each other one
 * path, what is not seen left out, what all texts share said once by the root.
 */
export function sceneSvg({ root, origin: [x, y] }: Scene, prefix: string): { content: string; font: string } {
  const writing: Writing = { prefix, font: firstText(root), clips: [], before: undefined };
  const content = groupedText(markParts(writing, root, { x, y }));
  const clips = writing.clips.length === 0 ? "" : `<defs>${writing.clips.join("")}</defs>`;
  return { content: content + clips, font: writing.font === undefined ? "" : rootStyle(writing.font) };
}

function firstText(mark: Mark): Item | undefined {
  if (mark.marktype === "text") return mark.items[0];
  for (const item of mark.items) {
    for (const inside of item.items ?? []) {
      const found = firstText(inside);
      if (found !== undefined) return found;
    }
  }
  return undefined;
}

function markParts(writing: Writing, mark: Mark, at: At): readonly Drawn[] {
  if (!mark.clip) return itemsParts(writing, mark, at);
  const id = clipFor(writing, mark);
  const inside = groupedText(itemsParts(writing, mark, { x: 0, y: 0 }));
  const place = at.x === 0 && at.y === 0 ? "" : ` transform="translate(${short(at.x)},${short(at.y)})"`;
  const group = `<g clip-path="url(#${id})"${place}`;
  return [{ kind: "group", text: inside === "" ? `${group}/>` : `${group}>${inside}</g>` }];
}

function clipFor({ prefix, clips }: Writing, { group }: Mark): string {
  const id = `${prefix}-${clips.length + 1}`;
  const [width, height] = [Number(group?.width ?? 0), Number(group?.height ?? 0)];
  clips.push(`<clipPath id="${id}"><rect x="0" y="0" width="${width}" height="${height}"/></clipPath>`);
  return id;
}

function itemsParts(writing: Writing, mark: Mark, at: At): readonly Drawn[] {
  const isOnePath = mark.marktype === "line" || mark.marktype === "area";
  const items = isOnePath ? mark.items.slice(0, 1) : mark.items;
  if (mark.marktype === "group") return items.flatMap((item) => groupParts(writing, item, at));
  if (mark.marktype === "text") return items.map((item) => textPart(writing, item, at));
  return items.flatMap((item) => pathPart(writing, item, at) ?? []);
}

function groupParts(writing: Writing, item: Item, at: At): readonly Drawn[] {
  const inside = { x: at.x + numberOf(item.x), y: at.y + numberOf(item.y) };
  const background = pathPart(writing, item, inside);
  const content = (item.items ?? []).flatMap((mark) => markParts(writing, mark, inside));
  return background === undefined ? content : [background, ...content];
}

function textPart(writing: Writing, item: Item, at: At): Drawn {
  return { kind: "text", style: styleOf(writing, item).text, place: placeOfText(item, at), text: textOf(item) };
}

function pathPart(writing: Writing, item: Item, at: At): Drawn | undefined {
  const { text: style, hasStroke, hasFill } = styleOf(writing, item);
  if (!hasStroke && !hasFill) return undefined;
  const outline = outlineOf(item, at);
  return outline.subpaths.length === 0 ? undefined : { kind: "path", style, hasEdge: hasStroke && hasFill, outline };
}

/** The items of a mark follow each other, and most look like the one before. */
function styleOf(writing: Writing, item: Item): Style {
  const { before, font } = writing;
  if (before?.item.mark === item.mark && areStyledAlike(before.item, item)) return before.style;
  const style = itemStyle(item, font);
  writing.before = { item, style };
  return style;
}

function outlineOf(item: Item, at: At): Outline {
  const { marktype } = item.mark;
  if (marktype === "rule") return rulePath(item, at);
  if (marktype === "rect" && !hasRoundCorners(item)) return rectanglePath(at, boxOf(item));
  if (marktype === "group") return rectanglePath(at, { ...boxOf(item), ...edgeOf(item) });
  if (marktype === "line" && isStraight(item.mark.items)) return straightPath(item.mark.items.map(placeOf), at.x, at.y);
  if (marktype !== "symbol") return readPath(pathOf(item), at.x, at.y);
  if (item.angle !== undefined && item.angle !== 0) throw new Error("sceneSvg: a symbol is not turned");
  const key = `${String(item.shape)} ${String(item.size)}`;
  const subpaths = outlines.get(key) ?? readPath(pathOf(item)).subpaths;
  outlines.set(key, subpaths);
  return { subpaths, dx: at.x + numberOf(item.x), dy: at.y + numberOf(item.y) };
}

/** Whether a line goes from each of its places to the next, without a bow and without a gap. */
function isStraight(items: readonly Item[]): boolean {
  return items.every(({ interpolate, defined }) => {
    return (interpolate === undefined || interpolate === "linear") && defined !== false;
  });
}

/** To a thousandth of a pixel, as vega writes a path. */
function placeOf({ x, y }: Item): At {
  return { x: Math.round(1000 * numberOf(x)) / 1000, y: Math.round(1000 * numberOf(y)) / 1000 };
}

/** The outline of an item as vega's own shapes give it. */
function pathOf(item: Item): string {
  let path = "";
  Marks[item.mark.marktype]?.attr((name, value) => {
    if (name === "d") path = String(value ?? "");
  }, item);
  return path;
}

function rulePath(item: Item, at: At): Outline {
  const [x, y] = [numberOf(item.x), numberOf(item.y)];
  const ends = [item.x2 ?? x, item.y2 ?? y].map(Number);
  const places = [
    { x: 0, y: 0 },
    { x: (ends[0] ?? 0) - x, y: (ends[1] ?? 0) - y },
  ];
  return straightPath(places, at.x + x, at.y + y);
}

function hasRoundCorners(item: Item): boolean {
  return Object.keys(item).some((channel) => channel.startsWith("cornerRadius"));
}

function boxOf({ x, y, width, height }: Item): { x: number; y: number; width: number; height: number } {
  return { x: numberOf(x), y: numberOf(y), width: numberOf(width), height: numberOf(height) };
}

/** A thin edge of a group runs along the middle of a pixel. */
function edgeOf({ stroke, strokeWidth, strokeOffset }: Item): { x: number; y: number } {
  const width = Number(strokeWidth ?? 1);
  const isThin = Boolean(stroke) && width > 0.5 && width < 1.5;
  const offset = Number(strokeOffset ?? (isThin ? 0.5 - Math.abs(width - 1) : 0));
  return { x: offset, y: offset };
}

function numberOf(value: unknown): number {
  return Number(value ?? 0) || 0;
}
