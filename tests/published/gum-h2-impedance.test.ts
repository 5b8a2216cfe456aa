import { expect, test } from "vitest";
import { fitLine } from "../../src/numeric/fit-line.ts";
import { mean } from "../../src/numeric/mean.ts";
import { sampleStandardDeviation } from "../../src/numeric/sample-standard-deviation.ts";
import { readColumns, readExpected } from "./read-data.ts";

type Expected = Record<"resistance" | "reactance" | "impedance", { value: number; standardUncertainty: number }> & {
  correlations: { resistanceReactance: number; resistanceImpedance: number; reactanceImpedance: number };
};

// GUM (JCGM 100:2008), H.2, by the second of its two ways: resistance, reactance and impedance of each set, and their means.
// Printed by the documentation of MSLNZ/GTC, docs/API/GUM_H2.rst (commit 6d606b1, MIT), from inputs that are rounded as
// the GUM prints them, which moves the uncertainties by up to one of their last digit, and the correlations by 0.01.
test("resistance, reactance and impedance from five sets of correlated readings", () => {
  const { V = [], I_mA = [], phi_rad = [] } = readColumns("gum-h2-impedance");
  const expected = readExpected<Expected>("gum-h2-impedance");
  const impedance = V.map((volts, set) => (1000 * volts) / I_mA[set]!);
  const resistance = impedance.map((ohms, set) => ohms * Math.cos(phi_rad[set]!));
  const reactance = impedance.map((ohms, set) => ohms * Math.sin(phi_rad[set]!));
  for (const [name, values] of Object.entries({ resistance, reactance, impedance })) {
    const { value, standardUncertainty } = expected[name as keyof typeof expected] as Expected["resistance"];
    const decimals = name === "resistance" ? 3 : 2;
    expect(Math.abs(mean(values) - value), name).toBeLessThan(0.5 * 10 ** -decimals);
    const uncertainty = sampleStandardDeviation(values) / Math.sqrt(values.length);
    expect(Math.abs(uncertainty - standardUncertainty), name).toBeLessThan(1.5 * 10 ** -decimals);
  }
  const correlation = (one: readonly number[], other: readonly number[]) => {
    const { slope, rSquared } = fitLine(one, other);
    return Math.sign(slope) * Math.sqrt(rSquared as number);
  };
  const { resistanceReactance, resistanceImpedance, reactanceImpedance } = expected.correlations;
  expect(Math.abs(correlation(resistance, reactance) - resistanceReactance)).toBeLessThan(0.011);
  expect(Math.abs(correlation(resistance, impedance) - resistanceImpedance)).toBeLessThan(0.011);
  expect(Math.abs(correlation(reactance, impedance) - reactanceImpedance)).toBeLessThan(0.011);
});
