/**
 * Makes the filing folder of the demonstration from data-demo/history, by the program's own parts, bundled as the command
 * is; keys, times and names are invented and fixed, so that the bytes are the same each run.
 *
 *   node tests/computed/demo/file-demo.mjs [folder, by default reports/filed]
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";
import { bundleSettings } from "../../../bundle-settings.mjs";

const root = fileURLToPath(new URL("../../..", import.meta.url));
const into = resolve(process.argv[2] ?? join(root, "reports/filed"));

const folder = mkdtempSync(join(tmpdir(), "spanwright-filed-"));
const outfile = join(folder, "filed-folder.mjs");
try {
  const entryPoints = [fileURLToPath(new URL("./filed-folder.mjs", import.meta.url))];
  await build({ ...bundleSettings, entryPoints, outfile });
  const { makeFiledFolder } = await import(pathToFileURL(outfile).href);
  await makeFiledFolder(into, join(root, "data-demo/history"));
} finally {
  rmSync(folder, { recursive: true });
}
