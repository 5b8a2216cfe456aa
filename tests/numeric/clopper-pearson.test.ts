import { expect, test } from "vitest";
import { clopperPearson } from "../../src/numeric/clopper-pearson.ts";

/** Probability of at most k successes in n trials at a rate, by the sum itself. */
function atMost(k: number, n: number, rate: number): number {
  let term = (1 - rate) ** n;
  let sum = term;
  for (let index = 1; index <= k; index += 1) {
    term *= ((n - index + 1) / index) * (rate / (1 - rate));
    sum += term;
  }
  return sum;
}

test("3 of 20 at 95 % is 0.0321 to 0.3789", () => {
  // R 4.2.2, binom.test(3, 20)$conf.int: 0.03207093719 0.37892682655, a program independent of this one.
  const { low, high } = clopperPearson(3, 20);
  expect(Math.abs(low - 0.03207093719)).toBeLessThan(5e-12); // digits as R printed them
  expect(Math.abs(high - 0.37892682655)).toBeLessThan(5e-12);
});

test.each([
  [1, 2],
  [3, 20],
  [17, 20],
  [1, 200],
  [150, 200],
])("at either end of %i of %i the binomial sum leaves one half of the 5 %%", (successes, trials) => {
  const { low, high } = clopperPearson(successes, trials);
  // The defining equations: 1e-9 relative, which the digits of the quantile allow.
  expect(Math.abs((1 - atMost(successes - 1, trials, low)) / 0.025 - 1)).toBeLessThan(1e-9);
  expect(Math.abs(atMost(successes, trials, high) / 0.025 - 1)).toBeLessThan(1e-9);
});

test("none of n and all of n have closed forms", () => {
  for (const n of [1, 5, 29, 300]) {
    // (1 − p)ⁿ = 0.025
    const closed = 1 - 0.025 ** (1 / n);
    expect(clopperPearson(0, n).low).toBe(0);
    expect(Math.abs(clopperPearson(0, n).high / closed - 1)).toBeLessThan(1e-9);
    expect(clopperPearson(n, n).high).toBe(1);
    expect(Math.abs(clopperPearson(n, n).low - (1 - closed))).toBeLessThan(1e-9);
  }
});

test("more confidence is a wider interval", () => {
  const [wide, narrow] = [clopperPearson(9, 10, 0.99), clopperPearson(9, 10, 0.9)];
  expect(wide.low).toBeLessThan(narrow.low);
  expect(wide.high).toBeGreaterThan(narrow.high);
});

test("what is no rate is refused", () => {
  for (const [successes, trials] of [
    [-1, 5],
    [6, 5],
    [0, 0],
    [1.5, 5],
    [Number.NaN, 5],
  ] as const)
    expect(() => clopperPearson(successes, trials)).toThrow(RangeError);
  for (const confidence of [0, 1, Number.NaN]) expect(() => clopperPearson(1, 2, confidence)).toThrow(RangeError);
});
