import { expect, test } from "vitest";
import {
  airTemperature,
  axisTilted,
  bothEndsTaughtWrong,
  datumShifted,
  endsTaughtWrong,
  otherGas,
  slopeTurnedRound,
  targetTilted,
  voltageOverloaded,
} from "../../../src/verdict/causes/sensor-line-causes.ts";
import { leakageAcrossLoop, shuntOrGainOff } from "../../../src/verdict/causes/wiring-causes.ts";
import { remedyOf } from "../../../src/verdict/recommendation/cause-remedy.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const sensorLineCauses = [
  airTemperature,
  otherGas,
  bothEndsTaughtWrong,
  datumShifted,
  endsTaughtWrong,
  slopeTurnedRound,
  axisTilted,
  targetTilted,
  voltageOverloaded,
  leakageAcrossLoop,
  shuntOrGainOff,
];

/** About the face, which is 200 mm before the range of 1000 mm. */
const aboutFace = (gain: number) => (part: number) => gain * (part + 0.2) - 0.2;
const warmer = Math.sqrt(293.15 / 303.15);
const ultrasonic = { instrument: { principle: "ultrasonic", taughtAt: 20 } as const };

test("a slope taught the other way round, a shift, an end taught wrong", () => {
  expect(idsOf(sensorLineCauses, planted({ seen: (part) => 1 - part }))).toEqual(["slope-turned-round"]);
  expect(idsOf(sensorLineCauses, planted({ seen: (part) => part + 0.02 }))).toEqual(["datum-shifted"]);
  expect(findingsOf(sensorLineCauses, planted({ seen: (part) => 1.02 * part }))[0]?.says).toContain(
    "far end that was taught wrong",
  );
  expect(findingsOf(sensorLineCauses, planted({ seen: (part) => part + 0.02 * (1 - part) }))[0]?.says).toContain(
    "near end that was",
  );
});

test("the temperature of the air wants the air that the thermometer showed: 30 °C for a sensor taught at 20 °C", () => {
  const air = (airTemperature?: number) =>
    planted(
      { seen: aboutFace(warmer) },
      { ...ultrasonic, calibration: airTemperature === undefined ? {} : { airTemperature } },
    );
  expect(findingsOf(sensorLineCauses, air(30))[0]).toMatchObject({ id: "air-temperature" });
  expect(findingsOf(sensorLineCauses, air())[0]).toMatchObject({
    id: "air-temperature",
    separatedBy: expect.stringContaining("air temperature"),
  });
  expect(findingsOf(sensorLineCauses, air(15))[0]?.id).not.toBe("air-temperature");
});

const reading = (gain: number, instrument: object, calibration: object = {}) =>
  findingsOf(sensorLineCauses, planted({ seen: aboutFace(gain) }, { instrument, calibration }))[0];

test("axis tilted: a sensor with a beam that reads long about its face; 10° make 1.54 %", () => {
  const gain = 1 / Math.cos(Math.PI / 18);
  const finding = reading(gain, { principle: "laser" }, { alignmentAngle: 10, targetTilt: 0 });
  expect(finding?.id).toBe("axis-tilted");
  const [angle, axis, target] = finding?.evidence.filter(({ unit }) => unit === "°") ?? [];
  // Noise of 0.02 % over 44 readings leaves the gain within 0.0002, and the angle within 0.1° there.
  expect(Math.abs((angle?.value ?? 0) - 10)).toBeLessThan(0.1);
  expect([axis?.value, target?.value]).toEqual([10, 0]);
});

test("an axis that is stated to lie along the references is not what makes it read long", () => {
  const gain = 1 / Math.cos(Math.PI / 18);
  const finding = reading(gain, { principle: "laser" }, { alignmentAngle: 1 });
  expect([finding?.id, ...(finding?.rivals.map(({ id }) => id) ?? [])]).not.toContain("axis-tilted");
});

test("target tilted: an echo that reads as short as the stated tilt makes it, where the beam holds the square ray", () => {
  const gain = Math.cos(Math.PI / 18);
  const radar = { principle: "radar", beamAngle: 30 };
  expect(reading(gain, radar, { targetTilt: 10 })?.id).toBe("target-tilted");
  expect(reading(gain, { ...radar, beamAngle: 8 }, { targetTilt: 10 })?.id).not.toBe("target-tilted");
  expect(reading(gain, { principle: "laser" }, { targetTilt: 10 })?.id).not.toBe("target-tilted");
  expect(reading(gain, radar, { targetTilt: 2 })?.id).not.toBe("target-tilted");
  expect(reading(gain, radar)?.id).not.toBe("target-tilted");
});

test("in another gas the thermometer excludes nothing, and the gas is named", () => {
  const finding = reading(
    warmer,
    { ...ultrasonic.instrument, medium: "other gas" },
    { airTemperature: 20, medium: "vapour" },
  );
  expect(finding?.id).toBe("other-gas-than-air");
  expect(finding?.says).toContain("the medium is stated as vapour");
  expect(finding?.separatedBy).not.toContain("temperature");
  expect(finding === undefined ? "" : remedyOf(finding).does).toContain("does not mend it");
  expect(finding?.evidence.filter(({ unit }) => unit === "°C")).toEqual([]);
});

test("leakage across loop: a leakage across two wires; a shift on two wires keeps it as a rival", () => {
  const twoWires = { instrument: { loopPowered: true } };
  const leaked = planted({ signal: (signal) => signal + (24 - 0.3 * signal) / 50 }, twoWires);
  expect(findingsOf(sensorLineCauses, leaked)).toMatchObject([{ id: "leakage-across-loop", stage: "wiring" }]);
  expect(
    findingsOf(sensorLineCauses, planted({ seen: (part) => part + 0.02 }, twoWires))[0]?.rivals.map(({ id }) => id),
  ).toContain("leakage-across-loop");
});

test("voltage output overloaded: 1 to 5 V too small about 0 V; on 0 to 10 V an end taught wrong cannot be told from it", () => {
  const loaded = { signal: (volts: number) => 0.98 * volts };
  expect(idsOf(sensorLineCauses, planted(loaded, { kind: signalKinds["1–5"] }))).toEqual(["voltage-output-overloaded"]);
  const [finding] = findingsOf(sensorLineCauses, planted(loaded, { kind: signalKinds["0–10"] }));
  expect(finding).toMatchObject({ id: "ends-taught-wrong" });
  expect(finding?.rivals.map(({ id }) => id)).toContain("voltage-output-overloaded");
});

test("a line through none of these places is that of both ends taught wrong, or of two faults", () => {
  const [finding] = findingsOf(sensorLineCauses, planted({ seen: (part) => part + 0.03 * (part - 0.4) }));
  expect(finding).toMatchObject({ id: "both-ends-taught-wrong", title: "both ends of the range taught wrong" });
});

test("nothing is found on a healthy loop, nor where the controller alone is wrong", () => {
  expect(idsOf(sensorLineCauses, planted(nothingWrong))).toEqual([]);
  expect(idsOf(sensorLineCauses, planted({ value: (part) => part + 0.05 }))).toEqual([]);
});

test("where the row says that the card loads the output too much, the overload comes first on 0 to 10 V as well", () => {
  const stated = { kind: signalKinds["0–10"], instrument: { loadMin: 2000, cardResistance: 500 } };
  const [finding] = findingsOf(sensorLineCauses, planted({ signal: (volts) => 0.98 * volts }, stated));
  expect(finding).toMatchObject({ id: "voltage-output-overloaded" });
  expect(finding?.says).toContain("The card is stated with 500 Ω, where the output needs 2000 Ω at least.");
  expect(finding?.rivals.map(({ id }) => id)).toContain("ends-taught-wrong");
});

test("of air that nobody stated a scale of the reference that is off is not excluded", () => {
  const unstated = planted({ seen: aboutFace(warmer) }, { instrument: { principle: "ultrasonic" } });
  const [finding] = findingsOf(sensorLineCauses, unstated);
  expect(finding).toMatchObject({ id: "air-temperature" });
  expect(finding?.rivals.map(({ id }) => id)).toContain("reference-scale-off");
});
