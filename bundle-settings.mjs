import { readdirSync, readFileSync } from "node:fs";
import { basename, dirname, resolve } from "node:path";
import { build } from "esbuild";
import { fontPart, fontPartModule } from "./font-subsets.mjs";
import { packedProgram, packedProgramModule } from "./packed-program.mjs";

/** Some libraries are CommonJS, which asks for `require`. */
const requireForBundledCommonJs =
  "import{createRequire as createRequireForBundle}from'node:module';const require=createRequireForBundle(import.meta.url);";

/**
 * The bundle holds of a `-chart-spec.ts` module the program that the walker goes through, or vega's dataflow as data
 * where the walker does not know a chart: neither vega-lite nor the compiling is left in it.
 */
const chartsCompiledAhead = {
  name: "charts-compiled-ahead",
  setup({ onLoad }) {
    onLoad({ filter: /-chart-spec\.ts$/ }, async ({ path }) => {
      charts ??= compiledCharts();
      return { contents: asBuilt((await charts)[basename(path, ".ts").replaceAll("-", "_")]) };
    });
  },
};

const specs = resolve(import.meta.dirname, "src/charts/specs");
let charts;

/** The exports of every chart's specification, compiled together, for vega is read and started once so. */
function compiledCharts() {
  const names = readdirSync(specs).filter((name) => name.endsWith("-chart-spec.ts"));
  const line = (name) => `export * as ${basename(name, ".ts").replaceAll("-", "_")} from "./${name}";\n`;
  return exportsOf({ stdin: { contents: names.map(line).join(""), resolveDir: specs } });
}

/** The columns of the tables as data, so that no schema is made to read a table. */
const columnsAhead = {
  name: "columns-ahead",
  setup({ onLoad }) {
    onLoad({ filter: /model\/columns-ahead\.ts$/ }, async ({ path }) => {
      const { columnsByTable } = await exportsOf({ entryPoints: [path] });
      return {
        contents: `export const columnsByTable = JSON.parse(${JSON.stringify(JSON.stringify(columnsByTable))});`,
      };
    });
  },
};

async function exportsOf(entry) {
  const settings = { bundle: true, format: "esm", platform: "node", write: false };
  const { outputFiles } = await build({ ...settings, ...entry });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString("base64")}`);
}

/** Functions as functions; text that is parsed as JSON is ready sooner than the same data as a program. */
function asBuilt(exported) {
  return Object.entries(exported)
    .map(([name, { series, source, runtime }]) => {
      const drawn =
        source === undefined ? `runtime: JSON.parse(${JSON.stringify(JSON.stringify(runtime))})` : `program: ${source}`;
      return `export const ${name} = { series: ${JSON.stringify(series)}, ${drawn} };\n`;
    })
    .join("");
}

/** Of vega only what draws: no maps, trees or word clouds, and no parser, for the charts are parsed ahead. */
const drawingPartOfVega = `
  import { transforms } from "vega-dataflow";
  import * as encoding from "vega-encode";
  import * as ofData from "vega-transforms";
  import * as ofView from "vega-view-transforms";
  Object.assign(transforms, encoding, ofData, ofView);
  export { resetSVGDefIds, textMetrics } from "vega-scenegraph";
  export { View } from "vega-view";
`;

/** The other one looks at every start for a package named canvas, which would be whatever lies near the command. */
const canvasOfBrowser = 'export * from "./vega-canvas.browser.js";';

/** Vega makes a hundred scales of colours when it starts, none of which our charts name; that alone is removed. */
const schemesOfColours = /^apply\((?:discrete|continuous), .*\);\n/gmu;

/** The command starts no other program by its name. */
const startOfPrograms = "const childProcess = require('node:child_process');";

const unusedAtStart = {
  name: "unused-at-start",
  setup({ onLoad }) {
    onLoad({ filter: /vega-scale[\\/]build[\\/]vega-scale\.js$/ }, ({ path }) => without(path, schemesOfColours, 2));
    onLoad({ filter: /commander[\\/]lib[\\/]command\.js$/ }, ({ path }) => without(path, startOfPrograms, 1));
  },
};

/** A file of a library without lines that were there so many times when this was written. */
function without(path, lines, times) {
  const text = readFileSync(path, "utf8");
  const parts = text.split(lines);
  if (parts.length !== times + 1) throw new Error(`${path} is not as it was: what is unused at the start has moved`);
  return { contents: parts.join(""), loader: "js" };
}

const vegaToDrawOnly = {
  name: "vega-to-draw-only",
  setup({ onLoad }) {
    const replace = (filter, contents) => onLoad({ filter }, ({ path }) => ({ contents, resolveDir: dirname(path) }));
    replace(/vega\.module\.js$/, drawingPartOfVega);
    replace(/vega-canvas\.node\.js$/, canvasOfBrowser);
  },
};

/** The page's font in parts, of which a page takes those that it needs. */
const fontsInParts = {
  name: "fonts-in-parts",
  setup({ onLoad }) {
    onLoad({ filter: /\.woff2$/ }, async ({ path, suffix }) => {
      return fontPart.test(path + suffix) ? { contents: await fontPartModule(path + suffix) } : undefined;
    });
  },
};

/** Programs that run in a page, as packed text. */
const programsPacked = {
  name: "programs-packed",
  setup({ onLoad }) {
    onLoad({ filter: /\.browser\.tsx$/ }, async ({ path, suffix }) => {
      return packedProgram.test(path + suffix) ? { contents: await packedProgramModule(path + suffix) } : undefined;
    });
  },
};

/** How the command is bundled. Not minified, so that the trace of a fault can be read. */
export const bundleSettings = {
  bundle: true,
  format: "esm",
  platform: "node",
  target: "node20",
  jsx: "automatic",
  jsxImportSource: "preact",
  loader: { ".client.js": "text" },
  banner: { js: requireForBundledCommonJs },
  plugins: [columnsAhead, chartsCompiledAhead, vegaToDrawOnly, unusedAtStart, fontsInParts, programsPacked],
  logLevel: "warning",
};
