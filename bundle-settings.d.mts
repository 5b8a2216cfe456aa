import type { BuildOptions } from "esbuild";

/** How the command is bundled; `build.mjs` adds what is bundled, and where to. */
export const bundleSettings: BuildOptions;
