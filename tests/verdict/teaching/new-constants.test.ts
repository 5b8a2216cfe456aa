import { expect, test } from "vitest";
import { correctedDistance } from "../../../src/analysis/figures/two-constant-correction.ts";
import { idealOutput, indicatedDistance } from "../../../src/analysis/readings/ideal-characteristic.ts";
import { newConstantsOf } from "../../../src/verdict/teaching/new-constants.ts";
import { expectNear, loop, signalLoop } from "../../analysis/sample-loop.ts";

const correction = Object.freeze({ lower: -2, upper: 98 });
const range = { rangeLower: 0, rangeUpper: 100 };

test("a signal that stands for 2 mm too much: the controller should be told 4.32 and 20.32 mA", () => {
  const found = newConstantsOf("signal", correction, signalLoop);
  expect(found).toMatchObject({ kind: "inputs at range ends", of: "signal" });
  if (!("atLower" in found)) throw new Error("no ends");
  expectNear(found.atLower, 4.32, 1e-14); // a rounding of numbers near 20
  expectNear(found.atUpper, 20.32, 1e-14);
});

test("constants typed in at the counts give the corrected distance at every count, whatever was there before", () => {
  const found = newConstantsOf("counts", { lower: 1.5, upper: 96 }, loop);
  if (!("countsLower" in found)) throw new Error("no values");
  for (const counts of [0, 5000, 27648, 30000]) {
    const part = (counts - found.countsLower) / (found.countsUpper - found.countsLower);
    const shown = found.valueLower + part * (found.valueUpper - found.valueLower);
    const before = indicatedDistance(loop.characteristics.counts!, counts);
    const after = correctedDistance(before, { lower: 1.5, upper: 96 }, range);
    expectNear(shown, idealOutput(loop.characteristics.value!, after), 1e-13);
  }
});

test("offset and gain of values correct any constant the controller may hold now", () => {
  const found = newConstantsOf("value", { lower: 1.5, upper: 96 }, loop);
  if (!("gain" in found)) throw new Error("no gain");
  expectNear(found.offset + found.gain * 0, found.valueLower, 1e-14);
  expectNear(found.offset + found.gain * 10, found.valueUpper, 1e-13);
  // The controller holds 0.5 and 9 now: a reading of its own line is corrected like its constants.
  const [now, later] = [[0.5, 9], [0.5, 9].map((constant) => found.offset + found.gain * constant)] as [
    number[],
    number[],
  ];
  for (const part of [0, 0.3, 1]) {
    const before = now[0]! + part * (now[1]! - now[0]!);
    const after = later[0]! + part * (later[1]! - later[0]!);
    const distance = correctedDistance(before * 10, { lower: 1.5, upper: 96 }, range);
    expectNear(after * 10, distance, 1e-12);
  }
});

test("a scale from 100 to 0 for 0 to 100 mm: what stood for 2 mm too much is lowered by −2 mm, 2 on the scale", () => {
  const value = { rangeLower: 0, rangeUpper: 100, outputAtLower: 100, outputAtUpper: 0 };
  const turned = { ...loop, characteristics: { ...loop.characteristics, value } };
  const found = newConstantsOf("value", { lower: -2, upper: 98 }, turned);
  expect(found).toEqual({ kind: "values in place of others", offset: 2, gain: 1, valueLower: 102, valueUpper: 2 });
});

test("counts without a controller scale are told at the range ends", () => {
  const { value: _, ...characteristics } = loop.characteristics;
  const found = newConstantsOf("counts", correction, { ...loop, characteristics });
  expect(found).toMatchObject({ kind: "inputs at range ends", of: "counts" });
  expect(newConstantsOf("value", correction, { ...loop, characteristics })).toHaveProperty("notDetermined");
});

test("a signal that does not follow the distance has no ends", () => {
  expect(newConstantsOf("signal", { lower: 5, upper: 5 }, signalLoop)).toHaveProperty("notDetermined");
});
