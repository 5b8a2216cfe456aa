import { spawnSync } from "node:child_process";
import { chmodSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { build, transform } from "esbuild";
import { bundleSettings } from "./bundle-settings.mjs";

/** What is started, and what is called of its part. */
const starts = {
  cli: { entry: "src/cli/cli.ts", call: ".main(process.argv.slice(2))" },
  "report-worker": { entry: "src/cli/report-worker.ts", call: "" },
  "verify-worker": { entry: "src/cli/verify-worker.ts", call: "" },
};

/**
 * Builds the command in parts, each of which loads only when something needs it: scripts, with V8's code of them beside,
 * because Node 20 keeps no code of modules, and compiling them would be half of a short command's time. All parts lie
 * in one file, and all code in another, for hundreds of files take long to read and to make digests of.
 *
 * @returns what the parts are made of, and the files that were written
 */
export async function buildCommand() {
  const entryPoints = Object.fromEntries(Object.entries(starts).map(([name, { entry }]) => [name, entry]));
  // A part is given what requires, and needs none of its own.
  const settings = { ...bundleSettings, banner: {}, splitting: true, metafile: true, write: false };
  const { outputFiles, metafile } = await build({ ...settings, entryPoints, outdir: "dist" });
  mkdirSync("dist", { recursive: true });
  // A command whose list of files is that of the build before would mistrust itself.
  rmSync("dist/program.sha256", { force: true });
  writeParts("dist", await Promise.all(outputFiles.map(asPart)));
  const loader = { entryPoints: ["src/cli/load-part.ts"], outfile: "dist/load-part.js", format: "cjs", banner: {} };
  await build({ ...bundleSettings, ...loader });
  for (const [name, { call }] of Object.entries(starts)) writeFileSync(`dist/${name}.js`, startOf(name, call));
  chmodSync("dist/cli.js", 0o755);
  writeFileSync("dist/package.json", '{ "type": "commonjs" }\n');
  keepCode();
  const begun = Object.keys(starts).map((name) => `${name}.js`);
  const names = [...begun, "load-part.js", "package.json", "parts.json", "parts.txt", "parts.code"];
  return { metafile, files: names.map((name) => `dist/${name}`) };
}

function startOf(name, call) {
  return `#!/usr/bin/env node
"use strict";
require("./load-part.js").partLoader(__dirname)("./${name}.js")${call};
`;
}

/** A part as a script: its imports are asked of the loader, also those that wait until they are needed. */
async function asPart({ path, text }) {
  // Where each piece came from stays, which is a comment, and of those only the ones with a mark are kept.
  const { code } = await transform(text.replaceAll(/^\/\/ (?=(?:src|node_modules)\/)/gmu, "//! "), {
    legalComments: "inline",
    format: "cjs",
    platform: "node",
    target: "node20",
    define: { "import.meta.url": "partUrl" },
    supported: { "dynamic-import": false },
  });
  return { name: `./${basename(path)}`, text: code };
}

/** The texts one behind the other, with a line between them that no part sees, and where each of them stands. */
export function writeParts(folder, parts) {
  const index = {};
  const texts = [];
  let start = 0;
  for (const { name, text } of parts) {
    const head = `//! ${name}\n`;
    const length = Buffer.byteLength(text);
    index[name] = { text: [start + head.length, length] };
    texts.push(head, text);
    start += head.length + length;
  }
  writeFileSync(`${folder}/parts.txt`, texts.join(""));
  writeFileSync(`${folder}/parts.json`, JSON.stringify(index));
}

/** V8's code of parts, and where each stands, beside their texts. */
export function writeCode(folder, index, codes) {
  const withCode = { ...index };
  let start = 0;
  for (const [name, { length }] of codes) {
    withCode[name] = { ...index[name], code: [start, length] };
    start += length;
  }
  writeFileSync(`${folder}/parts.code`, Buffer.concat([...codes.values()]));
  writeFileSync(`${folder}/parts.json`, JSON.stringify(withCode));
}

/** Runs the command on what it is mostly used for, and keeps what V8 compiled on the way. */
function keepCode() {
  const { status, stderr } = spawnSync(process.execPath, ["keep-code.mjs"], { encoding: "utf8" });
  if (status !== 0) throw new Error(`no code of the parts could be kept: ${stderr}`);
}
