import { spanOf } from "../../model/range.ts";
import { type Characteristic, idealOutput, indicatedDistance } from "./ideal-characteristic.ts";

/** What one output says at one reference distance, and how far that is from the truth. */
export type PointError = {
  indicated: number;
  errorDistance: number;
  errorOutput: number;
  errorPercentSpan: number;
};

/** What a computer's own rounding may make of distances that are the same (IEEE 754, a few units in the last place). */
const ownRounding = 8 * Number.EPSILON;

/**
 * The distance that an output indicates at a reference: the reference itself where they differ by no more than the computer's
 * own rounding.
 *
 * @param characteristic the line that the output should follow
 * @param reference x, distance
 * @param output s, in the unit of the characteristic's output ends
 * @returns d(s)
 * Source: own choice; otherwise an error of 0 would be written with fifteen decimals.
 * @example indicatedAt({ rangeLower: 10, rangeUpper: 90, outputAtLower: 5, outputAtUpper: 1 }, 18, 4.6) // 18
 */
export function indicatedAt(characteristic: Characteristic, reference: number, output: number): number {
  const indicated = indicatedDistance(characteristic, output);
  const { rangeLower, rangeUpper } = characteristic;
  const size = Math.max(Math.abs(indicated), Math.abs(reference), Math.abs(rangeLower), Math.abs(rangeUpper));
  return Math.abs(indicated - reference) <= ownRounding * size ? reference : indicated;
}

/**
 * The error of one reading: indicated minus reference, always with this sign.
 *
 * e = d(s) − x in distance; s − s*(x) in the unit of the output; 100 · e / S in percent of span.
 *
 * @param characteristic the line that the output should follow
 * @param reference x, distance
 * @param output s, in the unit of the characteristic's output ends
 * @returns the distance that the output indicates, and the error in three units
 * Source: JCGM 200:2012 (VIM), 2.16 measurement error.
 * @example pointError({ rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 }, 50, 12.16).errorDistance // 1
 */
export function pointError(characteristic: Characteristic, reference: number, output: number): PointError {
  const indicated = indicatedAt(characteristic, reference, output);
  const errorDistance = indicated - reference;
  return {
    indicated,
    errorDistance,
    errorOutput: errorDistance === 0 ? 0 : output - idealOutput(characteristic, reference),
    errorPercentSpan: (100 * errorDistance) / spanOf(characteristic),
  };
}
