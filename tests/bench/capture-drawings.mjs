// The compiled specifications and the data of every chart that a report of a workbook draws, for the floor.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { bundleSettings } from "../../bundle-settings.mjs";

/** Stands in for the drawing itself: keeps what is drawn and gives back an empty picture. */
const recorder = `
export function createDrawing(specification) {
  return async ({ size, signals, data }) => {
    const { specifications, drawings } = globalThis.captured;
    if (!specifications.includes(specification)) specifications.push(specification);
    drawings.push({ specification: specifications.indexOf(specification), size, signals, data });
    return "<svg/>";
  };
}`;

/** The floor parses vega's specifications itself. */
const notParsed = `
import { compile } from "vega-lite";
import { strictLogger } from "./strict-logger.ts";
export const compiledChart = (specification) => compile(structuredClone(specification), { logger: strictLogger }).spec;`;

const recordInsteadOfDrawing = {
  name: "record-instead-of-drawing",
  setup({ onLoad }) {
    onLoad({ filter: /src\/charts\/drawing\/draw\.ts$/ }, () => ({ contents: recorder, loader: "ts" }));
    onLoad({ filter: /src\/charts\/drawing\/compiled-chart\.ts$/ }, ({ path }) => ({
      contents: notParsed,
      loader: "ts",
      resolveDir: dirname(path),
    }));
  },
};

export async function captureDrawings(workbook, folder) {
  const outfile = join(folder, "capture.mjs");
  const entryPoints = ["src/jobs/records/report-calibrations.ts"];
  await build({ ...bundleSettings, entryPoints, outfile, plugins: [recordInsteadOfDrawing] });
  globalThis.captured = { specifications: [], drawings: [] };
  const { reportCalibrations } = await import(pathToFileURL(outfile).href);
  const disk = {
    read: async (path) => {
      if (path !== workbook) return undefined;
      const names = readdirSync(path).map((name) => join(path, name));
      return { isFolder: true, files: names.map((name) => ({ name, bytes: readFileSync(name) })) };
    },
    writeTogether: async () => {},
  };
  const options = { out: "out", today: "2026-11-25", firstLook: {}, softwareVersion: "0.0.0" };
  await reportCalibrations(disk, workbook, options);
  const { specifications, drawings } = globalThis.captured;
  const file = join(folder, "drawings.json");
  writeFileSync(file, JSON.stringify({ specifications, drawings }));
  return { file, count: drawings.length };
}
