import { cpSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { bundleSettings } from "../../../bundle-settings.mjs";

// The trial reads the sources of the program, so it is bundled as the command is; not beside it, for it is no part of it.
mkdirSync("docs", { recursive: true });
const folder = mkdtempSync(join(tmpdir(), "damage-"));
const outfile = join(folder, "run-damage.mjs");
try {
  // Keys of invented people lie beside the module that reads them.
  cpSync("tests/proof/keys", join(folder, "keys"), { recursive: true });
  await build({ ...bundleSettings, entryPoints: ["tests/computed/damage/run-damage.ts"], outfile });
  await import(pathToFileURL(outfile).href);
} finally {
  rmSync(folder, { recursive: true });
}
