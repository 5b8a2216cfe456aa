/** Shape of what is known about one input quantity. */
export type Distribution = "normal" | "rectangular" | "triangular" | "arcsine" | "trapezoidal";

/**
 * One source of uncertainty.
 *
 * `value` is as stated, in `unit`: an expanded uncertainty (divisor k), a half-width (its divisor), or a standard
 * uncertainty (divisor 1). `sensitivity` is distance for one unit of the value, `standardUncertainty` in distance.
 */
export type Contribution = {
  source: string;
  value: number;
  unit: string;
  distribution: Distribution;
  divisor: number;
  sensitivity: number;
  standardUncertainty: number;
  degreesOfFreedom: number;
};

/** What is stated of a contribution; the rest follows. */
export type StatedContribution = {
  source: string;
  value: number;
  unit: string;
  distribution: Distribution;
  /** For normal: what turns the value into a standard uncertainty. Others: only where it is not the one that follows. */
  divisor?: number;
  /** Trapezoidal only: width of the top over width of the base, 0 to 1. */
  edgeParameter?: number;
  /** 1 where it is not given. */
  sensitivity?: number;
  /** Infinity where it is not given. */
  degreesOfFreedom?: number;
};

const divisors = { rectangular: Math.sqrt(3), triangular: Math.sqrt(6), arcsine: Math.SQRT2 } as const;

/**
 * Makes one line of an uncertainty budget from what is stated of it.
 *
 * Standard uncertainty = |sensitivity| · value / divisor. The divisor follows from the distribution of a half-width: √3
 * rectangular, √6 triangular, √2 arcsine (U-shaped), √(6/(1 + β²)) trapezoidal with edge parameter β.
 *
 * @param stated value >= 0 in the unit named; a normal contribution must state its divisor (k of a certificate, 1 for a
 *   standard uncertainty, √n for the mean of n), a trapezoidal one its edge parameter and no divisor
 * @returns the line, its standard uncertainty in distance
 * Faults: `RangeError` for a missing or unfitting divisor or edge parameter, a negative value, a value or sensitivity
 *   that is not finite, or fewer than 1 degree of freedom.
 * Source: JCGM 100:2008, 4.3.3 to 4.3.9 and 5.1.3; JCGM 101:2008, 6.4.4 (trapezoidal) and 6.4.6 (arcsine).
 * @example contribution({ source: "resolution", value: 0.5, unit: "mm", distribution: "rectangular" }).standardUncertainty
 *   // 0.2887
 */
export function contribution(stated: StatedContribution): Contribution {
  const { source, value, unit, distribution, sensitivity = 1, degreesOfFreedom = Number.POSITIVE_INFINITY } = stated;
  requireThat(value >= 0 && Number.isFinite(value), source, `a value of ${value} is not a number >= 0`);
  requireThat(Number.isFinite(sensitivity), source, `a sensitivity of ${sensitivity} is not finite`);
  requireThat(degreesOfFreedom >= 1, source, `${degreesOfFreedom} degrees of freedom, at least 1`);
  const divisor = divisorOf(stated);
  requireThat(divisor > 0 && Number.isFinite(divisor), source, `a divisor of ${divisor} is not a number above 0`);
  const standardUncertainty = (Math.abs(sensitivity) * value) / divisor;
  return { source, value, unit, distribution, divisor, sensitivity, standardUncertainty, degreesOfFreedom };
}

function divisorOf({ source, distribution, divisor, edgeParameter }: StatedContribution): number {
  if (distribution === "trapezoidal") {
    requireThat(divisor === undefined, source, "the divisor of a trapezoid follows from its edge parameter");
    return trapezoidalDivisor(source, edgeParameter);
  }
  requireThat(edgeParameter === undefined, source, `a ${distribution} contribution has no edge parameter`);
  if (divisor !== undefined) return divisor;
  if (distribution !== "normal") return divisors[distribution];
  throw new RangeError(`${source}: a normal contribution needs its divisor`);
}

function trapezoidalDivisor(source: string, edgeParameter: number | undefined): number {
  if (edgeParameter === undefined)
    throw new RangeError(`${source}: a trapezoidal contribution needs an edge parameter`);
  requireThat(edgeParameter >= 0 && edgeParameter <= 1, source, `edge parameter ${edgeParameter} is not from 0 to 1`);
  return Math.sqrt(6 / (1 + edgeParameter ** 2));
}

function requireThat(holds: boolean, source: string, otherwise: string): void {
  if (!holds) throw new RangeError(`${source}: ${otherwise}`);
}
