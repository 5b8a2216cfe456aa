import { placeOfSignificant, writeToPlace } from "./write-number.ts";

/** A value and its uncertainty as they are printed, to the same decimal place. */
export type WrittenWithUncertainty = { value: string; uncertainty: string };

/**
 * A value with its uncertainty: the uncertainty to two significant digits, the value to the same place.
 *
 * @param value any finite number
 * @param uncertainty above zero, in the unit of the value; standard or expanded
 * @returns both as text, halves away from zero; rounded here and nowhere before
 * @throws RangeError where the uncertainty is not above zero and finite
 * Source: ILAC-P14:09/2020 (two significant digits at most); JCGM 100:2008, 7.2.6.
 * @example writeWithUncertainty(-0.17120379, 0.0028776) // { value: "−0.1712", uncertainty: "0.0029" }
 */
export function writeWithUncertainty(value: number, uncertainty: number): WrittenWithUncertainty {
  if (!(uncertainty > 0)) throw new RangeError(`writeWithUncertainty: requires an uncertainty above zero`);
  const place = placeOfSignificant(uncertainty, 2);
  return { value: writeToPlace(value, place), uncertainty: writeToPlace(uncertainty, place) };
}
