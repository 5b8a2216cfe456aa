import type { Item } from "./scene.ts";

/** Channel and attribute of what an item looks like, in the order in which they are written, with what is so unsaid. */
const styles: readonly (readonly [channel: string, name: string, unsaid?: string])[] = [
  ["fillOpacity", "fill-opacity", "1"],
  ["stroke", "stroke"],
  ["strokeOpacity", "stroke-opacity", "1"],
  ["strokeWidth", "stroke-width", "1"],
  ["strokeCap", "stroke-linecap"],
  ["strokeJoin", "stroke-linejoin"],
  ["strokeDash", "stroke-dasharray", "1,0"],
  ["strokeDashOffset", "stroke-dashoffset"],
  ["opacity", "opacity", "1"],
];

/** The others that an item's attributes are made of. */
const further = ["fill", "strokeMiterLimit", "align", "font", "fontSize", "fontStyle", "fontVariant", "fontWeight"];
const channels = [...styles.map(([channel]) => channel), ...further];

/** Whether two items of one mark look the same wherever they stand. */
export function areStyledAlike(one: Item, other: Item): boolean {
  for (const channel of channels) if (one[channel] !== other[channel]) return false;
  return true;
}

export type Style = Readonly<{ text: string; hasStroke: boolean; hasFill: boolean }>;

/**
 * The attributes of an item as text. Of a text, its font too, less what it has in common with the one that the root says;
 * of an item without a stroke, nothing of a stroke.
 */
export function itemStyle(item: Item, font?: Item): Style {
  const [fill, stroke] = [colorOf(item.fill), colorOf(item.stroke)];
  const hasStroke = stroke !== undefined;
  const parts: string[] = [];
  add(parts, "fill", fill);
  add(parts, "stroke-miterlimit", item.strokeMiterLimit, hasStroke ? "4" : undefined, hasStroke);
  if (item.mark.marktype === "text") addFont(parts, item, font);
  for (const [channel, name, unsaid] of styles) {
    const value = channel === "stroke" ? stroke : item[channel];
    add(parts, name, value, unsaid, hasStroke || !name.startsWith("stroke"));
  }
  return { text: parts.join(""), hasStroke, hasFill: fill !== undefined };
}

function add(parts: string[], name: string, value: unknown, unsaid?: string, isOf = true): void {
  if (!isOf || value === undefined || value === null) return;
  const text = String(value);
  if (text !== unsaid) parts.push(` ${name}="${attributeText(text)}"`);
}

/** No colour is what the root says of all. */
function colorOf(value: unknown): unknown {
  if (typeof value === "object" && value !== null) throw new Error("itemStyle: a colour is one, not a gradient");
  return value === "transparent" || value === "none" || value === null ? undefined : value;
}

const anchors: Readonly<Record<string, string>> = { center: "middle", right: "end" };

function addFont(parts: string[], item: Item, shared: Item | undefined): void {
  const { align, fontStyle, fontVariant, fontWeight } = item;
  add(parts, "text-anchor", anchors[String(align)]);
  if (shared === undefined || familyOf(item) !== familyOf(shared)) add(parts, "font-family", familyOf(item));
  if (shared === undefined || sizeOf(item) !== sizeOf(shared)) add(parts, "font-size", sizeOf(item));
  add(parts, "font-style", fontStyle);
  add(parts, "font-variant", fontVariant);
  add(parts, "font-weight", fontWeight, "400");
}

/** The font that the root says for all texts. */
export function rootStyle(text: Item): string {
  return ` font-family="${attributeText(familyOf(text))}" font-size="${sizeOf(text)}"`;
}

function familyOf({ font }: Item): string {
  return String(font || "sans-serif");
}

function sizeOf({ fontSize }: Item): string {
  return `${fontSize === undefined || fontSize === null ? 11 : Number(fontSize) || 0}px`;
}

function attributeText(text: string): string {
  if (!/[&<>"\t\n\r]/u.test(text)) return text;
  const entities = {
    "&": "&amp;",
    "<": "&lt;",
    ">": "&gt;",
    '"': "&quot;",
    "\t": "&#x9;",
    "\n": "&#xA;",
    "\r": "&#xD;",
  };
  return text.replace(/[&<>"\t\n\r]/gu, (sign) => entities[sign as keyof typeof entities]);
}
