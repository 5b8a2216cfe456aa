import { createHash } from "node:crypto";
import { resolve } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";

/** Whether a path asks for a program that runs in a page, bundled and packed: `main.browser.tsx?packed`. */
export const packedProgram = /\.browser\.tsx\?packed$/u;

/** Of Node a browser has nothing: digests come from a file of ours, and what a page never does throws if it is done. */
const ofNode = { "node:crypto": resolve(import.meta.dirname, "src/sheet/browser-crypto.ts") };

const noEval = 'module.exports = () => { throw new EvalError("not in a page"); };';

const withoutNode = {
  name: "without-node",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^node:/ }, ({ path }) => {
      return ofNode[path] === undefined ? { path, namespace: "node" } : { path: ofNode[path] };
    });
    // A library tries what an engine knows by eval, which the policy of a page forbids: it is told so, and no browser is.
    onLoad({ filter: /@stdlib\/utils-eval\/lib\/index\.js$/ }, () => ({ contents: noEval, loader: "js" }));
    onLoad({ filter: /.*/, namespace: "node" }, ({ path }) => ({
      contents: notThere(path),
    }));
  },
};

function notThere(path) {
  return `module.exports = new Proxy({}, { get: (_, name) => () => { throw new Error(\`${path} \${String(name)}: not in a browser\`); } });`;
}

const settings = {
  ...{ bundle: true, minify: true, write: false, metafile: true, logLevel: "warning" },
  ...{ format: "iife", platform: "browser", target: ["chrome110", "firefox115", "safari16.4"] },
  ...{ jsx: "automatic", jsxImportSource: "preact", plugins: [withoutNode], legalComments: "none" },
};

const programs = new Map();

/** The program of a path once: its text packed by gzip as base64, the hash by which a page pins it, what is in it. */
export function program(path) {
  const entry = path.replace(/\?packed$/u, "");
  if (!programs.has(entry)) programs.set(entry, bundled(entry));
  return programs.get(entry);
}

async function bundled(entry) {
  const { outputFiles, metafile } = await build({ ...settings, entryPoints: [entry] });
  const { contents } = outputFiles[0];
  return {
    packed: gzipSync(contents, { level: 9 }).toString("base64"),
    sha256: createHash("sha256").update(contents).digest("base64"),
    metafile,
  };
}

/** A module that exports the packed text and its hash. */
export async function packedProgramModule(path) {
  const { packed, sha256 } = await program(path);
  return `export const packed = ${JSON.stringify(packed)};\nexport const sha256 = ${JSON.stringify(sha256)};\n`;
}
