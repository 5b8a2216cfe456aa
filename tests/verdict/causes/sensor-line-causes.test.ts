import { expect, test } from "vitest";
import { sensorLineCauses } from "../../../src/verdict/causes/sensor-line-causes.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
import { nothingWrong, planted, rowsOf } from "./planted.ts";

/** About the face, which is 200 mm before the range of 1000 mm. */
const aboutFace = (gain: number) => (part: number) => gain * (part + 0.2) - 0.2;
const warmer = Math.sqrt(293.15 / 303.15);
const ultrasonic = { instrument: { principle: "ultrasonic", taughtAt: 20 } as const };

test("row 8: a slope taught the other way round; row 10: a shift; row 21: an end taught wrong", () => {
  expect(rowsOf(sensorLineCauses, planted({ seen: (part) => 1 - part }))).toEqual([8]);
  expect(rowsOf(sensorLineCauses, planted({ seen: (part) => part + 0.02 }))).toEqual([10]);
  expect(sensorLineCauses(planted({ seen: (part) => 1.02 * part }))[0]?.says).toContain(
    "far end that was taught wrong",
  );
  expect(sensorLineCauses(planted({ seen: (part) => part + 0.02 * (1 - part) }))[0]?.says).toContain(
    "near end that was",
  );
});

test("row 20 wants the air that the thermometer showed: 30 °C for a sensor taught at 20 °C", () => {
  const air = (airTemperature?: number) =>
    planted(
      { seen: aboutFace(warmer) },
      { ...ultrasonic, calibration: airTemperature === undefined ? {} : { airTemperature } },
    );
  expect(sensorLineCauses(air(30))[0]).toMatchObject({ row: 20 });
  expect(sensorLineCauses(air())[0]).toMatchObject({
    row: 20,
    separatedBy: expect.stringContaining("air temperature"),
  });
  expect(sensorLineCauses(air(15))[0]?.row).not.toBe(20);
});

test("row 24: an optical sensor that reads long about its face; 10° make 1.54 %", () => {
  const [finding] = sensorLineCauses(
    planted(
      { seen: aboutFace(1 / Math.cos(Math.PI / 18)) },
      { instrument: { principle: "laser" }, calibration: { targetTilt: 10 } },
    ),
  );
  expect(finding?.row).toBe(24);
  const [angle, stated] = finding?.evidence.filter(({ unit }) => unit === "°") ?? [];
  // Noise of 0.02 % over 44 readings leaves the gain within 0.0002, and the angle within 0.1° there.
  expect(Math.abs((angle?.value ?? 0) - 10)).toBeLessThan(0.1);
  expect(stated?.value).toBe(10);
});

test("row 12: a leakage across two wires; a shift on two wires keeps it as a rival", () => {
  const twoWires = { instrument: { loopPowered: true } };
  const leaked = planted({ signal: (signal) => signal + (24 - 0.3 * signal) / 50 }, twoWires);
  expect(sensorLineCauses(leaked)).toMatchObject([{ row: 12, stage: "wiring" }]);
  expect(sensorLineCauses(planted({ seen: (part) => part + 0.02 }, twoWires))[0]?.rivals.join()).toContain("(12)");
});

test("row 14: 1 to 5 V too small about 0 V; on 0 to 10 V an end taught wrong cannot be told from it", () => {
  const loaded = { signal: (volts: number) => 0.98 * volts };
  expect(rowsOf(sensorLineCauses, planted(loaded, { kind: signalKinds["1–5"] }))).toEqual([14]);
  const [finding] = sensorLineCauses(planted(loaded, { kind: signalKinds["0–10"] }));
  expect(finding).toMatchObject({ row: 21 });
  expect(finding?.rivals.join()).toContain("(14)");
});

test("a line through none of these places is that of both ends taught wrong, or of two faults", () => {
  const [finding] = sensorLineCauses(planted({ seen: (part) => part + 0.03 * (part - 0.4) }));
  expect(finding).toMatchObject({ row: 21, title: "both ends of the range taught wrong" });
});

test("nothing is found on a healthy loop, nor where the controller alone is wrong", () => {
  expect(rowsOf(sensorLineCauses, planted(nothingWrong))).toEqual([]);
  expect(rowsOf(sensorLineCauses, planted({ value: (part) => part + 0.05 }))).toEqual([]);
});
