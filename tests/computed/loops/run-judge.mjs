import { mkdirSync } from "node:fs";
import { build } from "esbuild";
import { bundleSettings } from "../../../bundle-settings.mjs";

// The judge reads the sources of the program, so it is bundled as the command is, beside it.
mkdirSync("docs", { recursive: true });
const outfile = "dist/judge/run-judge.js";
await build({ ...bundleSettings, entryPoints: ["tests/computed/loops/run-judge.ts"], outfile });
await import(`../../../${outfile}`);
