import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { bundleSettings } from "../../../bundle-settings.mjs";

// The simulation reads the sources of the program, so it is bundled as the command is; not beside it, for it is no part of it.
mkdirSync("docs", { recursive: true });
const folder = mkdtempSync(join(tmpdir(), "simulation-"));
const outfile = join(folder, "run-simulation.mjs");
try {
  await build({ ...bundleSettings, entryPoints: ["tests/computed/uncertainty/run-simulation.ts"], outfile });
  await import(pathToFileURL(outfile).href);
} finally {
  rmSync(folder, { recursive: true });
}
