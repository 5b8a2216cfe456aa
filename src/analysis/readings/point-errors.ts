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
 * The error of one reading: indicated minus reference, always with this sign.
 *
 * e = d(s) − x in distance; s − s*(x) in the unit of the output; 100 · e / S in percent of span. What is no more than the
 * computer's own rounding is 0.
 *
 * @param characteristic the line that the output should follow
 * @param reference x, distance
 * @param output s, in the unit of the characteristic's output ends
 * @returns the distance that the output indicates, and the error in three units
 * Source: JCGM 200:2012 (VIM), 2.16 measurement error.
 * @example pointError({ rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 }, 50, 12.16).errorDistance // 1
 */
export function pointError(characteristic: Characteristic, reference: number, output: number): PointError {
  const indicated = indicatedDistance(characteristic, output);
  const difference = indicated - reference;
  const { rangeLower, rangeUpper } = characteristic;
  const size = Math.max(Math.abs(indicated), Math.abs(reference), Math.abs(rangeLower), Math.abs(rangeUpper));
  const isRight = Math.abs(difference) <= ownRounding * size;
  const errorDistance = isRight ? 0 : difference;
  return {
    indicated,
    errorDistance,
    errorOutput: isRight ? 0 : output - idealOutput(characteristic, reference),
    errorPercentSpan: (100 * errorDistance) / spanOf(characteristic),
  };
}
