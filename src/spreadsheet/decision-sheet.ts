import type { PhaseName } from "../record/phase-name.ts";
import type { CalibrationRecord, JudgedPointRecord, PhaseRecord } from "../record/record-schema.ts";
import { columnLetters } from "../units/column-letters.ts";
import type { Cell } from "./cell.ts";
import { type DecisionKey, decisionCells, decisionHeadings } from "./decision-cells.ts";
import { Grid } from "./grid.ts";
import { isOfCurve } from "./readings-columns.ts";
import type { ReadingsSheet } from "./readings-sheet.ts";
import type { CurveBudgets, PhaseBudgets, UncertaintySheet } from "./uncertainty-sheet.ts";
import { worstWord } from "./worst-word.ts";

/** Addresses of a test point that decides; a direction that was not read has none. */
type DecidingPoint = Record<"reference" | "error" | "expanded" | "low" | "high", string> & {
  up?: string;
  down?: string;
};

/** A phase: the address of its word, and its deciding test points. */
export type PhaseDecisions = { name: PhaseName; title: string; word: string; deciding: readonly DecidingPoint[] };
export type DecisionSheet = { grid: Grid; factor: string; phases: readonly PhaseDecisions[] };

const keys = Object.keys(decisionHeadings) as readonly DecisionKey[];
const letterOf = (key: DecisionKey) => columnLetters(keys.indexOf(key));

/** Each test point against its tolerance by the rule, and the word of each phase. */
export function decisionSheet(
  record: CalibrationRecord,
  { phases }: UncertaintySheet,
  { loop }: ReadingsSheet,
): DecisionSheet {
  const grid = new Grid("Decision");
  const { decisionRule } = record;
  grid.add([`Decision by ${decisionRule.name}`], "title");
  grid.add(["Distances in the unit of the readings. On a limit is inside; nothing is rounded before it is decided."]);
  const factor = grid.at("C", grid.add(["guard factor", null, decisionRule.guardFactor, "w = guard factor · U"]));
  const decided = phases.map((of): PhaseDecisions => {
    const { title, name } = of.readings;
    const tables = of.curves.map((curve) => {
      grid.begin(curve.isEnd ? `${title}, end of the loop` : title);
      return decisionTable(grid, curve, { of, factor, loop, rule: decisionRule.name });
    });
    const word = phaseWord(grid, of, tables, decisionRule.name);
    return { name, title, word, deciding: tables.flatMap(({ deciding }) => deciding) };
  });
  return { grid, factor, phases: decided };
}

const unlike = "direction and risk are values: the two directions were not read as often";

type TableBasis = Pick<Parameters<typeof decisionCells>[0], "factor" | "loop" | "rule"> & { of: PhaseBudgets };
type Table = { first: number; last: number; deciding: readonly DecidingPoint[] };

function decisionTable(grid: Grid, curve: CurveBudgets, { of, factor, loop, rule }: TableBasis): Table {
  grid.add(
    keys.map((key) => decisionHeadings[key][0]),
    "heading",
  );
  grid.add(keys.map((key) => decisionHeadings[key][1]));
  const first = grid.next;
  const deciding: DecidingPoint[] = [];
  const atEnd = new Set(of.curves.find(({ isEnd }) => isEnd)?.points.map(({ point }) => point));
  for (const [index, point] of curve.points.entries()) {
    const row = grid.next;
    const budget = curve.budgets[index];
    if (budget === undefined) throw new RangeError(`decisionTable: no budget of test point ${index + 1}`);
    const isReadAlike = isAlike(of.readings.phase, curve.isEnd, point.point);
    const decides = curve.isEnd || !atEnd.has(point.point);
    const at = (key: DecisionKey) => grid.at(letterOf(key), row);
    const figure = (key: "reference" | "up" | "down") => curve.table.at(key, curve.table.first + index);
    if (decides) deciding.push(decidingPoint(point, at, figure));
    const cells: Partial<Record<DecisionKey, Cell>> = {
      number: index + 1,
      decides: Number(decides),
      ...decisionCells({ rule, factor, loop, budget, point, isReadAlike, at, figure }),
    };
    grid.add([...keys.map((key) => cells[key] ?? null), point.whyNotManaged ?? null, isReadAlike ? null : unlike]);
  }
  return { first, last: grid.next - 1, deciding };
}

function decidingPoint(
  { up, down }: JudgedPointRecord,
  at: (key: DecisionKey) => string,
  figure: (key: "up" | "down") => string,
): DecidingPoint {
  const [reference, error, expanded] = [at("reference"), at("error"), at("expanded")];
  return {
    ...{ reference, error, expanded, low: at("low"), high: at("high") },
    ...(up !== null && { up: figure("up") }),
    ...(down !== null && { down: figure("down") }),
  };
}

/** Whether a test point has as many readings, and of as many cycles, in one direction as in the other. */
function isAlike(phase: PhaseRecord, isEnd: boolean, point: number): boolean {
  const own = phase.readings.filter((reading) => reading.point === point && isOfCurve(reading, phase, isEnd));
  const [rising, falling] = ["rising", "falling"].map((direction) => {
    const some = own.filter((reading) => reading.direction === direction);
    return `${some.length} ${new Set(some.map(({ cycle }) => cycle)).size}`;
  });
  return rising === falling || own.every(({ direction }) => direction === own[0]?.direction);
}

/** The word of a phase: by simple acceptance of its readings, else of the test points that decide, and of faults. */
function phaseWord(grid: Grid, { readings }: PhaseBudgets, tables: readonly Table[], rule: string): string {
  const { phase, column } = readings;
  const verdicts = column("verdict");
  const faults = `SUMPRODUCT((${verdicts}="fail")*(${column("why")}<>""))`;
  const [fails, passes] = [`SUMPRODUCT(1*(${verdicts}="fail"))`, `SUMPRODUCT(1*(${verdicts}="pass"))`];
  const count = (word: string) =>
    tables
      .filter(({ first, last }) => last >= first)
      .map(({ first, last }) => {
        const [words, decides] = [
          grid.range(letterOf("statement"), first, last),
          grid.range(letterOf("decides"), first, last),
        ];
        return `SUMPRODUCT((${words}="${word}")*${decides})`;
      })
      .join("+") || "0";
  const formula =
    rule === "simple acceptance"
      ? `IF(${fails}>0,"fail",IF(${passes}>0,"pass","not determined"))`
      : worstWord((word) => (word === "fail" ? `${faults}+${count(word)}` : count(word)));
  grid.add([]);
  const of =
    rule === "simple acceptance"
      ? "every reading on its own, at the last stage that was read of it"
      : "the worst of the test points that decide";
  return grid.at("C", grid.add(["word of the loop", null, { formula, is: phase.verdict ?? "not determined" }, of]));
}
