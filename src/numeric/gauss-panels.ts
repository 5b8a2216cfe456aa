/** A place of an integral, and its weight. */
export type WeightedPlace = { place: number; weight: number };

/** Ten points on −1 to 1: M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, table 25.4. */
const halfOfRule = [
  [0.1488743389816312, 0.2955242247147529],
  [0.4333953941292472, 0.2692667193099963],
  [0.6794095682990244, 0.219086362515982],
  [0.8650633666889845, 0.1494513491505806],
  [0.9739065285171717, 0.0666713443086881],
] as const;

/**
 * Places and weights that integrate a smooth function over panels, ten to a panel.
 *
 * @param bounds of the panels, rising
 * @returns Σ weight · f(place) is the integral of f from the first bound to the last; exact for polynomials of degree 19
 *   in each panel
 * Source: Gauss-Legendre rule of ten points, Abramowitz and Stegun 25.4.29.
 * @example gaussPanels([0, 1, 3]).reduce((sum, { place, weight }) => sum + weight * place ** 2, 0) // 9.000000000000
 */
export function gaussPanels(bounds: readonly number[]): readonly WeightedPlace[] {
  return bounds.slice(1).flatMap((to, index) => {
    const from = bounds[index] as number;
    const [middle, half] = [(from + to) / 2, (to - from) / 2];
    return halfOfRule.flatMap(([place, weight]) => [
      { place: middle - half * place, weight: half * weight },
      { place: middle + half * place, weight: half * weight },
    ]);
  });
}
