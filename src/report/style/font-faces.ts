import regularFormulas from "inter-ui/web/Inter-Regular.woff2?formulas";
import regularGreek from "inter-ui/web/Inter-Regular.woff2?greek";
import regularLatin1 from "inter-ui/web/Inter-Regular.woff2?latin-1";
import regularLatinExtendedA from "inter-ui/web/Inter-Regular.woff2?latin-extended-a";
import regularLatin from "inter-ui/web/Inter-Regular.woff2?latin+signs";
import semiboldLatin from "inter-ui/web/Inter-SemiBold.woff2?latin";
import semiboldLatin1 from "inter-ui/web/Inter-SemiBold.woff2?latin-1";
import semiboldLatinExtendedA from "inter-ui/web/Inter-SemiBold.woff2?latin-extended-a";
import { onceForEach } from "../../record/once-for-each.ts";
import glyphs from "./font-glyphs.json" with { type: "json" };

/** `signs` stand in formulas and pictures, which are not bold. */
type Part = { characters: string; signs?: string; weights: Readonly<Record<number, string>> };

/** The letters and signs that every page has; further letters only where a page has some. */
const basic: Part = {
  ...{ characters: glyphs.latin, signs: glyphs.signs },
  weights: { 400: regularLatin, 600: semiboldLatin },
};
const further: readonly Part[] = [
  { characters: glyphs["latin-1"], weights: { 400: regularLatin1, 600: semiboldLatin1 } },
  {
    characters: glyphs["latin-extended-a"],
    weights: { 400: regularLatinExtendedA, 600: semiboldLatinExtendedA },
  },
  { characters: glyphs.formulas, weights: { 400: regularFormulas } },
  { characters: glyphs.greek, weights: { 400: regularGreek } },
];

/**
 * The page's font, embedded as far as a text needs it, so that a page looks and measures the same on every machine
 * (Inter, OFL 1.1).
 */
export function fontFaces(text: string): string {
  const letters = lettersBeyondAscii(text);
  const needed = further.filter((part) => patternOf(part).test(letters));
  return [basic, ...needed].map(facesOf).join("");
}

/** A page is hundreds of kilobytes of text, and is gone through once; each part is looked for in its letters alone. */
function lettersBeyondAscii(text: string): string {
  const units = new Set<number>();
  for (let place = 0; place < text.length; place++) {
    const unit = text.charCodeAt(place);
    if (unit > 127) units.add(unit);
  }
  return String.fromCharCode(...units);
}

const patternOf = onceForEach(
  ({ characters }: Part) => new RegExp(`[${characters.replace(/[\\\]^-]/gu, "\\$&")}]`, "u"),
);
const facesOf = onceForEach(writtenFaces);

/** Letters and signs of a text that the font does not have: the reader's own font shows them. */
export function charactersOutsideFont(text: string): readonly string[] {
  const known = new Set([basic, ...further].flatMap(({ characters, signs = "" }) => [...characters, ...signs]));
  return [...new Set(text)].filter((one) => !known.has(one) && !/[\p{C}\p{Z}]/u.test(one));
}

function writtenFaces({ characters, signs = "", weights }: Part): string {
  return Object.entries(weights)
    .map(
      ([weight, base64]) =>
        `@font-face{font-family:Inter;font-weight:${weight};font-display:block;` +
        `unicode-range:${rangesOf(weight === "400" ? characters + signs : characters)};` +
        `src:url(data:font/woff2;base64,${base64}) format("woff2")}`,
    )
    .join("");
}

/** "U+20-7E,U+A0": the characters as CSS names them. */
function rangesOf(characters: string): string {
  const ranges: [from: number, to: number][] = [];
  for (const code of [...characters].map((one) => one.codePointAt(0) ?? 0).sort((one, other) => one - other)) {
    const last = ranges.at(-1);
    if (last !== undefined && last[1] === code - 1) last[1] = code;
    else ranges.push([code, code]);
  }
  const written = ranges.map(([from, to]) => (from === to ? hex(from) : `${hex(from)}-${hex(to)}`));
  return written.map((range) => `U+${range}`).join(",");
}

function hex(code: number): string {
  return code.toString(16).toUpperCase();
}
