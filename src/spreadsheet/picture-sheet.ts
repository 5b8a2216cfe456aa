import type { SheetChart } from "hucre";
import type { CalibrationRecord } from "../record/record-schema.ts";
import type { DecisionSheet, PhaseDecisions } from "./decision-sheet.ts";
import { Grid } from "./grid.ts";
import type { ReadingsSheet } from "./readings-sheet.ts";
import type { WrittenSheet } from "./write-workbook.ts";

const headings = ["reference", "rising", "falling", "error − U", "error + U", "lower limit", "upper limit"];

type Series = { letter: string; name: string; color: string; symbol?: "circle" | "square" | "dash" };
/** Shapes say what the colours say. */
const series: readonly Series[] = [
  { letter: "B", name: "mean error, rising", color: "1557A6", symbol: "circle" },
  { letter: "C", name: "mean error, falling", color: "B34A0C", symbol: "square" },
  { letter: "D", name: "error of the worse direction − U", color: "525D6A", symbol: "dash" },
  { letter: "E", name: "the same + U", color: "525D6A", symbol: "dash" },
  { letter: "F", name: "lower limit of the tolerance", color: "6D7885" },
  { letter: "G", name: "upper limit of the tolerance", color: "6D7885" },
];

/** Nothing is known between two test points: what joins them is as faint as a chart of this kind allows. */
const faint = { dash: "sysDot", width: 0.25 } as const;
const limit = { dash: "dash", width: 1.5 } as const;

/** Rows that a picture covers. */
const height = 24;

/** The error of each test point against its tolerance as a native chart a phase, with the cells that it is drawn from. */
export function pictureSheet(
  record: CalibrationRecord,
  { loop }: ReadingsSheet,
  { phases }: DecisionSheet,
): WrittenSheet {
  const grid = new Grid("Picture");
  const { distanceUnit, tag } = record.instrument;
  grid.add([`Errors of the test points by which the loop is decided, ${distanceUnit}`], "title");
  grid.add(["Nothing was read between two test points: the faint lines that join them say nothing."]);
  const charts = phases.map((phase): SheetChart => {
    grid.begin(phase.title);
    grid.add(headings, "heading");
    const first = grid.next;
    for (const point of phase.deciding) {
      const inDistance = (cell: string | undefined) =>
        cell === undefined ? null : { formula: `${cell}*${loop.span}/100` };
      const { reference, error, expanded, low, high } = point;
      grid.add([
        { formula: reference },
        inDistance(point.up),
        inDistance(point.down),
        { formula: `${error}-${expanded}` },
        { formula: `${error}+${expanded}` },
        { formula: low },
        { formula: high },
      ]);
    }
    const last = grid.next - 1;
    const top = grid.next;
    for (let row = 0; row < height; row += 1) grid.add([]);
    return {
      type: "scatter",
      title: `${tag}, ${phase.title.toLowerCase()}: error over the range`,
      altText: `Mean errors of the rising and of the falling readings at each test point with their uncertainty, between the limits of the tolerance. The numbers stand in the rows above.`,
      series: series
        .filter(({ letter }) => !isEmpty(letter, phase.deciding))
        .map(({ letter, name, color, symbol }) => ({
          ...{ name, color, stroke: symbol === undefined ? limit : faint },
          marker: symbol === undefined ? { symbol: "none" as const } : { symbol, size: 7, fill: color, line: color },
          categories: grid.range("A", first, last),
          values: grid.range(letter, first, last),
        })),
      anchor: { from: { row: top, col: 0 }, to: { row: top + height - 2, col: 9 } },
      legend: "bottom",
      axes: { x: { title: `reference, ${distanceUnit}`, tickLblPos: "low" }, y: { title: `error, ${distanceUnit}` } },
    };
  });
  return { grid, charts: charts.filter(({ series: some }) => some.length > 0) };
}

/** A direction that nowhere was read has no line. */
function isEmpty(letter: string, points: PhaseDecisions["deciding"]): boolean {
  if (points.length === 0) return true;
  if (letter === "B") return points.every(({ up }) => up === undefined);
  return letter === "C" && points.every(({ down }) => down === undefined);
}
