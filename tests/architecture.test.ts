import { describe, expect, test } from "vitest";
import { circleFaults } from "./architecture/circle-faults.ts";
import { docblockFaults } from "./architecture/docblock-faults.ts";
import { folderFaults, nameFaults } from "./architecture/folder-faults.ts";
import { importFaults, importsOf } from "./architecture/import-faults.ts";
import { mayImport } from "./architecture/import-table.ts";
import { saidAgain } from "./architecture/said-once.ts";
import { siblingFaults } from "./architecture/sibling-faults.ts";
import { sizeFaults } from "./architecture/size-faults.ts";
import { filesBelow, isCode, isThere } from "./architecture/source-files.ts";

const files = filesBelow("src");
const code = files.filter(isCode);

describe("the house stands", () => {
  test("there is code to look at, and every kind of import is found in it", () => {
    expect(code.length).toBeGreaterThan(100);
    const imports = code.flatMap(({ text }) => importsOf(text));
    expect(imports.some(({ specifier }) => specifier === "hucre/xlsx")).toBe(true); // a dynamic one
    expect(imports.some(({ isTypeOnly }) => isTypeOnly)).toBe(true);
    // No line of the form `from "…"` escapes.
    const lines = code.flatMap(({ text }) => text.match(/^(?:import|export|\}).* from "/gmu) ?? []);
    expect(imports.length).toBeGreaterThanOrEqual(lines.length);
  });

  test("a folder imports only what its line of the table names", () => {
    expect(importFaults(code)).toEqual([]);
  });

  test("every name in the table stands above the line that names it", () => {
    const order = Object.keys(mayImport);
    for (const [folder, names] of Object.entries(mayImport)) {
      for (const name of names) {
        expect(order.indexOf(name.replace("types of ", "")), `${folder}: ${name}`).toBeGreaterThanOrEqual(0);
        expect(order.indexOf(name.replace("types of ", "")), `${folder}: ${name}`).toBeLessThan(order.indexOf(folder));
      }
    }
  });

  test("no files import each other in a circle, not for a type either", () => {
    expect(circleFaults(code)).toEqual([]);
  });

  test("what has a home is said there alone", () => {
    expect(saidAgain(code)).toEqual([]);
  });

  test("no file has over 250 lines, no function over 60", () => {
    expect(sizeFaults(code)).toEqual([]);
  });

  test("every file that computes, reads, draws or writes has its test", () => {
    expect(siblingFaults(code, isThere)).toEqual([]);
  });

  test("every exported function that computes names its source and shows a worked example", () => {
    expect(docblockFaults(code)).toEqual([]);
  });

  test("every folder has a short README and a name that says what lives there", () => {
    expect(folderFaults(files)).toEqual([]);
    expect(nameFaults(filesBelow("tests"))).toEqual([]);
  });
});

describe("a planted violation is told", () => {
  const faultsOf = (path: string, text: string) => importFaults([{ path, text }]);

  test.each([
    ["src/units/x.ts", 'import { a } from "../model/a.ts";', "imports model; units may import nothing of ours"],
    ["src/units/x.ts", 'import type { A } from "../model/a.ts";', "imports model; units may import nothing of ours"],
    ["src/numeric/x.ts", 'export * from "../analysis/a.ts";', "imports analysis; numeric may import nothing of ours"],
    [
      "src/numeric/x.ts",
      'export type { A } from "../units/a.ts";',
      "imports units; numeric may import nothing of ours",
    ],
    ["src/model/x.ts", 'import "../record/a.ts";', "imports record; model may import units, problems"],
    [
      "src/cli/x.ts",
      'await import("../report/a.ts");',
      "imports report; cli may import jobs, numeric, problems, units",
    ],
    [
      "src/cli/x.ts",
      'type A = import("../record/a.ts").A;',
      "imports record; cli may import jobs, numeric, problems, units",
    ],
    ["src/jobs/x.ts", 'import {\n  a,\n  type B,\n} from "../cli/a.ts";', "imports cli; jobs may import "],
    ["src/record/x.ts", 'import { a } from "../verdict/a.ts";', "imports more than types of verdict; record may"],
    ["src/record/x.ts", 'import type { A } from "../assembly/a.ts";', "imports assembly; record may import types of"],
    [
      "src/proof/x.ts",
      'import type { A } from "../verdict/a.ts";',
      "imports verdict; proof may import record, problems",
    ],
    [
      "src/charts/x.ts",
      'import { type A, b } from "../report/a.ts";',
      "imports report; charts may import record, numeric, units",
    ],
    [
      "src/filing/x.ts",
      'import { a } from "../report/a.ts";',
      "imports report; filing may import proof, record, analysis, model",
    ],
    ["src/sheet/x.ts", 'import { a } from "../report/a.ts";', "imports report; sheet may import assembly, workbook"],
    ["src/workbook/checks/x.ts", 'import { a } from "../../analysis/a.ts";', "imports analysis; workbook may import"],
    ["src/jobs/x.ts", "await import(name);", "imports a name that is computed"],
    ["src/jobs/x.ts", 'import { version } from "../../package.json";', "imports package.json, which is outside src"],
    ["src/units/x.ts", 'import { a } from "../../tests/a.ts";', "imports tests/a.ts, which is outside src"],
    ["src/analysis/x.ts", 'import { mean } from "simple-statistics";', "which belongs in numeric"],
    ["src/jobs/x.ts", 'import Papa from "papaparse";', "imports papaparse, which belongs in workbook"],
    [
      "src/charts/x.ts",
      'import { readXlsx } from "hucre/xlsx";',
      "imports hucre/xlsx, which belongs in workbook, spreadsheet",
    ],
    ["src/report/x.tsx", 'import type { Spec } from "vega";', "imports vega, which belongs in charts"],
    ["src/charts/x.ts", 'import { h } from "preact";', "imports preact, which belongs in report, sheet"],
    ["src/verdict/x.ts", 'import * as z from "zod";', "imports zod, which belongs in model, record, proof, workbook"],
    ["src/jobs/x.ts", 'import { Command } from "commander";', "imports commander, which belongs in cli"],
    [
      "src/jobs/x.ts",
      'import { createHash } from "node:crypto";',
      "imports node:crypto, which belongs in record, proof",
    ],
    ["src/jobs/x.ts", 'import { readFile } from "node:fs/promises";', "imports node:fs/promises, which belongs in cli"],
    ["src/jobs/x.ts", 'import { readFile } from "fs";', "imports the library fs, which has no line"],
    ["src/numeric/x.ts", 'import { ml } from "another-library";', "the library another-library, which has no line"],
    ["src/jobs/x.ts", 'console.log("done");', "reaches for the console; only cli may"],
    ["src/jobs/x.ts", "const { a } = process.env;", "reaches for the process; only cli may"],
    ["src/record/x.ts", "const now = new Date();", "reaches for the clock; only cli may"],
    ["src/numeric/x.ts", "Math.random();", "reaches for randomness; only cli may"],
    ["src/attic/x.ts", "", "the folder attic has no line in the import table"],
  ])("%s with %s", (path, text, fault) => {
    const faults = faultsOf(path, text);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(`${path}: `);
    expect(faults[0]).toContain(fault);
  });

  test.each([
    ["src/charts/x.ts", 'import type { A } from "../record/a.ts";\nimport { type B, type C } from "../record/b.ts";'],
    ["src/cli/x.ts", 'import { version } from "../../package.json";\nconst { a } = await import("../jobs/a.ts");'],
    ["src/cli/x.ts", 'import { join } from "node:path";\nconsole.log(process.argv, new Date());'],
    ["src/workbook/checks/x.ts", 'import { a } from "../../model/a.ts";\nimport { b } from "../b.ts";'],
    ["src/record/x.ts", "const day = new Date(Date.UTC(2026, 0, 1));"],
  ])("and what is allowed is not: %s with %s", (path, text) => {
    expect(faultsOf(path, text)).toEqual([]);
  });

  test("a circle of types alone, told with its way round, and none where two ways meet", () => {
    const file = (name: string, ...imports: readonly string[]) => ({
      path: `src/units/${name}.ts`,
      text: imports.map((from) => `import type { A } from "./${from}.ts";\n`).join(""),
    });
    expect(circleFaults([file("a", "b", "c"), file("b", "d"), file("c", "d"), file("d")])).toEqual([]);
    expect(circleFaults([file("a", "b"), file("b", "c"), file("c", "b")])).toEqual([
      "src/units/b.ts → src/units/c.ts → src/units/b.ts",
    ]);
    expect(circleFaults([file("a", "a")])).toEqual(["src/units/a.ts → src/units/a.ts"]);
  });

  test.each([
    "const span = instrument.rangeUpper - instrument.rangeLower;",
    'for (const name of ["asFound", "asLeft"] as const) use(name);',
    "if (error <= toleranceHigh * (1 + 1e-12)) pass();",
    "const storedDigits = 1e-12;",
    'const stage = names["signal counts"];',
    "const isNear = Math.abs(one - other) <= 0.02 * span;",
  ])("what is said elsewhere: %s", (text) => {
    expect(saidAgain([{ path: "src/verdict/x.ts", text }])).toHaveLength(1);
  });

  const lines = (count: number) => "  step();\n".repeat(count);

  test.each<[string, number, (body: string) => string]>([
    ["declared", 2, (body) => `export function long() {\n${body}}\n`],
    ["with its parameters on lines of their own", 4, (body) => `function long(\n  one: number,\n): void {\n${body}}\n`],
    ["an arrow", 2, (body) => `const long = async (one: number): Promise<void> => {\n${body}};\n`],
    ["an arrow that is one expression", 2, (body) => `export const long = (one: number) => (\n${body});\n`],
    [
      "a method",
      2,
      (body) => `class Long {\n  long(one: number): void {\n${body.replaceAll("  step", "    step")}  }\n}\n`,
    ],
    ["inside another", 2, (body) => `{\n  function long() {\n${body.replaceAll("  step", "    step")}  }\n}\n`],
  ])("a function of 61 lines, %s; one of 60 is allowed", (_, rest, textOf) => {
    const faultsWith = (count: number) => sizeFaults([{ path: "src/units/x.ts", text: textOf(lines(count - rest)) }]);
    expect(faultsWith(60)).toEqual([]);
    expect(faultsWith(61)).toEqual([expect.stringContaining("a function of 61 lines")]);
  });

  test("a file of 251 lines", () => {
    expect(sizeFaults([{ path: "src/units/x.ts", text: "a;\n".repeat(250) }])).toEqual([]);
    expect(sizeFaults([{ path: "src/units/x.ts", text: "a;\n".repeat(251) }])).toHaveLength(1);
  });

  test("a file without a test, and an exception that is none any more", () => {
    const file = { path: "src/units/x.ts", text: "" };
    expect(siblingFaults([file], () => false, {})).toEqual(["src/units/x.ts: tests/units/x.test.ts is missing"]);
    expect(siblingFaults([file], (path) => path === "tests/units/x.test.ts", {})).toEqual([]);
    expect(siblingFaults([file], () => false, { "src/units/x.ts": "types alone" })).toEqual([]);
    expect(siblingFaults([file], () => true, { "src/units/x.ts": "types alone" })).toHaveLength(1);
    expect(siblingFaults([], () => false, { "src/units/x.ts": "types alone" })).toHaveLength(1);
    expect(siblingFaults([{ path: "src/report/parts/x.tsx", text: "" }], () => false, {})).toEqual([]);
  });

  test.each([
    ["export function bare() {}\n", "bare has no docblock"],
    ["/**\n * Gives it.\n * @example a() // 1\n */\nexport function a() {}\n", "the docblock of a has no Source:"],
    [
      "/**\n * Gives it.\n * Source: own choice.\n */\nexport async function a() {}\n",
      "the docblock of a has no @example",
    ],
    ["/** Source: of another @example */\nconst b = 1;\nexport function a() {}\n", "a has no docblock"],
  ])("a docblock that says too little: %j", (text, fault) => {
    expect(docblockFaults([{ path: "src/analysis/x.ts", text }])).toEqual([`src/analysis/x.ts: ${fault}`]);
    expect(docblockFaults([{ path: "src/report/x.ts", text }])).toEqual([]);
  });

  test("a folder without a README, with a long one, or with a name that says nothing", () => {
    const file = { path: "src/units/x.ts", text: "" };
    expect(folderFaults([file])).toEqual(["src/units/README.md is missing"]);
    expect(folderFaults([file, { path: "src/units/README.md", text: "a\n".repeat(25) }])).toEqual([]);
    expect(folderFaults([file, { path: "src/units/README.md", text: "a\n".repeat(26) }])).toHaveLength(1);
    expect(nameFaults([{ path: "src/report/utils/x.ts", text: "" }])).toHaveLength(1);
  });
});
