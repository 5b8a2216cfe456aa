import { readdirSync, rmSync } from "node:fs";
import { build } from "esbuild";
import { bundleSettings } from "./bundle-settings.mjs";

// Split, so that each part loads only when a command needs it.
const { metafile } = await build({
  ...bundleSettings,
  entryPoints: { cli: "src/cli/cli.ts" },
  outdir: "dist",
  splitting: true,
  metafile: true,
});

// Parts of an earlier build go last: a build that fails leaves a whole command behind.
for (const name of readdirSync("dist")) {
  if (!(`dist/${name}` in metafile.outputs)) rmSync(`dist/${name}`, { recursive: true });
}
