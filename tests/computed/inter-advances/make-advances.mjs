/**
 * Writes src/charts/drawing/inter-advances.json: how far each character of the embedded font moves the pen.
 *
 * Input: @fontsource/inter 5.3.0 (SIL Open Font License 1.1), latin subset, 400 and 600; Ω Δ μ from its greek subset.
 * Parser: opentype.js 1.3.4, kept out of the project's dependencies. Run with
 *   mkdir -p /tmp/font-parser && npm install --prefix /tmp/font-parser opentype.js@1.3.4
 *   node tests/computed/inter-advances/make-advances.mjs /tmp/font-parser/node_modules/opentype.js/dist/opentype.module.js
 */
import { readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";

const { default: opentype } = await import(pathToFileURL(process.argv[2]).href);
const fonts = new URL("../../../node_modules/@fontsource/inter/files/", import.meta.url);
const target = new URL("../../../src/charts/drawing/inter-advances.json", import.meta.url);

/** In neither subset, so that the reader's fallback font draws them: each is taken to be as wide as a character that is. */
const assumed = {
  "√": "+",
  "≤": "+",
  "≥": "+",
  "≈": "+",
  "→": "—",
  "▲": "O",
  "▼": "O",
  "●": "O",
  "○": "O",
  "\u2126": "Ω",
};

const regular = advancesOf(400);
const semibold = advancesOf(600);
const characters = Object.keys(regular).sort();
const table = {
  source: "@fontsource/inter 5.3.0, latin subset (Ω Δ μ: greek subset), read with opentype.js 1.3.4",
  assumed: Object.keys(assumed).join(""),
  unitsPerEm: 2048,
  characters: characters.join(""),
  regular: characters.map((character) => regular[character]),
  semibold: characters.map((character) => semibold[character]),
};
writeFileSync(target, `${JSON.stringify(table)}\n`);

function advancesOf(weight) {
  const found = {
    ...read("greek", weight, (character) => "ΩΔμ".includes(character)),
    ...read("latin", weight, () => true),
  };
  for (const [character, model] of Object.entries(assumed)) found[character] = found[model];
  return found;
}

function read(subset, weight, isWanted) {
  const bytes = readFileSync(new URL(`inter-${subset}-${weight}-normal.woff`, fonts));
  const font = opentype.parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
  const found = {};
  for (let index = 0; index < font.glyphs.length; index += 1) {
    const glyph = font.glyphs.get(index);
    for (const codePoint of glyph.unicodes ?? []) {
      const character = String.fromCodePoint(codePoint);
      if (codePoint >= 32 && isWanted(character)) found[character] = glyph.advanceWidth;
    }
  }
  return found;
}
