import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import subsetFont from "subset-font";

/** What a part of the page's font holds, by the name behind the question mark of its import. */
const glyphs = JSON.parse(readFileSync(new URL("src/report/style/font-glyphs.json", import.meta.url), "utf8"));

/** Digits of one width, and signs that stand on others; kerning would weigh as much as a third of the glyphs. */
const keepFeatures = ["tnum", "ccmp", "mark"];
const settings = { targetFormat: "woff2", noHinting: true, keepFeatures };

/** Parts that were made before: to pack one takes a second, and builds and tests ask for the same ones. */
const keptIn = join(import.meta.dirname, "node_modules/.cache/spanwright-fonts");
const { version } = JSON.parse(readFileSync(new URL("node_modules/subset-font/package.json", import.meta.url), "utf8"));

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
  const subset = await keptSubset(font, characters);
  return `export default ${JSON.stringify(subset.toString("base64"))};\n`;
}

/** The part as it was kept under the hash of all that it is made from, or made now, and kept. */
async function keptSubset(font, characters) {
  const madeFrom = JSON.stringify([version, settings, characters, font.toString("base64")]);
  const path = join(keptIn, createHash("sha256").update(madeFrom).digest("hex"));
  try {
    return readFileSync(path);
  } catch {
    const subset = Buffer.from(await subsetFont(font, characters, settings));
    mkdirSync(keptIn, { recursive: true });
    writeFileSync(`${path}.${process.pid}`, subset);
    renameSync(`${path}.${process.pid}`, path);
    return subset;
  }
}
