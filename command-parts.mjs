import { spawnSync } from "node:child_process";
import { chmodSync, existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { build, transform } from "esbuild";
import { bundleSettings } from "./bundle-settings.mjs";

/** What is started, and with what words of its part. */
const starts = {
  cli: { entry: "src/cli/cli.ts", call: ".main(process.argv.slice(2))" },
  "report-worker": { entry: "src/cli/report-worker.ts", call: "" },
  "verify-worker": { entry: "src/cli/verify-worker.ts", call: "" },
};

/**
 * Builds the command in parts, each of which loads only when something needs it: scripts, with V8's code of them
 * beside, because Node 20 keeps no code of modules, and compiling them would be half of a short command's time.
 *
 * @returns what the parts are made of, and the files that were written
 */
export async function buildCommand() {
  const entryPoints = Object.fromEntries(Object.entries(starts).map(([name, { entry }]) => [name, entry]));
  const settings = { ...bundleSettings, splitting: true, metafile: true, write: false };
  const bundled = await build({ ...settings, entryPoints, outdir: "dist/parts" });
  mkdirSync("dist/parts", { recursive: true });
  const parts = await Promise.all(bundled.outputFiles.map(writePart));
  const loader = { entryPoints: ["src/cli/load-part.ts"], outfile: "dist/load-part.js", format: "cjs", banner: {} };
  await build({ ...bundleSettings, ...loader });
  for (const [name, { call }] of Object.entries(starts)) writeFileSync(`dist/${name}.js`, startOf(name, call));
  chmodSync("dist/cli.js", 0o755);
  writeFileSync("dist/package.json", '{ "type": "commonjs" }\n');
  const begun = Object.keys(starts).map((name) => `dist/${name}.js`);
  const codes = keepCode(parts);
  return {
    metafile: bundled.metafile,
    files: [...begun, "dist/load-part.js", "dist/package.json", ...parts, ...codes],
  };
}

function startOf(name, call) {
  return `#!/usr/bin/env node
"use strict";
require("./load-part.js").partLoader(\`\${__dirname}/parts\`)("./${name}.js")${call};
`;
}

/** A part as a script: its imports are asked of the loader, also those that wait until they are needed. */
async function writePart({ path, text }) {
  // Where each piece came from stays, which is a comment, and of those only the ones with a mark are kept.
  const { code } = await transform(text.replaceAll(/^\/\/ (?=(?:src|node_modules)\/)/gmu, "//! "), {
    legalComments: "inline",
    format: "cjs",
    platform: "node",
    target: "node20",
    define: { "import.meta.url": "partUrl" },
    supported: { "dynamic-import": false },
  });
  const file = `dist/parts/${basename(path)}`;
  writeFileSync(file, code);
  return file;
}

/**
 * Runs the command on what it is mostly used for, and keeps what V8 compiled on the way. It has no list of its files
 * then, which would be that of the build before.
 */
function keepCode(parts) {
  rmSync("dist/program.sha256", { force: true });
  for (const name of readdirSync("dist/parts")) {
    if (!parts.includes(`dist/parts/${name}`)) rmSync(`dist/parts/${name}`);
  }
  const { status, stderr } = spawnSync(process.execPath, ["keep-code.mjs"], { encoding: "utf8" });
  if (status !== 0) throw new Error(`no code of the parts could be kept: ${stderr}`);
  return parts.map((part) => `${part}.code`).filter((code) => existsSync(code));
}
