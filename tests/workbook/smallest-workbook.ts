import { ProblemList } from "../../src/problems/problem-list.ts";
import { sentence } from "../../src/problems/sentence.ts";
import { buildWorkbook, type Workbook } from "../../src/workbook/build-workbook.ts";
import { casesOf } from "../../src/workbook/calibration-case.ts";
import type { SourceFile } from "../../src/workbook/files/raw-table.ts";
import { readTables } from "../../src/workbook/read-tables.ts";

/** A workbook in which nothing is wrong: one loop, five points, one standard. */
export const smallestWorkbook = Object.freeze({
  "instruments.csv": `tag,range_lower,range_upper,distance_unit,signal_lower,signal_upper,signal_unit,tolerance,tolerance_basis
LT-1,0,100,mm,4,20,mA,0.5,percent of span
`,
  "standards.csv": `standard,certificate,calibrated_on,due_on,expanded_uncertainty,uncertainty_unit
GB-1,K-7,2025-06-01,2027-06-01,0.02,mm
`,
  "calibrations.csv": `calibration,tag,performed_on,performed_by,standards
C-1,LT-1,2026-03-04,T. Example,GB-1
`,
  "readings.csv": `calibration,phase,direction,reference,signal
C-1,as_found,rising,0,4.01
C-1,as_found,rising,25,8.01
C-1,as_found,rising,50,12.01
C-1,as_found,rising,75,16.01
C-1,as_found,rising,100,20.01
`,
});

export type Texts = Readonly<Record<string, string | Uint8Array>>;

/** The smallest workbook with one text in one of its files exchanged. */
export function withText(file: keyof typeof smallestWorkbook, from: string, to: string): Texts {
  const text = smallestWorkbook[file];
  if (!text.includes(from)) throw new RangeError(`withText: ${file} does not hold ${from}`);
  return { ...smallestWorkbook, [file]: text.replace(from, to) };
}

/** The smallest workbook with a column more in one of its files; `cells` from the first row on. */
export function withColumn(file: keyof typeof smallestWorkbook, name: string, ...cells: readonly string[]): Texts {
  const lines = smallestWorkbook[file].trimEnd().split("\n");
  const added = lines.map((line, index) => `${line},${index === 0 ? name : (cells[index - 1] ?? "")}`);
  return { ...smallestWorkbook, [file]: `${added.join("\n")}\n` };
}

/** The smallest workbook with one file more, or without one. */
export function withFile(name: string, content: string | Uint8Array): Texts {
  return { ...smallestWorkbook, [name]: content };
}

export function filesOf(texts: Texts): readonly SourceFile[] {
  return Object.entries(texts).map(([name, content]) => ({
    name,
    bytes: typeof content === "string" ? new TextEncoder().encode(content) : content,
  }));
}

/** The rows of every table of a workbook, all of them at once. */
function inFull({
  files,
  ...tables
}: Workbook): { [Name in keyof typeof tables]: RowOfTable<(typeof tables)[Name]>[] } & Pick<Workbook, "files"> {
  const rows = Object.entries(tables).map(([name, kept]) => [name, [...kept]]);
  return { files, ...Object.fromEntries(rows) };
}

type RowOfTable<Table> = Table extends Iterable<infer Row> ? Row : never;

/** Reads and checks a workbook on 2026-11-25. */
export async function checked(texts: Texts, firstLook = false) {
  const problems = new ProblemList();
  const tables = await readTables(filesOf(texts), problems);
  const workbook = buildWorkbook(tables, { today: "2026-11-25", firstLook }, problems);
  return {
    tables,
    workbook: inFull(workbook),
    problems: problems.all,
    codes: problems.all.map(({ code }) => code),
    sentences: problems.all.map(sentence),
    cases: casesOf(workbook, problems.all).map(({ read }) => read()),
  };
}
