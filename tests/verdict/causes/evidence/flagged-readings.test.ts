import { expect, test } from "vitest";
import type { Reading } from "../../../../src/model/calibration.ts";
import {
  countedTwice,
  faultReadings,
  heldStageReadings,
  stagePlateaus,
} from "../../../../src/verdict/causes/evidence/flagged-readings.ts";
import { signalKinds } from "../../../computed/faults/faulty-loop.ts";
import { planted } from "../planted.ts";

const ends = { stage: "sensor", input: "reference", output: "signal" } as const;

test("readings at 3.5 mA report a fault, and only those", () => {
  const { readings, loop } = planted({
    signal: (signal, { part, cycle }) => (cycle === 2 && part > 0.75 ? 3.5 : signal),
  });
  const faults = faultReadings(readings, loop);
  expect(faults).toHaveLength(6);
  for (const index of faults) expect(readings[index]?.reading.signal).toBe(3.5);
});

test("a signal below 3.6 mA that lies on the line of the others is a measurement after all", () => {
  const { readings, loop } = planted({ seen: (part) => 1.25 * part - 0.25 });
  expect(readings.some(({ reading }) => (reading.signal ?? 9) < 3.6)).toBe(true);
  expect(faultReadings(readings, loop)).toEqual([]);
});

test("a current that no output gives, and one that counts or value of its row contradict, was noted wrong", () => {
  const faultsWith = (signal: number, missing: Parameters<typeof planted>[2] = []) => {
    const sheet = (readings: readonly Reading[]) => readings.with(4, { ...readings[4]!, signal });
    const { readings, loop } = planted({ sheet }, {}, missing);
    return faultReadings(readings, loop);
  };
  expect(faultsWith(1.59), "the value is right").toEqual([]);
  expect(faultsWith(1.59, ["value"])).toEqual([4]);
  expect(faultsWith(22, ["value"])).toEqual([4]);
  expect(faultsWith(113.58, ["value"])).toEqual([]);
  // A fault of the sensor is in the value as well.
  const { readings, loop } = planted({
    signal: (signal, { part, cycle }) => (cycle === 2 && part > 0.75 ? 3.5 : signal),
  });
  expect(faultReadings(readings, loop)).toHaveLength(6);
});

test("no voltage now and then is a fault of a signal from zero; once it may be a slip, and every time the end of the range", () => {
  const voltage = { kind: signalKinds["0–10"] };
  const silentAt = (isSilent: (part: number, cycle: number) => boolean) => {
    const { readings, loop } = planted(
      { signal: (signal, { part, cycle }) => (isSilent(part, cycle) ? 0.002 : signal) },
      voltage,
    );
    return faultReadings(readings, loop).map((index) => readings[index]!.reading.signal);
  };
  const twice = silentAt((part, cycle) => cycle === 2 && part > 0.45 && part < 0.65);
  expect(twice.length).toBeGreaterThan(1);
  expect(new Set(twice)).toEqual(new Set([0.002]));
  expect(silentAt(() => false)).toEqual([]);
  expect(silentAt((part) => part > 0.45 && part < 0.65)).toEqual([]);
  const { readings, loop } = planted({ sheet: (sheet) => sheet.with(4, { ...sheet[4]!, signal: 0 }) }, voltage);
  expect(faultReadings(readings, loop)).toEqual([]);
});

test("where no signal was read, the value at −2.5 % and below tells the fault", () => {
  const { readings, loop } = planted({ value: (part, { part: place }) => (place > 0.95 ? -0.03 : part) }, {}, [
    "signal",
  ]);
  expect(faultReadings(readings, loop)).toHaveLength(4);
});

test("twice the distance at the nearest points is an echo; a shift that doubles it is none", () => {
  const doubled = planted({ seen: (part) => (part < 0.15 ? 2 * (part + 0.2) - 0.2 : part) });
  expect(countedTwice(doubled.readings, "signal", doubled.loop)).toMatchObject({ factor: 2 });
  expect(doubled.echoes?.members).toHaveLength(8);
  const shifted = planted({ seen: (part) => part + 0.2 });
  expect(countedTwice(shifted.readings, "signal", shifted.loop)).toBeUndefined();
});

test("one held reading alone is none, for it may be a slip", () => {
  const hold = (many: number) => {
    let held = 0;
    return planted({
      signal: (signal, { part, signalBefore }) => (part > 0.5 && signalBefore && held++ < many ? signalBefore : signal),
    });
  };
  const one = hold(1);
  expect(heldStageReadings(ends, one.readings, 0.25, 0)).toEqual([]);
  expect(hold(3).held).toHaveLength(3);
});

test("a limit at 70 % makes a plateau of the three points beyond it", () => {
  const { readings } = planted({ seen: (part) => Math.min(part, 0.75) });
  expect(stagePlateaus(ends, readings, 0.25, 0).map(({ end, members }) => [end, members.length])).toEqual([
    ["upper", 12],
  ]);
});
