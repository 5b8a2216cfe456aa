import { expect, test } from "vitest";
import { loopOf } from "../../../src/analysis/readings/loop.ts";
import { railedReadings } from "../../../src/analysis/readings/railed-readings.ts";
import { stagedReadings } from "../../../src/analysis/stages/staged-readings.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import type { Instrument } from "../../../src/model/instrument.ts";

function loop(signalLower: number, signalUpper: number, signalUnit: "mA" | "V") {
  return loopOf({
    ...{ tag: "LT-1", rangeLower: 200, rangeUpper: 2000, distanceUnit: "mm", signalLower, signalUpper, signalUnit },
    ...{ tolerance: 0.5, toleranceBasis: "percent of span" },
  } as Instrument);
}

/** Nine points out and back twice; `signal` of the part of the range, 0 to 1, and of how often it was read. */
function railedIn(of: ReturnType<typeof loop>, signal: (part: number, place: number) => number, points = 9) {
  const parts = Array.from({ length: points }, (_, place) => place / (points - 1));
  const readings = [1, 2].flatMap((cycle) =>
    [
      ...parts.map((part) => [part, "rising"] as const),
      ...parts.toReversed().map((part) => [part, "falling"] as const),
    ].map(
      ([part, direction], place): Reading => ({
        ...{ calibration: "C-1", phase: "as_found", direction, cycle, reference: 200 + 1800 * part },
        signal: Number((signal(part, place) + ((7 * place + cycle) % 5) / 1000 - 0.002).toFixed(3)),
      }),
    ),
  );
  const { readings: staged } = stagedReadings(readings, of);
  const step = 0.1 / Math.abs(of.characteristics.signal.outputAtUpper - of.characteristics.signal.outputAtLower);
  const indexes = railedReadings(staged, { loop: of, step, mattering: 0.25 }).map(({ index }) => index);
  return [...new Set(staged.filter(({ index }) => indexes.includes(index)).map(({ percent }) => percent.reference))];
}

const milliamps = loop(4, 20, "mA");
const volts = loop(0, 10, "V");
/** NAMUR NE 43: 3.8 to 20.5 mA is measurement. */
const limited = (signal: number) => Math.min(20.5, Math.max(3.8, signal));

test("a shift up and one down rail one end of 4–20 mA, at the levels of NAMUR NE 43", () => {
  expect(railedIn(milliamps, (part) => limited(4 + 16 * part + 0.8))).toEqual([100]);
  expect(railedIn(milliamps, (part) => limited(4 + 16 * part - 0.4))).toEqual([0]);
  expect(railedIn(loop(20, 4, "mA"), (part) => limited(20 - 16 * part - 0.4))).toEqual([100]);
});

test("a voltage cannot go below 0 V, and stops somewhere above its upper end", () => {
  expect(railedIn(volts, (part) => Math.max(0, 10 * part - 0.1))).toEqual([0]);
  expect(railedIn(volts, (part) => Math.min(10.3, 10 * part + 0.5))).toEqual([100]);
});

test("an output of both signs has no true zero at its low end: there its numbers are numbers", () => {
  const bothSigns = loop(-10, 10, "V");
  expect(railedIn(bothSigns, (part) => -10 + 20 * part + (part === 0 ? 0.15 : 0))).toEqual([]);
  expect(railedIn(loop(10, -10, "V"), (part) => 10 - 20 * part + (part === 1 ? 0.3 : 0))).toEqual([]);
  expect(railedIn(bothSigns, (part) => Math.max(-10.2, -10 + 20 * part - 0.6))).toEqual([0]);
});

test("one reading beside zero that noise put farther in than its fellows is a number", () => {
  // 0.009 V is 0.09 % of span, where the others read 0.003 to 0.007 V and the line of the rest says 0.
  const once = (part: number, place: number) => (part > 0 ? 10 * part : place === 0 ? 0.01 : 0.005);
  expect(railedIn(volts, once)).toEqual([]);
});

test("a signal that stands still at its nominal end while the reference moves is railed", () => {
  expect(railedIn(milliamps, (part) => Math.min(20, 4 + 16 * part + 3))).toEqual([87.5, 100]);
});

test("where every reading stands at the end there are no others to say so: all are railed while the reference moves", () => {
  expect(railedIn(milliamps, () => 20.5)).toEqual([0, 12.5, 25, 37.5, 50, 62.5, 75, 87.5, 100]);
  expect(railedIn(milliamps, (part) => 20.5 + 0.01 * part, 2)).toEqual([0, 100]);
  expect(railedIn(milliamps, () => 12)).toEqual([]);
});

test("healthy ends are no rails, nor is what the line of the others asks for", () => {
  expect(railedIn(volts, (part) => 10 * part)).toEqual([]);
  expect(railedIn(milliamps, (part) => 4 + 16 * part)).toEqual([]);
  expect(railedIn(milliamps, (part) => 4 + 16 * part + 0.5)).toEqual([]);
});

test("nothing tells where too few others are left", () => {
  expect(railedIn(volts, () => 0)).toEqual([]);
});

test("a reading beside its fellows at the end of the signal is no rail because its reference was noted wrong", () => {
  const readings = [1, 2].flatMap((cycle) =>
    [0, 0.25, 0.5, 0.75, 1].map((part): Reading => {
      const reference = 200 + 1800 * part;
      return {
        ...{ calibration: "C-1", phase: "as_found", direction: "rising", cycle, point: reference },
        ...{ reference: cycle === 2 && part === 1 ? 20_000 : reference, signal: 10 * part + cycle / 1000 },
      };
    }),
  );
  const { readings: staged } = stagedReadings(readings, volts);
  expect(railedReadings(staged, { loop: volts, step: 0.01, mattering: 0.25 })).toEqual([]);
});
