import { expect, test } from "vitest";
import { trapezoidalCoverageFactor } from "../../src/numeric/trapezoidal-coverage-factor.ts";

/** Half-width that holds the share, by adding up the density in small strips, over the standard deviation so found. */
function byStrips(edge: number, probability: number): number {
  const strips = 2_000_000;
  const height = (x: number) => (x <= edge ? 1 : (1 - x) / (1 - edge));
  const middle = (strip: number) => (strip + 0.5) / strips;
  let [area, square] = [0, 0];
  for (let strip = 0; strip < strips; strip += 1) {
    const x = middle(strip);
    area += height(x);
    square += height(x) * x ** 2;
  }
  let [inside, strip] = [0, 0];
  while (inside < probability * area) inside += height(middle(strip++));
  return strip / strips / Math.sqrt(square / area);
}

test("a rectangular quantity has k = 0.95·√3 = 1.6454482671904334, a triangular one 1.9018", () => {
  expect(Math.abs(trapezoidalCoverageFactor(1, 0.95) - 1.6454482671904334)).toBeLessThan(1e-15);
  expect(Math.abs(trapezoidalCoverageFactor(0, 0.95) - 1.9018)).toBeLessThan(0.5e-4);
});

test.each([
  [0, 0.95],
  [0.3, 0.95],
  [1 / 3, 0.9545],
  [0.9, 0.95],
  [0.95, 0.5],
  [1, 0.95],
  [1, 0.99],
])("edge parameter %d at %d agrees with a sum of strips", (edge, probability) => {
  // A strip is 5e-7 wide, up to 2.4 standard deviations to a half-width.
  expect(Math.abs(trapezoidalCoverageFactor(edge, probability) - byStrips(edge, probability))).toBeLessThan(3e-6);
});

test("both branches meet at p = 2β/(1 + β)", () => {
  const edge = 0.25;
  const meeting = (2 * edge) / (1 + edge);
  const [below, above] = [meeting - 1e-9, meeting + 1e-9];
  const jump = trapezoidalCoverageFactor(edge, above) - trapezoidalCoverageFactor(edge, below);
  // The factor rises by (1 + β)/2 over the deviation, 1.49, for each unit of probability.
  expect(Math.abs(jump / 2e-9 - 1.485)).toBeLessThan(1e-2);
});

test("edge parameters and probabilities that are none are refused", () => {
  for (const edge of [-0.1, 1.1, Number.NaN]) expect(() => trapezoidalCoverageFactor(edge, 0.95)).toThrow(RangeError);
  for (const probability of [0, 1, Number.NaN])
    expect(() => trapezoidalCoverageFactor(0.5, probability)).toThrow(RangeError);
});
