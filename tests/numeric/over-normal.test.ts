import { expect, test } from "vitest";
import { normalCumulative } from "../../src/numeric/normal-distribution.ts";
import { normalRule, overNormal } from "../../src/numeric/over-normal.ts";

const everywhere = { from: -9, insideFrom: 0, insideTo: 0, to: 9 };

test("weights sum to 1, moments are those of a normal distribution: 1, 0, 1, 0, 3", () => {
  const rule = normalRule(0.5, 8);
  for (const [power, moment] of [1, 0, 1, 0, 3].entries()) {
    // Beyond 8 standard deviations lies 1e-15, times 8^4.
    expect(Math.abs(overNormal(rule, everywhere, (z) => z ** power) - moment)).toBeLessThan(1e-10);
  }
});

test("Φ of a shifted quantity: ∫ φ(z) · Φ((z − a)/δ) dz = Φ(−a/√(1 + δ²))", () => {
  for (const [shift, scale] of [
    [0.7, 1],
    [1.5, 0.2],
    [-2, 0.02],
  ] as const) {
    const found = overNormal(normalRule(Math.min(0.5, scale / 2), 8), everywhere, (z) =>
      normalCumulative((z - shift) / scale),
    );
    expect(Math.abs(found - normalCumulative(-shift / Math.hypot(1, scale)))).toBeLessThan(1e-12);
  }
});

test("where the height is known it is not asked for, and the same comes out", () => {
  const [rule, scale] = [normalRule(0.005, 8), 0.01];
  const height = (z: number) => normalCumulative((z - 1) / scale) + normalCumulative((-2 - z) / scale);
  const asked: number[] = [];
  const known = { from: -2 - 8 * scale, insideFrom: -2 + 8 * scale, insideTo: 1 - 8 * scale, to: 1 + 8 * scale };
  const found = overNormal(rule, known, (z) => {
    asked.push(z);
    return height(z);
  });
  expect(Math.abs(found - overNormal(rule, everywhere, height))).toBeLessThan(1e-13);
  expect(
    Math.abs(found - normalCumulative(-1 / Math.hypot(1, scale)) - normalCumulative(-2 / Math.hypot(1, scale))),
  ).toBeLessThan(1e-12);
  expect(asked.length).toBeLessThan(4 * 8 * 2 + 4);
  expect(asked.every((z) => Math.abs(z - 1) < 0.081 || Math.abs(z + 2) < 0.081)).toBe(true);
});

test("all of it inside, all of it outside, and one place where nothing is shared", () => {
  const never = () => Number.NaN;
  const inside = { from: -Infinity, insideFrom: -Infinity, insideTo: Infinity, to: Infinity };
  const outside = { ...inside, to: -Infinity };
  for (const rule of [normalRule(0.5, 8), normalRule(1, 0)]) {
    expect(overNormal(rule, inside, never)).toBe(0);
    expect(overNormal(rule, outside, never)).toBe(1);
    expect(Math.abs(overNormal(rule, everywhere, () => 0.25) - 0.25)).toBeLessThan(1e-15);
  }
});
