import { rmSync } from "node:fs";
import { build } from "esbuild";

// One command, split so that each part loads only when a command needs it; commander is CommonJS and asks for `require`.
const requireForBundledCommonJs =
  "import{createRequire as createRequireForBundle}from'node:module';const require=createRequireForBundle(import.meta.url);";

rmSync("dist", { recursive: true, force: true });
await build({
  entryPoints: { cli: "src/cli/cli.ts" },
  outdir: "dist",
  bundle: true,
  splitting: true,
  format: "esm",
  platform: "node",
  target: "node20",
  minifyWhitespace: false,
  keepNames: true,
  jsx: "automatic",
  jsxImportSource: "preact",
  loader: { ".woff2": "base64" },
  banner: { js: requireForBundledCommonJs },
  logLevel: "warning",
});
