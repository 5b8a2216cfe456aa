import { expect, test } from "vitest";
import { phasesOf } from "../../src/record/phases-of.ts";
import { sheetColumns } from "../../src/report/sheet/sheet-columns.ts";
import { numberStyleOf } from "../../src/report/style/number-style.ts";
import { isFormula } from "../../src/spreadsheet/cell.ts";
import { recordSheets } from "../../src/spreadsheet/record-workbook.ts";
import { columnLetters } from "../../src/units/column-letters.ts";
import { recordFigures } from "../outside/record-figures.ts";
import { demoRecord, demoRecords } from "../report/demo-records.ts";

const records = [demoRecord("LT-310")];

test("the readings stand in the lettered columns of the record's page", () => {
  const [record] = records;
  const style = numberStyleOf(record!);
  const rows = recordSheets(record!)[0]!.grid.rows.map(({ cells }) => cells);
  for (const { phase, title } of phasesOf(record!)) {
    const heading = rows[rows.findIndex(([first]) => first === title) + 1] ?? [];
    const columns = sheetColumns(record!, phase, style);
    expect(columns.map((column) => column.title)).toEqual(heading.slice(0, columns.length));
    expect(columns.map(({ letter }) => letter)).toEqual(columns.map((_, index) => columnLetters(index)));
  }
});

test("each number that follows from a reading is a formula; what was typed is a number", () => {
  const [record] = records;
  const rows = recordSheets(record!)[0]!.grid.rows.map(({ cells }) => cells);
  const first = rows[rows.findIndex(([title]) => title === "As found") + 4] ?? [];
  const reading = record!.phases.asFound!.readings[0]!;
  expect(first.slice(0, 4)).toEqual([1, "rising", reading.reference, reading.signal]);
  expect(first.filter(isFormula).map(({ is }) => is)).toEqual(
    expect.arrayContaining([reading.indicated, reading.errorDistance, reading.errorPercentSpan, reading.verdict]),
  );
});

test("a figure that is not determined says why, and is no number", () => {
  const [record] = records;
  const changed = {
    ...record!.phases.asFound!,
    repeatability: null,
    notDetermined: { repeatability: "one cycle only" },
  };
  const figures = recordSheets({ ...record!, phases: { asFound: changed } })[1]!.grid.rows.map(({ cells }) => cells);
  expect(figures.filter(([label]) => label === "repeatability").map((cells) => cells[3])).toEqual([
    "not determined: one cycle only",
  ]);
});

test("the sheets of a record, each once, and a native chart a phase that is drawn from its cells", () => {
  const sheets = recordSheets(records[0]!);
  expect(sheets.map(({ grid }) => grid.name)).toEqual([
    ...["Readings", "Figures", "Uncertainty", "Decision", "Outputs", "Picture"],
  ]);
  const charts = sheets.at(-1)?.charts ?? [];
  expect(charts.map(({ type, title }) => [type, title])).toEqual([
    ["scatter", "LT-310, as found: error over the range"],
    ["scatter", "LT-310, as left: error over the range"],
  ]);
  expect(charts.every(({ altText, series }) => altText !== undefined && series.length === 6)).toBe(true);
});

/** What stands on the page alone, or is counted and not reckoned. */
const notLive =
  /^counted\.|^fit\.n$|^judged$|\.combinedStandardUncertainty$|\.standardsUncertainty$|\.effectiveDegreesOfFreedom$|^loopError\.(?:row|value|shares)|^hysteresis\.withinOneCycle\.(?:point|cycle)$|^repeatability\.(?:point|direction)$|\.direction$|\.point$|^worst\.|^verdicts\.|^meanAbsoluteError\.distance$/u;

test("every figure of a phase is what some formula gives", () => {
  const lost = demoRecords.flatMap((record) => {
    const live = new Set(
      recordSheets(record).flatMap(({ grid }) =>
        grid.rows.flatMap(({ cells }) => cells.flatMap((cell) => (isFormula(cell) ? [cell.is] : []))),
      ),
    );
    return phasesOf(record).flatMap(({ phase }) =>
      [...recordFigures(record, phase)]
        .filter(([name, { value }]) => value !== null && !notLive.test(name) && !live.has(value))
        .map(([name]) => `${record.instrument.tag} ${name}`),
    );
  });
  expect(lost).toEqual([]);
});

test("what no formula gives is a value that says so", () => {
  const { asFound } = records[0]!.phases;
  const rows = recordSheets(records[0]!)[1]!.grid.rows.map(({ cells }) => cells);
  const values = rows.filter((cells) => cells[6] === "value of the record").map((cells) => cells[3]);
  expect(values).toContain(asFound!.zeroError!.combinedStandardUncertainty);
  expect(values.every((value) => typeof value === "number")).toBe(true);
});
