// The compiled specifications and the data of every chart that a report of a workbook draws, for the floor.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

/** Stands in for the drawing itself: keeps what is drawn and gives back an empty picture. */
const recorder = `
import { compileSpecification } from "./compile.ts";
export function createDrawing(specification) {
  return async ({ size, signals, data }) => {
    const kept = globalThis.captured;
    let index = kept.sources.indexOf(specification);
    if (index === -1) {
      index = kept.sources.push(specification) - 1;
      kept.specifications.push(compileSpecification(specification));
    }
    kept.drawings.push({ specification: index, size, signals, data });
    return "<svg/>";
  };
}`;

const recordInsteadOfDrawing = {
  name: "record-instead-of-drawing",
  setup({ onLoad }) {
    onLoad({ filter: /src\/charts\/draw\.ts$/ }, () => ({ contents: recorder, loader: "ts" }));
  },
};

export async function captureDrawings(workbook, settings, folder) {
  const outfile = join(folder, "capture.mjs");
  const entryPoints = ["src/jobs/report-calibrations.ts"];
  await build({ ...settings, entryPoints, outfile, plugins: [recordInsteadOfDrawing] });
  globalThis.captured = { sources: [], specifications: [], drawings: [] };
  const { reportCalibrations } = await import(pathToFileURL(outfile).href);
  const disk = {
    read: async (path) => ({
      isFolder: true,
      files: readdirSync(path).map((name) => ({ name: join(path, name), bytes: readFileSync(join(path, name)) })),
    }),
    writeTogether: async () => {},
  };
  const options = { out: "out", today: "2026-11-25", firstLook: {}, softwareVersion: "0.0.0" };
  await reportCalibrations(disk, workbook, options);
  const { specifications, drawings } = globalThis.captured;
  const file = join(folder, "drawings.json");
  writeFileSync(file, JSON.stringify({ specifications, drawings }));
  return { file, count: drawings.length };
}
