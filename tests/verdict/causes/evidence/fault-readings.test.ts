import { expect, test } from "vitest";
import type { Reading } from "../../../../src/model/calibration.ts";
import { faultReadings } from "../../../../src/verdict/causes/evidence/fault-readings.ts";
import { signalKinds } from "../../../computed/faults/faulty-loop.ts";
import { planted } from "../planted.ts";

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

test("no voltage near the end at which the signal is zero is what a lag makes as well", () => {
  const { readings, loop } = planted(
    {
      signal: (signal, { part, direction }) =>
        part < 0.05 && direction === "falling" ? 0.3 : part < 0.05 ? 0 : signal,
    },
    { kind: signalKinds["0–10"], cycles: 3 },
  );
  expect(faultReadings(readings, loop)).toEqual([]);
});

test("a value that is limited at its end contradicts no fault signal: it would stand there whatever the signal is", () => {
  const { readings, loop } = planted({
    signal: (signal, { part, cycle }) => (cycle === 2 && part > 0.95 ? 21.5 : signal),
    value: (part) => Math.min(1, Math.max(0, part)),
  });
  expect(faultReadings(readings, loop)).toHaveLength(2);
});
