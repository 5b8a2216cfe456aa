import { createHash } from "node:crypto";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";

/** Whether a path asks for a program that runs in a page, bundled and packed: `main.browser.tsx?packed`. */
export const packedProgram = /\.browser\.tsx\?packed$/u;

/** Of Node a browser has nothing: a digest comes from a library, and what a page never does throws if it is done after all. */
const digests = `
  import { sha256 } from "@noble/hashes/sha2.js";
  export function createHash() {
    const hash = sha256.create();
    return {
      update(bytes) {
        hash.update(bytes);
        return this;
      },
      digest: () => hash.digest(),
    };
  }
`;

const noEval = 'module.exports = () => { throw new EvalError("not in a page"); };';

const withoutNode = {
  name: "without-node",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^node:/ }, ({ path }) => ({ path, namespace: "node" }));
    // A library tries what an engine knows by eval, which the policy of a page forbids: it is told so, and no browser is.
    onLoad({ filter: /@stdlib\/utils-eval\/lib\/index\.js$/ }, () => ({ contents: noEval, loader: "js" }));
    onLoad({ filter: /.*/, namespace: "node" }, ({ path }) => ({
      contents: path === "node:crypto" ? digests : notThere(path),
      resolveDir: import.meta.dirname,
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
