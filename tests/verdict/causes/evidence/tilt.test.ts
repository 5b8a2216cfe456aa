import { expect, test } from "vitest";
import type { Calibration } from "../../../../src/model/calibration.ts";
import type { Instrument } from "../../../../src/model/instrument.ts";
import { tiltOf, tiltThatFits, tiltThatShows } from "../../../../src/verdict/causes/evidence/tilt.ts";

const fitting = (gain: number, instrument: Partial<Instrument>, calibration: Partial<Calibration> = {}) =>
  tiltThatFits({ instrument: instrument as Instrument, calibration: calibration as Calibration }, gain);

// cos 10° = 0.984807753 and 1 / cos 10° = 1.015426612, of any table of cosines.
test("10° of the axis make a reading 1.54 % too long, 10° of the target 1.52 % too short", () => {
  expect(tiltOf(1.015426612)).toBeCloseTo(10, 6);
  expect(tiltOf(0.984807753)).toBeCloseTo(10, 6);
});

test("a long reading is an axis that slants, unless it is stated to be straight", () => {
  for (const principle of ["laser", "photoelectric", "radar", "ultrasonic"] as const) {
    expect(fitting(1.0154, { principle })).toBe("axis-tilted");
  }
  expect(fitting(1.0154, { principle: "laser" }, { alignmentAngle: 8 })).toBeUndefined();
  expect(fitting(1.0154, { principle: "laser" }, { alignmentAngle: 9.5 })).toBe("axis-tilted");
  expect(fitting(1.0154, { principle: "inductive" })).toBeUndefined();
});

test("a short reading is a plate that slants, where the beam still holds the ray that meets it square", () => {
  expect(fitting(0.9848, { principle: "ultrasonic" })).toBe("target-tilted");
  expect(fitting(0.9848, { principle: "radar", beamAngle: 22 })).toBe("target-tilted");
  expect(fitting(0.9848, { principle: "radar", beamAngle: 18 })).toBeUndefined();
  expect(fitting(0.9848, { principle: "laser" })).toBeUndefined();
  expect(fitting(0.9848, { principle: "ultrasonic" }, { targetTilt: 0 })).toBeUndefined();
});

test("a tilt is named where light or radar reads long, or where an echo reads as short as the stated tilt makes it", () => {
  const shown = (gain: number, principle: Instrument["principle"], targetTilt?: number) =>
    tiltThatShows({ instrument: { principle } as Instrument, calibration: { targetTilt } as Calibration }, gain);
  expect(shown(1.0154, "laser")).toBe("axis-tilted");
  expect(shown(1.0154, "ultrasonic")).toBeUndefined();
  expect(shown(0.9848, "ultrasonic")).toBeUndefined();
  expect(shown(0.9848, "ultrasonic", 10)).toBe("target-tilted");
  expect(shown(0.9848, "ultrasonic", 20)).toBeUndefined();
});
