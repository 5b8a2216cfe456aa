import { type Range, spanOf } from "../../model/range.ts";

/**
 * The straight line that a stage of the loop is meant to follow: what it should give at the two ends of the range.
 * Distances in the instrument's unit; outputs in mA, V, counts or the controller's unit.
 * An output that falls over the range (a reverse-acting loop) is a line like any other.
 */
export type Characteristic = Range & {
  outputAtLower: number;
  outputAtUpper: number;
};

/**
 * What the stage should give at a distance: s*(x) = s0 + (x − L)/S · (s1 − s0).
 *
 * @param characteristic range and output ends, S = U − L above zero
 * @param reference x, distance
 * @returns output in its own unit; beyond the range the line goes on
 * Source: IEC 60381-1 and IEC 60381-2 for the signals; the line is common practice.
 * @example idealOutput({ rangeLower: 150, rangeUpper: 400, outputAtLower: 4, outputAtUpper: 20 }, 253.125) // 10.6
 */
export function idealOutput(characteristic: Characteristic, reference: number): number {
  const { rangeLower, outputAtLower } = characteristic;
  return outputAtLower + ((reference - rangeLower) / spanOf(characteristic)) * outputSpanOf(characteristic);
}

/**
 * The distance that an output stands for: d(s) = L + (s − s0)/(s1 − s0) · S, the inverse of `idealOutput`.
 *
 * @param characteristic range and output ends, s1 different from s0
 * @param output in the unit of the output ends
 * @returns distance
 * Source: as `idealOutput`.
 * @example indicatedDistance({ rangeLower: 150, rangeUpper: 400, outputAtLower: 4, outputAtUpper: 20 }, 10.6) // 253.125
 */
export function indicatedDistance(characteristic: Characteristic, output: number): number {
  const { rangeLower, outputAtLower } = characteristic;
  return rangeLower + ((output - outputAtLower) / outputSpanOf(characteristic)) * spanOf(characteristic);
}

/**
 * Span of the output, with its sign: s1 − s0, below zero for a reverse-acting loop.
 *
 * @param characteristic output ends
 * @returns difference in the unit of the output
 * Source: ANSI/ISA-51.1-1979 (R1993), "span".
 * @example outputSpanOf({ rangeLower: 0, rangeUpper: 1, outputAtLower: 20, outputAtUpper: 4 }) // -16
 */
export function outputSpanOf({ outputAtLower, outputAtUpper }: Characteristic): number {
  return outputAtUpper - outputAtLower;
}

/**
 * What an error in distance is in the output of the stage: the same part of the output's span.
 *
 * @param characteristic range and output ends
 * @param errorDistance indicated minus reference, distance
 * @returns error in the unit of the output
 * Source: as `idealOutput`.
 * @example outputErrorOf({ rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 }, 50) // 8
 */
export function outputErrorOf(characteristic: Characteristic, errorDistance: number): number {
  return (errorDistance * outputSpanOf(characteristic)) / spanOf(characteristic);
}
