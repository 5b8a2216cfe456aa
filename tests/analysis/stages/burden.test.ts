import fc from "fast-check";
import { expect, test } from "vitest";
import {
  cableResistance,
  greatestBurden,
  requiredSupply,
  totalResistance,
} from "../../../src/analysis/stages/burden.ts";
import { readExpected } from "../../published/read-data.ts";

const published =
  readExpected<
    Readonly<
      Record<"leastDeviceVoltage" | "currentAmperes" | "resistance" | "supplyVoltage" | "needed" | "margin", number>
    >
  >("loop-supply");

/** Sums and products of a few terms: a few roundings. */
const rounding = 1e-12;

test("12 V and 22 mA through 250 Ω need 17.5 V and leave 6.5 V of 24 V, as the worked example says", () => {
  const { leastDeviceVoltage, currentAmperes, resistance, supplyVoltage, needed, margin } = published;
  const found = requiredSupply(leastDeviceVoltage, currentAmperes, resistance);
  expect(Math.abs(found - needed)).toBeLessThan(rounding);
  expect(Math.abs(supplyVoltage - found - margin)).toBeLessThan(rounding);
});

test("a supply of 24 V drives 21 mA, the failure level of NAMUR NE 43, through 571.4 Ω beside a sensor of 12 V", () => {
  // 12 000 / 21 = 571.428571…, by long division.
  expect(Math.abs(greatestBurden(24, 12, 0.021) - 571.4285714285714)).toBeLessThan(rounding * 1000);
  expect(greatestBurden(11, 12, 0.021)).toBeLessThan(0);
});

test("the supply that a loop of the greatest burden needs is the supply itself", () => {
  const volts = fc.double({ min: 0, max: 60, noNaN: true });
  fc.assert(
    fc.property(volts, volts, (supply, least) => {
      const needed = requiredSupply(least, 0.021, greatestBurden(supply, least, 0.021));
      expect(Math.abs(needed - supply)).toBeLessThan(rounding);
    }),
    { seed: 20_261_125 },
  );
});

test("what is in series adds up, the cable there and back", () => {
  expect(totalResistance({ card: 250, barrier: 28, cable: 22 })).toBe(300);
  // 39.0 Ω/km (IEC 60228, 0.5 mm²) over 100 m: 3.9 Ω a core, two cores.
  expect(cableResistance(39, 100)).toBe(7.8);
});
