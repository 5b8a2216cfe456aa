import { type DistanceUnit, distanceUnits, type SignalUnit } from "../../model/instrument-words.ts";
import type { Axis } from "../../model/loop-stages.ts";
import { spanOf } from "../../model/range.ts";
import { convert } from "../../units/convert.ts";
import type { Loop } from "../readings/loop.ts";
import { axisCharacteristic } from "../stages/staged-readings.ts";

/** Another unit, or another scale, that the numbers of a column may have been written in. */
export type Scale = {
  /** The unit in words, as a sentence names it. */
  unit: string;
  /** What belongs to the range and not to the column: the range itself is in this unit. */
  ofRange?: true;
  /** The number in percent of span, if it is in this unit. */
  percentOf: (written: number) => number;
};

/**
 * The other units in which the references of a loop may have been written, or its range.
 *
 * @param loop with its range
 * @param distanceUnit unit that the instrument names
 * @returns a scale for each other unit of distance, percent of span, and the units that the range may be in
 * Source: `unit-table.ts` for the factors.
 * @example referenceScales(loop, "mm").map(({ unit }) => unit) // ["cm", "m", "in", "ft", "percent of span", "cm", "m", "in", "ft"]
 */
export function referenceScales(loop: Loop, distanceUnit: DistanceUnit): readonly Scale[] {
  const { signal } = loop.characteristics;
  const span = spanOf(signal);
  const others = distanceUnits.filter((unit) => unit !== distanceUnit);
  const percentOf = (distance: number) => (100 * (distance - signal.rangeLower)) / span;
  return [
    ...others.map((unit) => ({
      unit,
      percentOf: (written: number) => percentOf(convert(written, unit, distanceUnit)),
    })),
    { unit: "percent of span", percentOf: (written: number) => written },
    ...others.map((unit) => ({
      unit,
      ofRange: true as const,
      percentOf: (written: number) => percentOf(convert(written, distanceUnit, unit)),
    })),
  ];
}

/** Resistors over which a current is read as a voltage, Ω: common practice. */
const resistors = [50, 100, 125, 250, 500] as const;

/** Ends of a signal that is written in another way, for the ends of the instrument's own; the words for its unit. */
type Ends = { unit: string; lower: number; upper: number };

/**
 * The other scales in which an output of a loop may have been written: the same signal in another unit, the voltage of a
 * current over a resistor, the current for a voltage, percent of span, and the scales of the loop's other quantities.
 *
 * @param loop with the lines of its stages
 * @param axis the output
 * @param units unit of distance, and of the controller's value
 * @returns the scales; a signal from zero is none of a signal with a live zero, for that is a fault of the loop
 * Source: own choice; common practice for resistors and voltages.
 * @example outputScales(loop, "signal", { distanceUnit: "mm" }).map(({ unit }) => unit).slice(0, 3)
 *   // ["A", "µA", "V over 50 Ω"]
 */
export function outputScales(
  loop: Loop,
  axis: Exclude<Axis, "reference">,
  { distanceUnit, valueUnit }: { distanceUnit: DistanceUnit; valueUnit?: string | undefined },
): readonly Scale[] {
  const own = axisCharacteristic(loop, axis);
  if (own === undefined) return [];
  const isSignal = axis === "signal" || axis === "signalAtCard";
  const { signal, counts, value } = loop.characteristics;
  const signalEnds = { lower: signal.outputAtLower, upper: signal.outputAtUpper };
  const rising = signalEnds.upper > signalEnds.lower;
  const ends: Ends[] = [
    ...(isSignal ? electricEnds(loop.signalUnit, signalEnds) : [{ unit: loop.signalUnit, ...signalEnds }]),
    ...(isSignal || axis === "counts" ? [{ unit: "percent of span", ...(rising ? upwards : downwards) }] : []),
    ...(counts && axis !== "counts"
      ? [{ unit: "counts", lower: counts.outputAtLower, upper: counts.outputAtUpper }]
      : []),
    ...(value && axis !== "value"
      ? [{ unit: valueUnit ?? "the controller's unit", lower: value.outputAtLower, upper: value.outputAtUpper }]
      : []),
    { unit: distanceUnit, lower: signal.rangeLower, upper: signal.rangeUpper },
  ];
  return ends
    .filter(({ lower, upper }) => lower !== own.outputAtLower || upper !== own.outputAtUpper)
    .map(({ unit, lower, upper }) => ({ unit, percentOf: (written) => (100 * (written - lower)) / (upper - lower) }));
}

const upwards = { lower: 0, upper: 100 };
const downwards = { lower: 100, upper: 0 };

function electricEnds(unit: SignalUnit, { lower, upper }: { lower: number; upper: number }): readonly Ends[] {
  const times = (name: string, factor: number): Ends => ({ unit: name, lower: lower * factor, upper: upper * factor });
  const rising = upper > lower;
  const turned = (name: string, least: number, greatest: number): Ends =>
    rising ? { unit: name, lower: least, upper: greatest } : { unit: name, lower: greatest, upper: least };
  if (unit === "mA") {
    return [
      times("A", 1e-3),
      times("µA", 1e3),
      ...resistors.map((ohms) => times(`V over ${ohms} Ω`, ohms / 1000)),
      turned("V, 0 to 10", 0, 10),
      turned("V, 0 to 5", 0, 5),
    ];
  }
  return [times("mV", 1e3), turned("mA, 4 to 20", 4, 20), turned("mA, 0 to 20", 0, 20)];
}
