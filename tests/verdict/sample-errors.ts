import fc from "fast-check";
import type { JudgedError, ReteachContext } from "../../src/verdict/teaching/reteach.ts";

export const range = Object.freeze({ rangeLower: 0, rangeUpper: 100 });
export const simple: ReteachContext = Object.freeze({
  rule: Object.freeze({ name: "simple acceptance", guardFactor: 0 }),
  range,
});
export const guarded: ReteachContext = Object.freeze({
  rule: Object.freeze({ name: "guard band", guardFactor: 1 }),
  range,
});

/** An error at a reference that is its test point, within ±1, with U 0.1. */
export function judgedError(reference: number, error: number, more: Partial<JudgedError> = {}): JudgedError {
  return {
    point: reference,
    direction: "rising",
    reference,
    indicated: reference + error,
    tolerance: { low: -1, high: 1 },
    expandedUncertainty: 0.1,
    ...more,
  };
}

/** Readings at two to six test points, rising and falling, up to three cycles; references off their point by up to 1. */
export const readingErrors: fc.Arbitrary<readonly JudgedError[]> = fc
  .record({
    points: fc.uniqueArray(fc.integer({ min: 0, max: 10 }), { minLength: 2, maxLength: 6 }),
    noise: fc.array(
      fc.record({ jitter: fc.integer({ min: -10, max: 10 }), error: fc.integer({ min: -40, max: 40 }) }),
      {
        minLength: 36,
        maxLength: 36,
      },
    ),
    cycles: fc.integer({ min: 1, max: 3 }),
  })
  .map(({ points, noise, cycles }) =>
    Array.from({ length: cycles }, (_, cycle) =>
      (["rising", "falling"] as const).flatMap((direction, way) =>
        points.map((place, index) => {
          const { jitter = 0, error = 0 } = noise[(cycle * 2 + way) * 6 + index] ?? {};
          const reference = 10 * place + jitter / 10;
          return judgedError(reference, error / 20, { point: 10 * place, direction });
        }),
      ),
    ).flat(),
  );
