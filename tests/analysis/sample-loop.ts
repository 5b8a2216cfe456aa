import { expect } from "vitest";
import type { CurveReading } from "../../src/analysis/figures/error-curve.ts";
import type { Loop } from "../../src/analysis/readings/loop.ts";
import type { Reading } from "../../src/model/calibration.ts";
import type { Direction } from "../../src/model/calibration-words.ts";
import { frozen } from "../charts/frozen.ts";

/** 0 to 100 mm on 4 to 20 mA, 0 to 27648 counts, 0 to 10 in the controller; 1 mm of tolerance; faults of NE 43. */
export const loop: Loop = frozen({
  characteristics: {
    signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 },
    counts: { rangeLower: 0, rangeUpper: 100, outputAtLower: 0, outputAtUpper: 27648 },
    value: { rangeLower: 0, rangeUpper: 100, outputAtLower: 0, outputAtUpper: 10 },
  },
  toleranceTerms: [{ basis: "distance", plus: 1, minus: 1 }],
  faultLevels: { low: 3.6, high: 21 },
  signalUnit: "mA",
} as const);

/** The same loop without an input card and a controller. */
export const signalLoop: Loop = frozen({ ...loop, characteristics: { signal: loop.characteristics.signal } });

export function reading(reference: number, read: Partial<Reading> = {}): Reading {
  return frozen({ calibration: "C-1", phase: "as_found", direction: "rising", reference, ...read });
}

/** A reading of the error curve at a test point whose reference is its nominal position. */
export function curveReading(point: number, error: number, direction: Direction = "rising", cycle = 1): CurveReading {
  return frozen({ point, reference: point, error, direction, cycle });
}

/** Absolute difference; each caller says why its tolerance is what it is. */
export function expectNear(value: number | null | undefined, expected: number, tolerance: number, name = ""): void {
  expect(Math.abs((value ?? Number.NaN) - expected), `${name} ${value} for ${expected}`).toBeLessThanOrEqual(tolerance);
}

/** A few roundings of numbers near 100. */
export const rounding = 1e-13;
