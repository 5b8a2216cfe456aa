import type { AnalysedReading } from "../analysis/analyse-readings.ts";
import type { Reading } from "../model/calibration.ts";
import type { TableRow } from "../model/calibration-case.ts";
import { type DecimalMark, readNumber } from "../units/read-number.ts";
import type { ReadingVerdict } from "../verdict/decide-phase.ts";
import type { PhaseRecord, ReadingRecord } from "./record-schema.ts";

/**
 * One reading as the record carries it; what was not read or cannot be had is absent.
 *
 * @param analysed the reading and what follows from it
 * @param row line of its file
 * @param verdict inside the tolerance or not; undefined where it is left out
 * @returns the reading, numbers at full precision
 * Source: each figure's own file in `analysis`.
 * @example assembleReading({ reading: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50,
 *   signal: 12.16 }, point: 50, cycle: 1, tolerance: { low: -1, high: 1 }, shares: {}, isFaultInRange: false }, 14,
 *   "pass").row // 14
 */
export function assembleReading(
  analysed: AnalysedReading,
  row: number,
  verdict: ReadingVerdict | undefined,
): ReadingRecord {
  const { reading, point, cycle, error, loopError, shares, tolerance, leftOut } = analysed;
  const { reference, direction, signal, counts, value, time, remark } = reading;
  return withoutUndefined({
    row,
    cycle,
    direction,
    point,
    reference,
    signal,
    counts,
    value,
    time,
    remark,
    indicated: error?.indicated,
    errorDistance: error?.errorDistance,
    errorSignal: error?.errorOutput,
    errorPercentSpan: error?.errorPercentSpan,
    loopErrorValue: loopError?.value,
    loopErrorDistance: loopError?.distance,
    shares: Object.keys(shares).length === 0 ? undefined : shares,
    toleranceLow: tolerance.low,
    toleranceHigh: tolerance.high,
    verdict,
    leftOut,
  }) as ReadingRecord;
}

function withoutUndefined(fields: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(fields).filter(([, field]) => field !== undefined));
}

/**
 * The most decimals that were typed in each column of readings: they carry the resolution.
 *
 * @param rows readings of one phase with the text of their cells
 * @param markOf decimal mark of a file
 * @returns decimals by column; 0 where nothing was typed
 * Source: own choice.
 * @example typedDecimals([{ file: "readings.csv", line: 2, cells: { reference: "50.0", signal: "12.160" },
 *   row: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.16 } }],
 *   () => "point").signal // 3
 */
export function typedDecimals(
  rows: readonly TableRow<Reading>[],
  markOf: (file: string) => DecimalMark,
): PhaseRecord["decimals"] {
  const most = (column: "reference" | "signal" | "counts" | "value") =>
    rows.reduce((decimals, { cells, file }) => {
      const written = readNumber(cells[column] ?? "", markOf(file));
      return Math.max(decimals, written?.decimals ?? 0);
    }, 0);
  return { reference: most("reference"), signal: most("signal"), counts: most("counts"), value: most("value") };
}
