import { folderOf, type SourceFile } from "./source-files.ts";

const tested = [
  ...["units", "problems", "numeric", "model", "analysis", "verdict", "record"],
  ...["workbook", "charts", "report", "filing", "jobs"],
];

/** Files that need no test of their own, each with the reason. */
export const untested: Readonly<Record<string, string>> = {
  "src/problems/problem.ts": "types alone",
  "src/model/calibration-case.ts": "types alone",
  "src/workbook/raw-table.ts": "types alone",
  "src/workbook/cell-result.ts": "types alone",
  "src/workbook/table-row.ts": "types alone",
  "src/jobs/disk.ts": "types alone",
  "src/report/woff2.d.ts": "types alone",
  "src/verdict/loop-item.ts": "types alone",
  "src/verdict/wiring-items.ts": "data, tested by tests/verdict/loop-items.test.ts",
  "src/verdict/controller-items.ts": "data, tested by tests/verdict/loop-items.test.ts",
  "src/verdict/site-items.ts": "data, tested by tests/verdict/loop-items.test.ts",
  "src/record/phase-schema.ts": "a form, which every record of tests/record/record-schema.test.ts is held against",
  "src/record/uncertainty-schema.ts":
    "a form, which every record of tests/record/record-schema.test.ts is held against",
  "src/record/loop-check-schema.ts": "a form, tested by tests/record/assemble-loop-checks.test.ts",
  "src/record/reteach-schema.ts": "a form, tested by tests/record/assemble-reteach.test.ts",
  "src/record/sound-schema.ts": "a form, tested by tests/record/assemble-sound.test.ts",
  "src/charts/chart-frame.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/legend-layers.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/plot-layers.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/direction-chart-spec.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/error-chart-spec.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/residual-chart-spec.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/stage-chart-spec.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/trip-chart-spec.ts": "data, drawn by tests/charts/trip-chart.test.ts",
};

/** Files without a test beside them, and exceptions that are none any more. */
export function siblingFaults(
  files: readonly SourceFile[],
  hasFile: (path: string) => boolean,
  exceptions: Readonly<Record<string, string>> = untested,
): readonly string[] {
  const missing = files
    .map(({ path }) => path)
    .filter((path) => tested.includes(folderOf(path)) && !path.startsWith("src/report/parts/"))
    .filter((path) => exceptions[path] === undefined && !siblingsOf(path).some(hasFile))
    .map((path) => `${path}: ${siblingsOf(path)[0]} is missing`);
  const stale = Object.keys(exceptions)
    .filter((path) => !files.some((file) => file.path === path) || siblingsOf(path).some(hasFile))
    .map((path) => `${path}: is no exception any more`);
  return [...missing, ...stale];
}

function siblingsOf(path: string): readonly string[] {
  const name = path.replace(/^src\//u, "tests/").replace(/(?:\.d)?\.tsx?$/u, "");
  return [`${name}.test.ts`, `${name}.test.tsx`];
}
