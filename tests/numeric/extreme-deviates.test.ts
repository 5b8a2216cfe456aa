import { describe, expect, it } from "vitest";
import { criticalDeviate, extremeDeviates } from "../../src/numeric/extreme-deviates.ts";

/**
 * B. Rosner, Technometrics 25, 165 (1983), as worked in NIST/SEMATECH e-Handbook 1.3.5.17.3: three outliers of at most
 * ten at 5 %, with R and λ printed to three decimals.
 */
const published = {
  values: [
    -0.25, 0.68, 0.94, 1.15, 1.2, 1.26, 1.26, 1.34, 1.38, 1.43, 1.49, 1.49, 1.55, 1.56, 1.58, 1.65, 1.69, 1.7, 1.76,
    1.77, 1.81, 1.91, 1.94, 1.96, 1.99, 2.06, 2.09, 2.1, 2.14, 2.15, 2.23, 2.24, 2.26, 2.35, 2.37, 2.4, 2.47, 2.54,
    2.62, 2.64, 2.9, 2.92, 2.92, 2.93, 3.21, 3.26, 3.3, 3.59, 3.68, 4.3, 4.64, 5.34, 5.42, 6.01,
  ],
  statistics: [3.118, 2.942, 3.179],
  criticals: [3.158, 3.151, 3.143],
};

describe("extremeDeviates", () => {
  it("finds the three outliers of the published example, of which the first alone would be missed", () => {
    const { outliers, steps } = extremeDeviates(published.values, 10, 0.05);
    expect(outliers.map((index) => published.values[index])).toEqual([6.01, 5.42, 5.34]);
    for (const [step, { statistic, critical }] of steps.slice(0, 3).entries()) {
      // Half a unit of the last printed digit; the handbook cuts 3.1588 and 3.1514, 3.1439 to 3.158, 3.151, 3.143.
      expect(Math.abs(statistic - published.statistics[step]!)).toBeLessThan(0.001);
      expect(critical - published.criticals[step]!).toBeGreaterThanOrEqual(0);
      expect(critical - published.criticals[step]!).toBeLessThan(0.001);
    }
  });

  it("finds nothing in a sample without one, and nothing where all values are equal", () => {
    expect(extremeDeviates([1, 2, 3, 4, 5, 6, 7], 3, 0.05).outliers).toEqual([]);
    expect(extremeDeviates([1, 1, 1, 1], 2, 0.05)).toEqual({ outliers: [], steps: [] });
  });

  it("refuses what is no sample", () => {
    expect(() => extremeDeviates([1, 2], 1, 0.05)).toThrow(RangeError);
    expect(() => extremeDeviates([1, 2, Number.NaN], 1, 0.05)).toThrow(RangeError);
    expect(() => extremeDeviates([1, 2, 3, 4], 3, 0.05)).toThrow(RangeError);
  });
});

describe("criticalDeviate", () => {
  it("is what scipy's quantile of Student's t gives for 54 values", () => {
    // The test of another implementation of the handbook's section, by scipy.stats.t.
    const byScipy = [3.1587939408872967, 3.1514300233157844, 3.1438896850317302, 3.1361649560574856];
    // 10 digits: the two libraries' quantiles agree to 12 or more.
    for (const [place, value] of byScipy.entries()) {
      expect(Math.abs(criticalDeviate(54, place + 1, 0.05) - value)).toBeLessThan(1e-10);
    }
  });
});
