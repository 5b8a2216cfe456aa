import type { JudgedPointRecord } from "../record/record-schema.ts";
import { columnLetters } from "../units/column-letters.ts";
import { type Cell, liveWhere } from "./cell.ts";
import type { Grid } from "./grid.ts";
import type { PhaseReadings } from "./readings-sheet.ts";

/** Where an error curve stands on its sheet. */
export type CurveTable = {
  first: number;
  last: number;
  /** All cells of one of its columns. */
  column: (key: CurveKey) => string;
  at: (key: CurveKey, row: number) => string;
  /** Squares of all repeats about their means, and their degrees of freedom, as formulas. */
  squares: string;
  freedom: string;
  /** The greatest chord deviation of the linearity, as a formula; undefined where there are too many points. */
  chords: string | undefined;
};

/** What the curve is of: which readings are in it, and which error. */
export type CurveOf = { mask: "used" | "atEnd"; error: "percent" | "endPercent" };

const headings = {
  number: ["test point", "its number"],
  point: ["nominal", "value"],
  reference: ["reference", "mean"],
  up: ["rising", "mean, % of span"],
  down: ["falling", "mean, % of span"],
  mean: ["mean", "of both, % of span"],
  greatest: ["farthest from 0", "with its sign"],
  size: ["its size", "% of span"],
  gap: ["rising − falling", "size, % of span"],
  spreadUp: ["spread, rising", "% of span"],
  spreadDown: ["spread, falling", "% of span"],
  squaresUp: ["squares, rising", "about the mean"],
  squaresDown: ["squares, falling", "about the mean"],
  countUp: ["rising", "readings"],
  countDown: ["falling", "readings"],
  pairs: ["zero-based", "greatest pair"],
} as const;
type CurveKey = keyof typeof headings;
const keys = Object.keys(headings) as readonly CurveKey[];
const letterOf = (key: CurveKey) => columnLetters(keys.indexOf(key));

/** More test points would make more chords than anybody reads: a square of them. */
const mostChordPoints = 40;

/** The error curve, a test point a row; each cell over the readings of its point and direction. */
export function curveTable(
  grid: Grid,
  readings: PhaseReadings,
  points: readonly JudgedPointRecord[],
  of: CurveOf,
): CurveTable {
  const hasChords = points.length >= 3 && points.length <= mostChordPoints;
  grid.add(
    [
      ...keys.map((key) => headings[key][0]),
      null,
      ...(hasChords ? ["independent: half of how far a point between two others lies from their chord"] : []),
    ],
    "heading",
  );
  grid.add(keys.map((key) => headings[key][1]));
  const first = grid.next;
  const last = first + points.length - 1;
  const column = (key: CurveKey) => grid.range(letterOf(key), first, last);
  const at = (key: CurveKey, row: number) => grid.at(letterOf(key), row);
  for (const [index, point] of points.entries()) {
    const cells = pointCells(point, readings, of, { at: (key) => at(key, first + index), column, first });
    const chords = hasChords ? chordCells(index, points.length, { at, column, first }) : [];
    grid.add([index + 1, ...keys.slice(1).map((key) => cells[key] ?? null), null, ...chords]);
  }
  const [left, right] = [columnLetters(keys.length + 1), columnLetters(keys.length + points.length)];
  return {
    ...{ first, last, column, at },
    squares: `SUM(${column("squaresUp")},${column("squaresDown")})`,
    freedom: `SUMPRODUCT((${column("countUp")}>1)*(${column("countUp")}-1)+(${column("countDown")}>1)*(${column("countDown")}-1))`,
    chords: hasChords ? `MAX(${grid.name}!$${left}$${first}:$${right}$${last})` : undefined,
  };
}

type PointAt = { at: (key: CurveKey) => string; column: (key: CurveKey) => string; first: number };

function pointCells(
  { point, reference, up, down, mean }: JudgedPointRecord,
  readings: PhaseReadings,
  { mask, error }: CurveOf,
  { at, column }: PointAt,
): Partial<Record<CurveKey, Cell>> {
  const ofPoint = `${readings.column(mask)}*(${readings.column("number")}=${at("number")})`;
  const ofDirection = (direction: string) => `${ofPoint}*(${readings.column("direction")}="${direction}")`;
  const errors = readings.column(error);
  const side = (direction: "rising" | "falling", is: number | null, mean: string, count: string) => {
    const those = ofDirection(direction);
    const off = `${those}*(${errors}-${mean})`;
    return {
      mean: liveWhere(is, `SUMPRODUCT(${those}*${errors})/${count}`),
      spread: is === null ? null : { formula: `SUMPRODUCT(MAX(${off}))-SUMPRODUCT(MIN(${off}))` },
      squares: is === null ? null : { formula: `SUMPRODUCT(${those}*(${errors}-${mean})^2)` },
      count: { formula: `SUMPRODUCT(${those})` },
    };
  };
  const rising = side("rising", up, at("up"), at("countUp"));
  const falling = side("falling", down, at("down"), at("countDown"));
  const both = up !== null && down !== null;
  const only = up === null ? at("down") : at("up");
  return {
    point,
    reference: {
      formula: `SUMPRODUCT(${ofPoint}*${readings.column("reference")})/(${at("countUp")}+${at("countDown")})`,
      is: reference,
    },
    ...{ up: rising.mean, spreadUp: rising.spread, squaresUp: rising.squares, countUp: rising.count },
    ...{ down: falling.mean, spreadDown: falling.spread, squaresDown: falling.squares, countDown: falling.count },
    mean: { formula: both ? `(${at("up")}+${at("down")})/2` : only, is: mean },
    greatest: { formula: both ? `IF(ABS(${at("up")})>=ABS(${at("down")}),${at("up")},${at("down")})` : only },
    size: { formula: `ABS(${at("greatest")})` },
    gap: both ? { formula: `ABS(${at("up")}-${at("down")})` } : null,
    pairs: { formula: pairDeviation(column, at) },
  };
}

/**
 * Zero-based: a line through the first test point leaves at two others at least |d₁t₂ − d₂t₁|/(t₁ + t₂), d and t their
 * distances from it in error and in reference; the greatest of these is what the best slope leaves.
 */
function pairDeviation(column: (key: CurveKey) => string, at: (key: CurveKey) => string): string {
  const { errorAtFirst, referenceAtFirst } = firstPoint(column);
  const [d, t] = [`(${column("mean")}-${errorAtFirst})`, `(${column("reference")}-${referenceAtFirst})`];
  const [ownD, ownT] = [`(${at("mean")}-${errorAtFirst})`, `(${at("reference")}-${referenceAtFirst})`];
  return `SUMPRODUCT(MAX(ABS(${ownD}*${t}-${d}*${ownT})/(${ownT}+${t}+(${ownT}+${t}=0))))`;
}

/** The test point with the least reference. */
export function firstPoint(column: (key: "mean" | "reference") => string) {
  const referenceAtFirst = `MIN(${column("reference")})`;
  return { referenceAtFirst, errorAtFirst: meanAt(column, referenceAtFirst) };
}

/** The mean error at a reference of the table. */
export function meanAt(column: (key: "mean" | "reference") => string, reference: string): string {
  return `INDEX(${column("mean")},MATCH(${reference},${column("reference")},0))`;
}

type TableAt = { at: (key: CurveKey, row: number) => string; column: (key: CurveKey) => string; first: number };

/**
 * Independent linearity: of any three test points no line leaves less than half of what the middle one deviates from the
 * chord of the outer ones, and the best line leaves the greatest of these. A cell a pair of outer points.
 */
function chordCells(index: number, count: number, { at, column, first }: TableAt): readonly Cell[] {
  const [x, y] = [column("reference"), column("mean")];
  const [x1, y1] = [at("reference", first + index), at("mean", first + index)];
  return Array.from({ length: count }, (_, other) => {
    if (other <= index) return null;
    const [x2, y2] = [at("reference", first + other), at("mean", first + other)];
    const off = `ABS(${y}-${y1}-(${y2}-${y1})*(${x}-${x1})/(${x2}-${x1}))`;
    const isBetween = `((${x}-${x1})*(${x}-${x2})<=0)`;
    return { formula: `IF(${x2}=${x1},ABS(${y2}-${y1}),SUMPRODUCT(MAX(${off}*${isBetween})))/2` };
  });
}
