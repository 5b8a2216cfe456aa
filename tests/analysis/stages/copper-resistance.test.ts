import { expect, test } from "vitest";
import { type Core, copperResistance, gaugeSection } from "../../../src/analysis/stages/copper-resistance.ts";
import { readColumns, readExpected } from "../../published/read-data.ts";

const table = readColumns("copper-conductors");
const solid = readExpected<Readonly<Record<string, number>>>("copper-conductors", "solid-or-stranded.json");
const gauges = readColumns("wire-gauges");

const core = (sectionSquareMillimetres: number, conductor: "flexible" | "flexible tinned" | "solid or stranded") =>
  ({ sectionSquareMillimetres, conductor }) satisfies Core;

test("every cross-section has the resistance of IEC 60228 and DIN VDE 0295, exactly as their tables print it", () => {
  for (const [index, section] of table.square_millimetres?.entries() ?? []) {
    expect(copperResistance(core(section, "flexible"), 20)).toBe(table.flexible?.[index]);
    expect(copperResistance(core(section, "flexible tinned"), 20)).toBe(table.flexible_tinned?.[index]);
  }
  expect(table.square_millimetres).toHaveLength(8);
  for (const [section, ohms] of Object.entries(solid)) {
    expect(copperResistance(core(Number(section), "solid or stranded"), 20)).toBe(ohms);
  }
});

test("a wire gauge has the cross-section and the resistance of a published table, within half of its last digit", () => {
  for (const [index, gauge] of gauges.gauge?.entries() ?? []) {
    const [area = 0, ohms = 0, areaDigit = 0, ohmsDigit = 0] = [
      gauges.square_millimetres?.[index],
      gauges.ohms_per_kilometre?.[index],
      gauges.area_last_digit?.[index],
      gauges.resistance_last_digit?.[index],
    ];
    expect(Math.abs(gaugeSection(gauge) - area)).toBeLessThanOrEqual(areaDigit / 2);
    expect(Math.abs((copperResistance({ wireGauge: gauge }, 20) as number) - ohms)).toBeLessThanOrEqual(ohmsDigit / 2);
  }
  expect(gauges.gauge).toHaveLength(8);
});

test("three gauges finer have half of the cross-section, nearly: 92^(−6/39) by logarithms", () => {
  // Another road: exp(−6/39 · ln 92) = 0.49875; relative tolerance of a few roundings.
  const ratio = gaugeSection(25) / gaugeSection(22);
  expect(Math.abs(ratio / Math.exp((-6 / 39) * Math.log(92)) - 1)).toBeLessThan(1e-14);
});

test("copper at 50 °C has the resistance of IEC 60228's factor 0.893 within 0.003, for that rounds 0.00393 to 0.004", () => {
  const cold = copperResistance(core(1, "flexible"), 20) as number;
  const warm = copperResistance(core(1, "flexible"), 50) as number;
  expect(Math.abs(cold / warm - 0.893)).toBeLessThan(0.003);
  // 1 + 0.00393 · 30 = 1.1179 by hand; within rounding of the product.
  expect(Math.abs(warm / cold - 1.1179)).toBeLessThan(1e-14);
});

test("a size that no table lists is not interpolated, and no gauge is finer than 40", () => {
  expect(copperResistance(core(0.22, "flexible"), 20)).toEqual({
    notDetermined:
      "no table value for a flexible core of 0.22 mm²; there are 0.14, 0.25, 0.34, 0.5, 0.75, 1, 1.5, 2.5 mm²",
  });
  expect(copperResistance(core(0.34, "solid or stranded"), 20)).toHaveProperty("notDetermined");
  expect(copperResistance({ wireGauge: 41 }, 20)).toHaveProperty("notDetermined");
  expect(copperResistance({ wireGauge: 40 }, 20)).not.toHaveProperty("notDetermined");
});

test("the examples of the docblocks", () => {
  expect(copperResistance({ sectionSquareMillimetres: 0.75, conductor: "flexible" }, 20)).toBe(26);
  expect(gaugeSection(36)).toBe((Math.PI / 4) * 0.127 ** 2);
});
