/**
 * Writes src/charts/drawing/inter-advances.json: how far each character of the embedded font moves the pen.
 *
 * Input: inter-ui 4.1.1 (SIL Open Font License 1.1), 400 and 600, the characters that a page of itself brings.
 * Parser: opentype.js 1.3.4, kept out of the project's dependencies. Run with
 *   mkdir -p /tmp/font-parser && npm install --prefix /tmp/font-parser opentype.js@1.3.4
 *   node tests/computed/inter-advances/make-advances.mjs /tmp/font-parser/node_modules/opentype.js/dist/opentype.module.js
 */
import { readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import subsetFont from "subset-font";

const { default: opentype } = await import(pathToFileURL(process.argv[2]).href);
const root = new URL("../../../", import.meta.url);
const fonts = new URL("node_modules/inter-ui/web/", root);
const target = new URL("src/charts/drawing/inter-advances.json", root);
const glyphs = JSON.parse(readFileSync(new URL("src/report/style/font-glyphs.json", root), "utf8"));
const characters = [...new Set(Object.values(glyphs).join(""))].sort().join("");

const table = {
  source: "inter-ui 4.1.1, read with opentype.js 1.3.4",
  unitsPerEm: 2048,
  characters,
  regular: await advancesOf("Inter-Regular.woff2"),
  semibold: await advancesOf("Inter-SemiBold.woff2"),
};
writeFileSync(target, `${JSON.stringify(table)}\n`);

async function advancesOf(file) {
  const bytes = await subsetFont(readFileSync(new URL(file, fonts)), characters, { targetFormat: "truetype" });
  const font = opentype.parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
  return Array.from(characters, (character) => {
    const { index, advanceWidth } = font.charToGlyph(character);
    if (index === 0) throw new Error(`the font lacks ${character}`);
    return advanceWidth;
  });
}
