import { expect, test } from "vitest";
import { loopOf } from "../../../src/analysis/readings/loop.ts";
import type { Instrument } from "../../../src/model/instrument.ts";

const instrument: Instrument = Object.freeze({
  tag: "LT-1",
  rangeLower: 0,
  rangeUpper: 100,
  distanceUnit: "mm",
  signalLower: 4,
  signalUpper: 20,
  signalUnit: "mA",
  tolerance: 1,
  toleranceBasis: "percent of span",
});

test("a 4 to 20 mA loop that names no fault levels has 3.6 and 21 mA", () => {
  expect(loopOf(instrument).faultLevels).toEqual({ low: 3.6, high: 21 });
});

test.each<[string, Partial<Instrument>, object]>([
  ["a reverse-acting 20 to 4 mA loop too", { signalLower: 20, signalUpper: 4 }, { low: 3.6, high: 21 }],
  ["0 to 20 mA has none", { signalLower: 0 }, {}],
  ["4 to 12 mA has none", { signalUpper: 12 }, {}],
  ["4 to 20 V has none", { signalUnit: "V" }, {}],
  ["one that is named leaves the other", { faultLow: 3.7 }, { low: 3.7, high: 21 }],
  ["whichever it is", { faultHigh: 22 }, { low: 3.6, high: 22 }],
  ["and none where the signal has none", { faultHigh: 22, signalLower: 0 }, { high: 22 }],
  ["both that are named", { faultLow: 0.5, faultHigh: 4.8, signalUnit: "V" }, { low: 0.5, high: 4.8 }],
])("fault levels: %s", (_, changed, levels) => {
  expect(loopOf({ ...instrument, ...changed }).faultLevels).toEqual(levels);
});

test("only a stage whose two ends are given has a line", () => {
  expect(Object.keys(loopOf(instrument).characteristics)).toEqual(["signal"]);
  expect(Object.keys(loopOf({ ...instrument, countsLower: 0 }).characteristics)).toEqual(["signal"]);
  const { characteristics } = loopOf({
    ...instrument,
    countsLower: 0,
    countsUpper: 27648,
    valueLower: 10,
    valueUpper: 0,
  });
  expect(characteristics).toEqual({
    signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 },
    counts: { rangeLower: 0, rangeUpper: 100, outputAtLower: 0, outputAtUpper: 27648 },
    value: { rangeLower: 0, rangeUpper: 100, outputAtLower: 10, outputAtUpper: 0 },
  });
});

test("a tolerance that names no lower side is the same on both; a second one needs its basis", () => {
  expect(loopOf(instrument).toleranceTerms).toEqual([{ basis: "percent of span", plus: 1, minus: 1 }]);
  expect(loopOf({ ...instrument, toleranceMinus: 2, secondTolerance: 3 }).toleranceTerms).toEqual([
    { basis: "percent of span", plus: 1, minus: 2 },
  ]);
  const both = { secondTolerance: 3, secondToleranceBasis: "distance", secondToleranceMinus: 4 } as const;
  expect(loopOf({ ...instrument, ...both }).toleranceTerms[1]).toEqual({ basis: "distance", plus: 3, minus: 4 });
});
