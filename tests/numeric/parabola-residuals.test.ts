import { expect, test } from "vitest";
import { parabolaResiduals } from "../../src/numeric/parabola-residuals.ts";

test("a parabola leaves nothing, far from zero too", () => {
  const abscissas = [0, 1, 3, 4, 7].map((x) => 1e6 + x);
  const residuals = parabolaResiduals(
    abscissas,
    abscissas.map((x) => 2 - 3 * (x - 1e6) + 0.5 * (x - 1e6) ** 2),
  );
  for (const residual of residuals) expect(Math.abs(residual)).toBeLessThan(1e-9);
});

// By hand: 0, 0, 1, 0, 0 at −2 … 2 has the mean 0.2 and, on the orthogonal 2, −1, −2, −1, 2, the bend −2/14.
test("what a parabola leaves of a peak in the middle of five", () => {
  const [first, second, middle] = parabolaResiduals([-2, -1, 0, 1, 2], [0, 0, 1, 0, 0]);
  expect(first).toBeCloseTo(-0.2 + (2 * 2) / 14, 12);
  expect(second).toBeCloseTo(-0.2 - 2 / 14, 12);
  expect(middle).toBeCloseTo(0.8 - 4 / 14, 12);
});
