import { decimalsForSignificant, writeFixed } from "./write-number.ts";

/** A value and its uncertainty as they are printed, to the same decimal place. */
export type WrittenWithUncertainty = { value: string; uncertainty: string };

/**
 * A value with its uncertainty: the uncertainty to two significant digits, the value to the same place.
 *
 * @param value any finite number
 * @param uncertainty above zero, in the unit of the value; standard or expanded
 * @returns both as text; rounded here and nowhere before
 * @throws RangeError where the uncertainty is not above zero and finite
 * Source: ILAC-P14:09/2020 (two significant digits at most); JCGM 100:2008, 7.2.6.
 * @example writeWithUncertainty(-0.17120379, 0.0028776) // { value: "−0.1712", uncertainty: "0.0029" }
 */
export function writeWithUncertainty(value: number, uncertainty: number): WrittenWithUncertainty {
  if (!(uncertainty > 0)) throw new RangeError(`writeWithUncertainty: requires an uncertainty above zero`);
  const decimals = decimalsForSignificant(uncertainty, 2);
  const exponent = Number(uncertainty.toExponential(1).split("e")[1]);
  const step = 10 ** Math.max(0, exponent - 1);
  if (step === 1) return { value: writeFixed(value, decimals), uncertainty: writeFixed(uncertainty, decimals) };
  return {
    value: writeFixed(Math.round(value / step) * step, 0),
    uncertainty: writeFixed(Math.round(uncertainty / step) * step, 0),
  };
}
