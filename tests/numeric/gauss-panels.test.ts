import { expect, test } from "vitest";
import { gaussPanels } from "../../src/numeric/gauss-panels.ts";

const over = (bounds: readonly number[], f: (x: number) => number) =>
  gaussPanels(bounds).reduce((sum, { place, weight }) => sum + weight * f(place), 0);

test("powers up to 19 are exact in each panel", () => {
  for (let power = 0; power <= 19; power++) {
    expect(Math.abs(over([0, 1], (x) => x ** power) * (power + 1) - 1)).toBeLessThan(1e-13);
  }
  expect(Math.abs(over([0, 1, 3], (x) => x ** 2) - 9)).toBeLessThan(1e-12);
});

test("∫ e^(−x²) from −6 to 6 is √π", () => {
  expect(Math.abs(over([-6, -3, 0, 3, 6], (x) => Math.exp(-x * x)) / Math.sqrt(Math.PI) - 1)).toBeLessThan(1e-8);
});
