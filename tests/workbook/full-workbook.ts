import { judgedCases } from "../../src/jobs/workbook/read-workbook.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { sentence } from "../../src/problems/sentence.ts";
import { buildWorkbook } from "../../src/workbook/build-workbook.ts";
import { readTables } from "../../src/workbook/read-tables.ts";
import { filesOf, type Texts } from "./smallest-workbook.ts";

const scatter = [0.003, -0.002, 0.001, -0.004, 0.002, 0.004, -0.003, -0.001, 0.002, -0.002];

type Cells = Readonly<Record<string, string>>;

/** Readings of two cycles out and back over five points, as found 1 % of span high and as left right. */
function readingRows(): readonly Cells[] {
  const points = [200, 650, 1100, 1550, 2000];
  const ways = [1, 2].flatMap((cycle) => [
    ...points.map((point) => ({ cycle, point, direction: "rising" })),
    ...points.toReversed().map((point) => ({ cycle, point, direction: "falling" })),
  ]);
  return (["as_found", "as_left"] as const).flatMap((phase, side) =>
    ways.map(({ cycle, point, direction }, place) => {
      const reference = point + (scatter[(place + 3 * side + cycle) % 10] as number) * 100;
      const percent = (reference - 200) / 18 + (side === 0 ? 1 : 0) + (scatter[(place * 7 + cycle) % 10] as number) * 4;
      return {
        ...{ calibration: "C-1", phase, cycle: String(cycle), direction, point: String(point) },
        reference: reference.toFixed(1),
        signal: (4 + 0.16 * percent).toFixed(3),
        value: percent.toFixed(1),
      };
    }),
  );
}

const table = (rows: readonly Cells[]): string =>
  [Object.keys(rows[0] ?? {}), ...rows.map((row) => Object.values(row))]
    .map((cells) => `${cells.join(",")}\n`)
    .join("");

/** A workbook in which nothing is wrong: as found and as left, a controller value, a switched output. */
export const fullWorkbook = Object.freeze({
  "instruments.csv": `tag,range_lower,range_upper,distance_unit,signal_lower,signal_upper,signal_unit,tolerance,tolerance_basis,value_lower,value_upper,value_unit
LT-1,200,2000,mm,4,20,mA,0.5,percent of span,0,100,%
`,
  "outputs.csv": "tag,output,set_point,set_point_tolerance\nLT-1,Q1,400,5\n",
  "controller_limits.csv":
    "tag,limit,value,acts,delay,dead_band,final_action,kind\nLT-1,high alarm,75,above,2,1,horn,alarm\nLT-1,low trip,97,below,,,pump stops,trip\n",
  "standards.csv": `standard,quantity,certificate,calibrated_on,due_on,expanded_uncertainty,uncertainty_unit,resolution
RAIL-1,distance,K-7,2025-06-01,2027-06-01,0.2,mm,0.1
`,
  "calibrations.csv": `calibration,tag,performed_on,performed_by,standards,adjustment
C-1,LT-1,2026-03-04,T. Example,RAIL-1,re-teach
`,
  "readings.csv": table(readingRows()),
  "trips.csv": table(
    (["as_found", "as_left"] as const).flatMap((phase) =>
      [1, 2, 3].flatMap((cycle) => [
        {
          calibration: "C-1",
          phase,
          output: "Q1",
          direction: "approach",
          cycle: String(cycle),
          reference: `40${cycle}.2`,
        },
        {
          calibration: "C-1",
          phase,
          output: "Q1",
          direction: "recede",
          cycle: String(cycle),
          reference: `41${cycle}.7`,
        },
      ]),
    ),
  ),
});

export type FullFile = keyof typeof fullWorkbook;

/** The rows of one of its tables by column. */
export function rowsOf(file: FullFile, texts: Texts = fullWorkbook): readonly Cells[] {
  const [header = "", ...lines] = String(texts[file]).trimEnd().split("\n");
  const names = header.split(",");
  return lines.map((line) => Object.fromEntries(line.split(",").map((cell, index) => [names[index] ?? "", cell])));
}

/** The workbook with the rows of one of its tables changed. */
export function withRows(file: FullFile, change: (row: Cells, index: number) => Cells | readonly Cells[]): Texts {
  return { ...fullWorkbook, [file]: table(rowsOf(file).flatMap((row, index) => change(row, index))) };
}

/** The workbook with one cell of one of its tables changed; rows count from 0. */
export function withCell(file: FullFile, place: number, column: string, text: string): Texts {
  return withRows(file, (row, index) => (index === place ? { ...row, [column]: text } : row));
}

/** Reads a workbook with everything that `spanwright check` looks at, on 2026-11-25. */
export async function judged(texts: Texts, firstLook = false) {
  const problems = new ProblemList();
  const workbook = buildWorkbook(
    await readTables(filesOf(texts), problems),
    { today: "2026-11-25", firstLook },
    problems,
  );
  const cases = judgedCases(workbook, problems).map(({ read }) => read());
  return {
    cases,
    problems: problems.all,
    codes: problems.all.map(({ code }) => code),
    sentences: problems.all.map(sentence),
  };
}
