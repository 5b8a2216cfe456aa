import { expect, test } from "vitest";
import { parabolaWeights } from "../../src/numeric/parabola-weights.ts";

// Through three points the parabola is Lagrange's: y(3) = y(0) − 3 y(1) + 3 y(2).
test("three points give the polynomial through them", () => {
  parabolaWeights([0, 1, 2], 3).forEach((weight, place) => {
    expect(weight).toBeCloseTo([1, -3, 3][place] ?? Number.NaN, 12);
  });
});

test("a parabola is read exactly, anywhere, from uneven places far from zero", () => {
  const abscissas = [0, 1, 3, 4, 7].map((x) => 1e6 + x);
  const parabola = (x: number) => 2 - 3 * (x - 1e6) + 0.5 * (x - 1e6) ** 2;
  for (const at of [1e6 - 2, 1e6 + 3, 1e6 + 9]) {
    const read = parabolaWeights(abscissas, at).reduce((sum, w, place) => sum + w * parabola(abscissas[place] ?? 0), 0);
    expect(Math.abs(read - parabola(at))).toBeLessThan(1e-8);
  }
});

test("the weights sum to one", () => {
  const sum = parabolaWeights([0, 2, 5, 9, 10], 14).reduce((total, weight) => total + weight, 0);
  expect(sum).toBeCloseTo(1, 12);
});
