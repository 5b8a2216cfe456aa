import { expect, test } from "vitest";
import { outputScales, referenceScales } from "../../../src/analysis/plausibility/scales.ts";
import { expectNear, loop, signalLoop } from "../sample-loop.ts";

const rounding = 1e-9;

test("references in other units of distance, in percent, and a range in another unit", () => {
  const scales = referenceScales(loop, "mm");
  const percent = (unit: string, written: number) =>
    scales.find((scale) => scale.unit === unit && scale.ofRange === undefined)?.percentOf(written);
  // 0 to 100 mm: 1 in is 25.4 mm, 0.25 ft is 76.2 mm.
  expectNear(percent("in", 1), 25.4, rounding);
  expectNear(percent("ft", 0.25), 76.2, rounding);
  expectNear(percent("cm", 5), 50, rounding);
  expectNear(percent("percent of span", 30), 30, rounding);
  const ofRange = scales.find((scale) => scale.unit === "cm" && scale.ofRange);
  // 500 mm in a range of 0 to 100 cm.
  expectNear(ofRange?.percentOf(500), 50, rounding);
});

test("a current in other units, over a resistor, and in the scales of the other quantities", () => {
  const percents = new Map(
    outputScales(loop, "signal", { distanceUnit: "mm", valueUnit: "kg" }).map(({ unit, percentOf }) => [
      unit,
      percentOf,
    ]),
  );
  // Half of 4 to 20 mA is 12 mA: 3 V over 250 Ω, 0.012 A; 5 V of 0 to 10; 13824 of 27648 counts; 5 of 0 to 10 kg.
  for (const [unit, written] of [
    ["V over 250 Ω", 3],
    ["A", 0.012],
    ["µA", 12000],
    ["V, 0 to 10", 5],
    ["counts", 13824],
    ["kg", 5],
    ["mm", 50],
  ] as const) {
    expectNear(percents.get(unit)?.(written), 50, rounding, unit);
  }
});

test("a reverse-acting signal is reverse in every unit", () => {
  const { signal } = signalLoop.characteristics;
  const reverse = { ...signalLoop, characteristics: { signal: { ...signal, outputAtLower: 20, outputAtUpper: 4 } } };
  const volts = outputScales(reverse, "signal", { distanceUnit: "mm" }).find(({ unit }) => unit === "V, 0 to 10");
  expectNear(volts?.percentOf(10), 0, rounding);
});

test("what has no line, and the scale that a column has anyway, are none of its other scales", () => {
  expect(outputScales(signalLoop, "value", { distanceUnit: "mm" })).toEqual([]);
  const units = outputScales(loop, "value", { distanceUnit: "mm", valueUnit: "kg" }).map(({ unit }) => unit);
  expect(units).toEqual(["mA", "counts", "mm"]);
});
