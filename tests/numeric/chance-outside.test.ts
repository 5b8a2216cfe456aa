import { describe, expect, test } from "vitest";
import { chanceOutside, chancesOutside } from "../../src/numeric/chance-outside.ts";
import { normalCumulative } from "../../src/numeric/normal-distribution.ts";

const result = { low: -2, high: 2, common: 0, own: 1, count: 1 };

test("two results on their own: 1 − 0.9545²", () => {
  const inside = 1 - 2 * normalCumulative(-2);
  expect(Math.abs(chanceOutside([{ ...result, count: 2 }]) - (1 - inside ** 2))).toBeLessThan(1e-15);
});

test("one result is that of a normal deviation, whatever it shares; groups of one reading too", () => {
  const one = chanceOutside([{ low: -1, high: 2, common: 0.6, group: 0, own: 0.8, count: 1 }]);
  expect(Math.abs(one - normalCumulative(-2) - normalCumulative(-1))).toBeLessThan(1e-15);
});

describe("of results that share something", () => {
  test("both above their middle: one third, as of a correlation of one half (Sheppard 1899: 1/4 + asin(r)/2π)", () => {
    const share = Math.SQRT1_2;
    const above = { low: Number.NEGATIVE_INFINITY, high: 0, common: share, own: share, count: 2 };
    // At least one above is 1 less both below.
    expect(Math.abs(chanceOutside([above]) - 2 / 3)).toBeLessThan(1e-12);
  });

  test("the same where a group of its own shares it, and no other", () => {
    const share = Math.SQRT1_2;
    const above = { low: Number.NEGATIVE_INFINITY, high: 0, common: 0, group: share, own: share, count: 2 };
    expect(Math.abs(chanceOutside([above]) - 2 / 3)).toBeLessThan(1e-12);
    expect(Math.abs(chanceOutside([above], { groups: 2 }) - (1 - 1 / 9))).toBeLessThan(1e-12);
  });

  test("what shares everything is outside together: as one, to three digits", () => {
    const together = chanceOutside([{ low: -2, high: 2, common: 1, own: 0, count: 50 }]);
    expect(Math.abs(together / (2 * normalCumulative(-2)) - 1)).toBeLessThan(2e-2);
  });

  test("a small chance keeps its digits", () => {
    const apart = chanceOutside([{ low: -9, high: 9, common: 0.1, own: 1, count: 1 }, result]);
    expect(Math.abs(apart - 2 * normalCumulative(-2))).toBeLessThan(1e-12);
    const small = chanceOutside([{ low: -8, high: 8, common: 0.3, own: Math.sqrt(0.91), count: 2 }]);
    expect(small / (4 * normalCumulative(-8))).toBeGreaterThan(0.999);
    expect(small / (4 * normalCumulative(-8))).toBeLessThanOrEqual(1 + 1e-9);
  });
});

test("what does not deviate is refused", () => {
  expect(() => chanceOutside([{ ...result, own: 0 }])).toThrow(RangeError);
});

test("where a result is sure it need not be worked out: the same but for the tails beyond, whatever the limits", () => {
  const results = [
    { low: -1, high: 1.2, common: 0.1, group: 0.2, own: 0.05, count: 2 },
    { low: -0.9, high: 1, common: 0.12, group: 0, own: 0.15, count: 1 },
  ];
  const [all, sure] = [chancesOutside(results, { groups: 3 }), chancesOutside(results, { groups: 3, sure: 6.5 })];
  for (const shift of [-3, -1, -0.8, 0, 0.3, 0.7, 1, 4]) {
    // Three groups of three results, each but for 8e-11.
    expect(Math.abs(all(shift) - sure(shift))).toBeLessThan(1e-9);
    const shifted = results.map((one) => ({ ...one, low: one.low - shift, high: one.high - shift }));
    expect(Math.abs(all(shift) - chanceOutside(shifted, { groups: 3 }))).toBeLessThan(1e-14);
  }
});
