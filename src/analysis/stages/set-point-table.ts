import type { Instrument, Output } from "../../model/instrument.ts";
import { spanOf } from "../../model/range.ts";
import { idealOutput } from "../readings/ideal-characteristic.ts";
import { loopOf } from "../readings/loop.ts";

/** One line of a set-point table; a level that stands for no distance has its signal alone. */
export type SetPointRow = {
  name: string;
  distance: number | null;
  signal: number;
  counts: number | null;
  value: number | null;
  percentSpan: number | null;
};

const quarters = [
  { part: 0, name: "lower end" },
  { part: 0.25, name: "25 % of span" },
  { part: 0.5, name: "50 % of span" },
  { part: 0.75, name: "75 % of span" },
  { part: 1, name: "upper end" },
];

/**
 * What belongs together along a loop: distance, signal, counts, controller value and percent of span, at the range
 * ends, the quarter points and the set points of the outputs; the signals at which the sensor reports a fault.
 *
 * @param instrument a checked row
 * @param outputs switched outputs of the tag
 * @returns rows by distance, the nearest first, then the fault levels; counts and value null where the instrument's row
 *   does not scale them; full precision, counts not rounded to whole ones
 * Source: the straight line of `ideal-characteristic.ts`; NAMUR NE 43 for the fault levels of a 4–20 mA loop.
 * @example setPointTable({ tag: "LT-1", rangeLower: 0, rangeUpper: 100, distanceUnit: "mm", signalLower: 4,
 *   signalUpper: 20, signalUnit: "mA", tolerance: 1, toleranceBasis: "distance" }, [])[1]
 *   // { name: "25 % of span", distance: 25, signal: 8, counts: null, value: null, percentSpan: 25 }
 */
export function setPointTable(instrument: Instrument, outputs: readonly Output[]): readonly SetPointRow[] {
  const { characteristics, faultLevels } = loopOf(instrument);
  const { rangeLower } = instrument;
  const span = spanOf(instrument);
  const { counts, value } = characteristics;
  const rowAt = (name: string, distance: number): SetPointRow => ({
    name,
    distance,
    signal: idealOutput(characteristics.signal, distance),
    counts: counts === undefined ? null : idealOutput(counts, distance),
    value: value === undefined ? null : idealOutput(value, distance),
    percentSpan: ((distance - rangeLower) / span) * 100,
  });
  const rows = [
    ...quarters.map(({ part, name }) => rowAt(name, rangeLower + part * span)),
    ...outputs.map(({ output, setPoint }) => rowAt(`set point of ${output}`, setPoint)),
  ];
  return [
    ...rows.toSorted((one, other) => (one.distance ?? 0) - (other.distance ?? 0)),
    ...faultRow("fault level, low", faultLevels.low),
    ...faultRow("fault level, high", faultLevels.high),
  ];
}

function faultRow(name: string, signal: number | undefined): readonly SetPointRow[] {
  if (signal === undefined) return [];
  return [{ name, distance: null, signal, counts: null, value: null, percentSpan: null }];
}
