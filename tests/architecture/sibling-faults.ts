import { folderOf, type SourceFile } from "./source-files.ts";

const tested = [
  ...["units", "problems", "numeric", "model", "analysis", "verdict", "record", "assembly", "proof"],
  ...["workbook", "charts", "report", "spreadsheet", "filing", "jobs"],
];

/** Files that need no test of their own, each with the reason. */
export const untested: Readonly<Record<string, string>> = {
  "src/problems/problem.ts": "types alone",
  "src/problems/entry.ts": "a type and two words, tested by tests/problems/catalogue.test.ts",
  "src/problems/table-problems.ts": "data, tested by tests/problems/catalogue.test.ts",
  "src/problems/model-problems.ts": "data, tested by tests/problems/catalogue.test.ts",
  "src/problems/option-problems.ts": "data, tested by tests/problems/catalogue.test.ts",
  "src/problems/collect-problems.ts": "data, tested by tests/jobs/collect/collect-tables.test.ts",
  "src/model/calibration-case.ts": "types alone",
  "src/workbook/files/raw-table.ts": "types alone",
  "src/workbook/files/sheet-text.ts": "types alone",
  "src/workbook/cells/cell-result.ts": "types alone",
  "src/workbook/table-row.ts": "types alone",
  "src/jobs/disk.ts": "types alone",
  "src/jobs/signing/change-passphrase.ts": "tested by tests/cli/commands/keys-command.test.ts",
  "src/jobs/filing/words-given.ts": "tested by tests/problems/filing-problems.test.ts",
  "src/jobs/filing/change-filed-tag.ts": "tested by tests/cli/life-of-a-tag.test.ts",
  "src/jobs/filing/dispose-filed-pages.ts": "tested by tests/cli/life-of-a-tag.test.ts",
  "src/jobs/self-test/nist-data.ts": "data, held by tests/jobs/self-test/run-self-test.test.ts",
  "src/jobs/self-test/nist-examples.ts": "data, held by tests/jobs/self-test/run-self-test.test.ts",
  "src/jobs/self-test/gum-examples.ts": "data, held by tests/jobs/self-test/run-self-test.test.ts",
  "src/jobs/self-test/budget-examples.ts": "data, held by tests/jobs/self-test/run-self-test.test.ts",
  "src/jobs/self-test/line-examples.ts": "data, held by tests/jobs/self-test/run-self-test.test.ts",
  "src/jobs/self-test/proof-examples.ts": "data, held by tests/jobs/self-test/run-self-test.test.ts",
  "src/jobs/self-test/published-example.ts": "data, held by tests/jobs/self-test/run-self-test.test.ts",
  "src/filing/filing-disk.ts": "types alone",
  "src/filing/cannot-file.ts": "a thrown thing, tested by tests/filing/file-page.test.ts",
  "src/record/amendment-schema.ts": "a form, tested by tests/jobs/records/amend-record.test.ts",
  "src/jobs/records/summary-rows.ts": "one call, tested by tests/report/columns/summary-columns.test.ts",
  "src/report/woff2.d.ts": "types alone",
  "src/report/page-drawings.ts": "types alone",
  "src/report/running-marks.tsx": "read on paper by tests/browser/printed-sheets.test.ts",
  "src/report/style/certificate-style.ts": "a style, tested by tests/report/style/page-style.test.ts",
  "src/report/table/wide.tsx": "tested by tests/browser/screen.test.ts",
  "src/spreadsheet/add-figure.ts": "types alone",
  "src/spreadsheet/line-values.ts":
    "values alone, each of which says so; tested by tests/spreadsheet/record-workbook.test.ts",
  "src/spreadsheet/cycle-cells.ts": "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/budget-line.ts": "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/coverage-cells.ts":
    "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/uncertainty-sheet.ts":
    "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/decision-cells.ts":
    "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/decision-sheet.ts":
    "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/worst-word.ts": "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/stage-of-part.ts":
    "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/budget-rows.ts": "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/outputs-sheet.ts":
    "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/set-point-cells.ts":
    "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/overall-cells.ts":
    "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/readings-sheet.ts":
    "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/readings-columns.ts":
    "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/loop-cells.ts": "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/figures-sheet.ts":
    "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/curve-table.ts": "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/curve-figures.ts":
    "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/line-figures.ts": "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/spreadsheet/loop-figures.ts": "formulas, reckoned and held against records by tests/outside/spreadsheet.test.ts",
  "src/report/client-script.d.ts": "types alone",
  "src/charts/specs/rate-chart-spec.ts": "data, tested by tests/charts/rate-chart.test.ts",
  "src/record/range.ts": "handed on from the model, tested by tests/model/range.test.ts",
  "src/record/register-form.ts": "types alone",
  "src/record/written-record.ts": "types alone",
  "src/record/over-the-years-schema.ts": "a form, tested by tests/assembly/years/assemble-over-the-years.test.ts",
  "src/charts/specs/history-chart-spec.ts": "data, tested by tests/charts/history-chart.test.ts",
  "src/record/overall-schema.ts": "a form, tested by tests/assembly/assemble-overall.test.ts",
  "src/record/impact-schema.ts": "a form, tested by tests/assembly/assemble-impact.test.ts",
  "src/verdict/causes/cause.ts": "types alone",
  "src/verdict/causes/finding.ts": "types alone",
  "src/verdict/loop-check/loop-item.ts": "types alone",
  "src/verdict/recommendation/phase-state.ts": "types alone",
  "src/verdict/loop-check/wiring-items.ts": "data, tested by tests/verdict/loop-check/loop-items.test.ts",
  "src/verdict/loop-check/controller-items.ts": "data, tested by tests/verdict/loop-check/loop-items.test.ts",
  "src/verdict/loop-check/site-items.ts": "data, tested by tests/verdict/loop-check/loop-items.test.ts",
  "src/record/phase-schema.ts": "a form, which every record of tests/record/record-schema.test.ts is held against",
  "src/record/uncertainty-schema.ts":
    "a form, which every record of tests/record/record-schema.test.ts is held against",
  "src/record/controller-limit-schema.ts": "a form, tested by tests/assembly/assemble-controller-limits.test.ts",
  "src/record/loop-check-schema.ts": "a form, tested by tests/assembly/assemble-loop-checks.test.ts",
  "src/record/reteach-schema.ts": "a form, tested by tests/assembly/assemble-reteach.test.ts",
  "src/record/sound-schema.ts": "a form, tested by tests/assembly/assemble-sound.test.ts",
  "src/record/seal-schema.ts": "a form, tested by tests/proof/seal-record.test.ts",
  "src/record/record-summary-schema.ts": "a form, tested by tests/record/record-summary.test.ts",
  "src/record/candidates-schema.ts": "a form, tested by tests/assembly/assemble-candidates.test.ts",
  "src/record/figures/candidate-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/verdict/replacement/loop-needs.ts": "types alone",
  "src/record/figures/figure-definition.ts": "a type and two words",
  "src/record/figures/error-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/record/figures/impact-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/record/figures/history-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/record/figures/line-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/record/figures/curve-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/record/figures/uncertainty-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/record/figures/decision-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/record/figures/stage-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/record/figures/reteach-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/record/figures/sound-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/record/figures/switching-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/record/figures/loop-figures.ts": "data, tested by tests/record/figure-definitions.test.ts",
  "src/charts/drawing/drawing-data.ts": "types alone",
  "src/charts/drawing/chart-program.ts": "types alone",
  "src/charts/drawing/vega-parts.d.ts": "types alone",
  "src/charts/drawing/scene.ts": "two makers of objects, tested by tests/charts/drawing/svg-root.test.ts",
  "src/charts/drawing/program-source.ts": "the walker's other half, tested by tests/charts/drawing/walk-chart.test.ts",
  "src/charts/drawing/program-marks.ts": "the walker's other half, tested by tests/charts/drawing/walk-chart.test.ts",
  "src/charts/drawing/program-writing.ts": "the walker's other half, tested by tests/charts/drawing/walk-chart.test.ts",
  "src/charts/drawing/program-text.ts": "the walker's other half, tested by tests/charts/drawing/walk-chart.test.ts",
  "src/charts/drawing/mark-steps.ts": "a part of the walker, tested by tests/charts/drawing/walk-chart.test.ts",
  "src/charts/drawing/scale-steps.ts": "a part of the walker, tested by tests/charts/drawing/walk-chart.test.ts",
  "src/charts/drawing/chart-functions.ts": "a part of the walker, tested by tests/charts/drawing/walk-chart.test.ts",
  "src/charts/drawing/fit-layout.ts": "a part of the walker, tested by tests/charts/drawing/walk-chart.test.ts",
  "src/charts/drawing/scene-svg.ts": "held to vega's bytes by tests/charts/drawing/same-as-vega.test.ts",
  "src/charts/drawing/scene-text.ts": "held to vega's bytes by tests/charts/drawing/same-as-vega.test.ts",
  "src/charts/drawing/item-style.ts": "held to vega's bytes by tests/charts/drawing/same-as-vega.test.ts",
  "src/charts/drawing/drawn-parts.ts": "held to vega's bytes by tests/charts/drawing/same-as-vega.test.ts",
  "src/charts/drawing/draw-by-vega.ts": "drawn with by tests/charts/rate-chart.test.ts",
  "src/charts/specs/chart-frame.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/specs/legend-layers.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/specs/plot-layers.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/specs/direction-chart-spec.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/specs/error-chart-spec.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/specs/residual-chart-spec.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/specs/stage-chart-spec.ts": "data, drawn by tests/charts/golden.test.ts",
  "src/charts/specs/trip-chart-spec.ts": "data, drawn by tests/charts/trip-chart.test.ts",
};

/** Files without a test beside them, and exceptions that are none any more. */
export function siblingFaults(
  files: readonly SourceFile[],
  hasFile: (path: string) => boolean,
  exceptions: Readonly<Record<string, string>> = untested,
): readonly string[] {
  const missing = files
    .map(({ path }) => path)
    .filter((path) => tested.includes(folderOf(path)) && !isPartOfPage(path))
    .filter((path) => exceptions[path] === undefined && !siblingsOf(path).some(hasFile))
    .map((path) => `${path}: ${siblingsOf(path)[0]} is missing`);
  const stale = Object.keys(exceptions)
    .filter((path) => !files.some((file) => file.path === path) || siblingsOf(path).some(hasFile))
    .map((path) => `${path}: is no exception any more`);
  return [...missing, ...stale];
}

/** What a page is put together of is tested by the tests of that page. */
function isPartOfPage(path: string): boolean {
  return /^src\/report\/(?:parts\/|(?:certificate|annexes)\/.*\.tsx$)/u.test(path);
}

function siblingsOf(path: string): readonly string[] {
  const name = path.replace(/^src\//u, "tests/").replace(/(?:\.d)?\.tsx?$/u, "");
  return [`${name}.test.ts`, `${name}.test.tsx`];
}
