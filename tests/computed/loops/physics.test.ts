import { describe, expect, it } from "vitest";
import { drawLoop } from "./draw-loop.ts";
import { soundSpeed, teachWrong } from "./kinds/sensor-kinds.ts";
import type { Loop } from "./loop.ts";
import { type Moment, type Stages, stagesAt } from "./physics.ts";
import { randomFrom } from "./random.ts";
import { leftByBestLine } from "./truth.ts";

/** Nothing but the ideal: 200 to 1200 mm, 4 to 20 mA, no error at all. */
function ideal(change: (loop: Loop) => void = () => {}): Loop {
  const loop = drawLoop(randomFrom(1), { signals: ["4-20 mA"], isRising: true, countsFromZero: true });
  loop.design.range = { lower: 200, upper: 1200 };
  loop.design.tolerance = 10;
  Object.assign(loop.sensor, { datumShift: 0, bow: 0, hysteresis: 0, axisAngle: 0, taught: { ...loop.design.range } });
  change(loop);
  return loop;
}

function at(loop: Loop, distance: number): Stages {
  const still = { direction: "rising", moved: 0, minutes: 0, noise: 0, isLost: false, held: 4, other: 0.5 } as const;
  const moment: Moment = { ...still, distance };
  return stagesAt(loop, moment);
}

const percent = (signal: number) => (100 * (signal - 4)) / 16;

// Reckoned by hand from circuit, geometry and speed of sound, to the last digit that is written.
describe("physics", () => {
  it("is right where nothing is wrong", () => {
    expect(at(ideal(), 200).card).toBeCloseTo(4, 12);
    expect(at(ideal(), 1200).card).toBeCloseTo(20, 12);
  });

  it("50 kΩ across a loop of 24 V and 300 Ω makes +2.85 % at 4 mA and +2.25 % at 20 mA", () => {
    // 22.8 V and 18 V over 50 kΩ: 0.456 mA and 0.36 mA, of 16 mA.
    const leaking = ideal(({ wire }) => Object.assign(wire, { leakOhms: 50_000, supplyVolts: 24, loopOhms: 300 }));
    expect(percent(at(leaking, 200).card)).toBeCloseTo(2.85, 2);
    expect(percent(at(leaking, 1200).card) - 100).toBeCloseTo(2.25, 2);
  });

  it("251 Ω in the place of 250 Ω makes +0.10 % at 4 mA and +0.50 % at 20 mA", () => {
    const shunt = ideal(({ controller }) => {
      controller.cardGain = 251 / 250;
    });
    const counts = (distance: number) => (100 * at(shunt, distance).counts) / shunt.design.counts.upper;
    expect(counts(200)).toBeCloseTo(0.1, 1);
    expect(counts(1200) - 100).toBeCloseTo(0.5, 1);
  });

  it("4-20 mA taken for 0-20 mA shows 20 % at the near end and 100 % at the far one", () => {
    const mistaken = ideal(({ controller }) => {
      controller.cardSignal = { lower: 0, upper: 20 };
    });
    const counts = (distance: number) => (100 * at(mistaken, distance).counts) / mistaken.design.counts.upper;
    expect([counts(200), counts(1200)].map(Math.round)).toEqual([20, 100]);
  });

  it("an axis that is 10° off reads 1.54 % long", () => {
    const tilted = ideal(({ sensor }) => {
      sensor.axisAngle = 10;
    });
    expect(percent(at(tilted, 1000).sensor)).toBeCloseTo(80 + 1.54, 1);
  });

  it("air of 30 °C in the place of 20 °C makes −1.66 % of the distance, 0 °C +3.6 %", () => {
    const dry = (celsius: number) => 100 * (soundSpeed(20, 0) / soundSpeed(celsius, 0) - 1);
    expect(dry(30)).toBeCloseTo(-1.66, 2);
    expect(dry(0)).toBeCloseTo(3.6, 1);
  });

  it("ends taught 2 and −1 tolerances wrong are that wrong there", () => {
    const wrong = ideal((loop) => teachWrong(loop, 2, -1));
    expect(percent(at(wrong, 200).sensor)).toBeCloseTo(2, 9);
    expect(percent(at(wrong, 1200).sensor)).toBeCloseTo(99, 9);
  });
});

describe("leftByBestLine", () => {
  // A parabola of height 1 has the best line through its middle third: half its height either way (Chebyshev).
  it("leaves half of a bow", () => {
    const bow = Array.from({ length: 1001 }, (_, index) => index / 1000).map((part) => ({
      at: part,
      error: 3 * part + 4 * part * (1 - part),
    }));
    expect(leftByBestLine(bow)).toBeCloseTo(0.5, 6);
  });
});
