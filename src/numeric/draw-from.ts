import type { RandomStream } from "./random-stream.ts";

/** A distribution about 0, in the unit that `drawFrom` says; scale and shift it as needed. */
export type StandardShape =
  | { readonly shape: "normal" | "rectangular" | "triangular" | "arcsine" }
  | { readonly shape: "Student t"; readonly degreesOfFreedom: number }
  | { readonly shape: "trapezoidal"; readonly edgeParameter: number };

/**
 * Gives one random value of a distribution about 0.
 *
 * Normal: standard deviation 1. Student t: scale 1, so its variance is ν/(ν − 2), and has no bound for ν <= 2.
 * Rectangular, triangular, arcsine (U-shaped) and trapezoidal: half-width 1, so that the standard deviations are 1/√3,
 * 1/√6, 1/√2 and √((1 + β²)/6), with β the width of the top divided by the width of the base.
 *
 * @param shape which distribution; ν >= 1 and finite, fractions allowed; 0 <= β <= 1 (0 triangular, 1 rectangular)
 * @param stream where the randomness comes from; a value takes one number of it or more
 * @returns a value, no unit; strictly inside ±1 where the half-width is 1 (arcsine and triangular may touch it)
 * Faults: `RangeError` for degrees of freedom under 1 or not finite, or an edge parameter outside 0 to 1.
 * Source: JCGM 101:2008, 6.4 (6.4.2 rectangular, 6.4.4 trapezoidal, 6.4.5 triangular, 6.4.6 arcsine, 6.4.7 normal,
 * 6.4.9 t); polar methods of G. Marsaglia and T. A. Bray, SIAM Rev. 6, 260 (1964), and for t R. W. Bailey, Math.
 * Comput. 62, 779 (1994).
 * @example drawFrom({ shape: "rectangular" }, { uniform: () => 0.75 }) // 0.5
 */
export function drawFrom(shape: StandardShape, stream: RandomStream): number {
  switch (shape.shape) {
    case "normal":
      return normalDraw(stream);
    case "Student t":
      return studentTDraw(shape.degreesOfFreedom, stream);
    case "rectangular":
      return rectangularDraw(stream);
    case "triangular":
      return trapezoidalDraw(0, stream);
    case "arcsine":
      return Math.sin(Math.PI * rectangularDraw(stream));
    case "trapezoidal":
      return trapezoidalDraw(shape.edgeParameter, stream);
  }
}

/**
 * Gives many random values of a distribution about 0, one after the other as `drawFrom` would.
 *
 * @param shape as for `drawFrom`
 * @param stream where the randomness comes from
 * @param count how many, a whole number >= 0
 * @returns array of `count` values, in the unit of `drawFrom`
 * Faults: `RangeError` as for `drawFrom`, or for a count that is not a whole number >= 0.
 * Source: as for `drawFrom`.
 * @example drawsFrom({ shape: "rectangular" }, { uniform: () => 0.75 }, 2) // [0.5, 0.5]
 */
export function drawsFrom(shape: StandardShape, stream: RandomStream, count: number): Float64Array {
  if (!Number.isSafeInteger(count) || count < 0) throw new RangeError(`count ${count} is not a whole number >= 0`);
  return Float64Array.from({ length: count }, () => drawFrom(shape, stream));
}

function rectangularDraw(stream: RandomStream): number {
  return 2 * stream.uniform() - 1;
}

function trapezoidalDraw(edgeParameter: number, stream: RandomStream): number {
  if (!(edgeParameter >= 0 && edgeParameter <= 1))
    throw new RangeError(`edge parameter ${edgeParameter} is not from 0 to 1`);
  const wide = (1 + edgeParameter) / 2;
  return wide * rectangularDraw(stream) + (1 - wide) * rectangularDraw(stream);
}

/** A point spread evenly over the unit disc, the centre excluded: one coordinate and the squared distance. */
function discPoint(stream: RandomStream): { coordinate: number; square: number } {
  for (;;) {
    const coordinate = rectangularDraw(stream);
    const other = rectangularDraw(stream);
    const square = coordinate * coordinate + other * other;
    if (square > 0 && square < 1) return { coordinate, square };
  }
}

/** The point of `discPoint` without an object for it, for these are drawn by the hundred thousand. */
function normalDraw(stream: RandomStream): number {
  for (;;) {
    const coordinate = 2 * stream.uniform() - 1;
    const other = 2 * stream.uniform() - 1;
    const square = coordinate * coordinate + other * other;
    if (square > 0 && square < 1) return coordinate * Math.sqrt((-2 * Math.log(square)) / square);
  }
}

function studentTDraw(degreesOfFreedom: number, stream: RandomStream): number {
  if (!(degreesOfFreedom >= 1 && Number.isFinite(degreesOfFreedom)))
    throw new RangeError(`${degreesOfFreedom} degrees of freedom, they must be at least 1 and finite`);
  const { coordinate, square } = discPoint(stream);
  // expm1 keeps its digits where many degrees of freedom bring the power close to 1.
  const power = Math.expm1((-2 / degreesOfFreedom) * Math.log(square));
  return coordinate * Math.sqrt((degreesOfFreedom * power) / square);
}
