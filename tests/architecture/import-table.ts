/**
 * The house from the ground up: what a folder of src may import from the others. Every name stands above its line;
 * "types of record" allows `import type` alone. A folder that does not exist yet already has its line.
 */
export const mayImport: Readonly<Record<string, readonly string[]>> = {
  units: [],
  problems: [],
  numeric: [],
  model: ["units", "problems"],
  workbook: ["model", "numeric", "units", "problems"],
  analysis: ["numeric", "model", "units"],
  verdict: ["analysis", "numeric", "model", "units"],
  record: ["types of verdict", "model", "units", "problems"],
  assembly: ["record", "verdict", "analysis", "numeric", "model", "units", "problems"],
  proof: ["record", "problems"],
  charts: ["record", "numeric", "units"],
  report: ["charts", "proof", "record", "numeric", "units"],
  spreadsheet: ["report", "record", "model", "units"],
  filing: ["proof", "record", "analysis", "model", "numeric", "problems"],
  fleet: ["filing", "record", "analysis", "units"],
  sheet: ["assembly", "workbook", "record", "verdict", "analysis", "numeric", "model", "units", "problems"],
  jobs: [
    "sheet",
    "fleet",
    "filing",
    "spreadsheet",
    "report",
    "charts",
    "proof",
    "assembly",
    "record",
    "verdict",
    "analysis",
    "workbook",
    "model",
    "numeric",
    "problems",
    "units",
  ],
  cli: ["jobs", "numeric", "problems", "units"],
};

/** Where a library may be imported, so that it can be exchanged in one place and loads only where it is needed. */
export const foldersOfLibrary: Readonly<Record<string, readonly string[]>> = {
  papaparse: ["workbook"],
  hucre: ["workbook", "spreadsheet"],
  vega: ["charts"],
  "vega-lite": ["charts"],
  ...{ "vega-format": ["charts"], "vega-scale": ["charts"], "vega-scenegraph": ["charts"], "vega-util": ["charts"] },
  preact: ["report", "sheet"],
  uqr: ["report"],
  "preact-render-to-string": ["report", "sheet"],
  "simple-statistics": ["numeric"],
  "@stdlib": ["numeric"],
  "pure-rand": ["numeric"],
  "inter-ui": ["report"],
  "hyparquet-writer": ["fleet"],
  zod: ["model", "record", "proof", "workbook", "sheet"],
  "@noble/hashes": ["sheet"],
  fflate: ["sheet", "jobs"],
  commander: ["cli"],
  "@cantoo/pdf-lib": ["cli"],
  "node:crypto": ["record", "proof", "filing", "cli"],
  "node:zlib": ["record", "workbook"],
  "node:": ["cli"],
};

/** Programs that run in a page: the browser's clock and chance come in there, as those of the machine do in cli. */
export const programsOfPages = /\.browser\.tsx$/u;

/** What reaches the world outside: the command line's business, handed on as an argument. */
export const onlyInCommandLine: readonly (readonly [name: string, pattern: RegExp])[] = [
  ["the console", /\bconsole\.\w/u],
  ["the process", /\bprocess\.\w/u],
  ["the clock", /\bnew Date\(\)|\bDate\.now\(|\bperformance\.now\(/u],
  ["randomness", /\bMath\.random\(|\brandomUUID\(|\bgetRandomValues\(/u],
  ["the network", /\bfetch\(/u],
];
