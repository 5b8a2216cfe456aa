import { studentTFactor } from "./budget.ts";

/** The whole error of one certificate, as a standard uncertainty in distance: the same wherever it is used. */
export type CertificatePart = { standard: string; certificate: string; standardUncertainty: number };

/** What is known of the uncertainty of one result; distance. */
export type ResultUncertainty = {
  expandedUncertainty: number;
  /** With the next, absent where only U is known. */
  combinedUncertainty?: number | undefined;
  /** Effective; null where they are unlimited. */
  effectiveDegreesOfFreedom?: number | null | undefined;
  certificates?: readonly CertificatePart[] | undefined;
};

/** U of a difference, and which certificates drop out of it, by the names of their standards. */
export type DifferenceUncertainty = { expandedUncertainty: number; sameStandards: readonly string[] };

/**
 * The uncertainty of a difference of two results: what the same certificate contributes to both drops out.
 *
 * A standard that is off is off by the same at both visits while its certificate is the same. Its drift since then is not
 * left out, for nobody knows that it went on in one direction. u² = Σ (u² − c²) over both, + (c1 − c2)² where the same
 * certificate counts differently; ν = u⁴/Σ (u⁴/ν): a certificate has unlimited degrees of freedom, so that leaving it out
 * changes no term of that sum. k from Student's t at 95.45 %.
 *
 * @param one result
 * @param other result
 * @returns U of the difference, distance; √(U1² + U2²) where either says no more of itself than U
 * Source: JCGM 100:2008, 5.2.2 (correlated inputs), F.1.2.3 (a common standard), G.4.1.
 * @example differenceUncertainty({ expandedUncertainty: 1, combinedUncertainty: 0.5, effectiveDegreesOfFreedom: null,
 *   certificates: [{ standard: "GB-1", certificate: "EX-1", standardUncertainty: 0.4 }] }, { expandedUncertainty: 1,
 *   combinedUncertainty: 0.5, effectiveDegreesOfFreedom: null, certificates: [{ standard: "GB-1", certificate: "EX-1",
 *   standardUncertainty: 0.4 }] }).expandedUncertainty // 0.8485
 */
export function differenceUncertainty(one: ResultUncertainty, other: ResultUncertainty): DifferenceUncertainty {
  const [first, second] = [one.combinedUncertainty, other.combinedUncertainty];
  if (first === undefined || second === undefined) {
    return { expandedUncertainty: Math.hypot(one.expandedUncertainty, other.expandedUncertainty), sameStandards: [] };
  }
  const same = (one.certificates ?? []).flatMap((certificate) => {
    const again = other.certificates?.find((found) => isSame(found, certificate));
    return again === undefined ? [] : [{ ...certificate, again: again.standardUncertainty }];
  });
  const common = same.reduce((sum, { standardUncertainty, again }) => sum + 2 * standardUncertainty * again, 0);
  // A certificate that is all there is leaves a rounding, which may lie below zero.
  const variance = Math.max(0, first ** 2 + second ** 2 - common);
  const spread = spreadOf(first, one) + spreadOf(second, other);
  const degreesOfFreedom = spread === 0 || variance === 0 ? Number.POSITIVE_INFINITY : variance ** 2 / spread;
  return {
    expandedUncertainty: studentTFactor(Math.max(1, degreesOfFreedom)) * Math.sqrt(variance),
    sameStandards: same.map(({ standard }) => standard),
  };
}

function isSame(one: CertificatePart, other: CertificatePart): boolean {
  return one.standard === other.standard && one.certificate === other.certificate;
}

function spreadOf(combinedUncertainty: number, { effectiveDegreesOfFreedom }: ResultUncertainty): number {
  return combinedUncertainty ** 4 / (effectiveDegreesOfFreedom ?? Number.POSITIVE_INFINITY);
}
