import { readFileSync } from "node:fs";
import subsetFont from "subset-font";

/** What a part of the page's font holds, by the name behind the question mark of its import. */
const glyphs = JSON.parse(readFileSync(new URL("src/report/style/font-glyphs.json", import.meta.url), "utf8"));

/** Digits of one width, and signs that stand on others; kerning would weigh as much as a third of the glyphs. */
const keepFeatures = ["tnum", "ccmp", "mark"];

/** Whether a path asks for a part of a font, or for some of them as one: `Inter-Regular.woff2?latin+signs`. */
export const fontPart = /\.woff2\?(?<part>[\w+-]+)$/u;

/** A module that exports a part of a font as base64 text. */
export async function fontPartModule(path) {
  const { part } = fontPart.exec(path).groups;
  const font = readFileSync(path.replace(/\?.*$/u, ""));
  const characters = part
    .split("+")
    .map((name) => glyphs[name])
    .join("");
  const subset = await subsetFont(font, characters, { targetFormat: "woff2", noHinting: true, keepFeatures });
  return `export default ${JSON.stringify(Buffer.from(subset).toString("base64"))};\n`;
}
