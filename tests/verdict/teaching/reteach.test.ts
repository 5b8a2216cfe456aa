import fc from "fast-check";
import { expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { minimaxLine } from "../../../src/numeric/minimax-line.ts";
import { correctionOf, errorLeft, type JudgedError, reteach } from "../../../src/verdict/teaching/reteach.ts";
import { expectNear } from "../../analysis/sample-loop.ts";
import { frozen } from "../../charts/frozen.ts";
import { guarded, judgedError, readingErrors, simple } from "../sample-errors.ts";

const settings = { seed: 20261126, numRuns: 200 };

test("a shift of 2 at both ends is cured by standing for −2 and 98", () => {
  const found = reteach(frozen([judgedError(0, 2), judgedError(100, 2)]), simple);
  expect(found.now).toMatchObject({ errorDistance: 2, statement: "fail" });
  expect(found.best).toMatchObject({ lower: -2, upper: 98, worst: { errorDistance: 0, statement: "pass" } });
  expect(found.isCurable).toBe(true);
  expect(found.whyNot).toBeUndefined();
});

test("a hysteresis of 3 against ±1 is cured by no re-teach, and the reason is the spread at one point", () => {
  const errors = [
    judgedError(0, 0),
    judgedError(50, 1.5),
    judgedError(50, -1.5, { direction: "falling" }),
    judgedError(100, 0),
  ];
  const found = reteach(errors, simple);
  expect(found.isCurable).toBe(false);
  expect(found.whyNot).toEqual({ because: "spread at one point", point: 50, halfSpread: 1.5 });
});

test("a bow of 3 against ±1 is cured by no re-teach, and the reason is curvature", () => {
  const found = reteach([judgedError(0, 0), judgedError(50, 3), judgedError(100, 0)], simple);
  expect(found.isCurable).toBe(false);
  expect(found.whyNot?.because).toBe("curvature");
  // Half of the bow stays, but for the gain: indicated distances of 0, 53 and 100 are not equally far apart.
  expectNear(found.whyNot?.halfSpread ?? Number.NaN, 1.5, 0.1);
});

test("a guard band that leaves no zone decides nothing", () => {
  const errors = [judgedError(0, 0.2, { expandedUncertainty: 2 }), judgedError(100, 0, { expandedUncertainty: 2 })];
  const found = reteach(errors, guarded);
  expect(found.isCurable).toBeNull();
  expect(found.best).toMatchObject({ worst: { statement: "cannot be decided" } });
});

test("a guard band of U asks for more than the tolerance", () => {
  const bowed = [judgedError(0, 0), judgedError(50, 1.9), judgedError(100, 0)];
  const wide = bowed.map((error) => ({ ...error, expandedUncertainty: 0.2 }));
  // About 0.95 stays: inside ±1, outside ±0.8.
  expect(reteach(wide, simple).isCurable).toBe(true);
  expect(reteach(wide, guarded).isCurable).toBe(false);
});

test("the room goes where the acceptance limits leave least of it", () => {
  // Acceptance ±0.3 at the ends, ±0.9 between: a bow of 1 fits if the ends are let off −0.2; half and half would fail.
  const errors = [
    judgedError(0, 0, { expandedUncertainty: 0.7 }),
    judgedError(50, 1),
    judgedError(100, 0, { expandedUncertainty: 0.7 }),
  ];
  expect(reteach(errors, guarded).isCurable).toBe(true);
});

test("one test point, or one indicated distance, gives no correction", () => {
  const found = reteach([judgedError(50, 0.1), judgedError(50, 0.3)], simple);
  expect(found.ends).toEqual({ notDetermined: "fewer than two test points" });
  const stuck = [judgedError(0, 50), judgedError(100, -50)];
  expect(reteach(stuck, simple).best).toHaveProperty("notDetermined");
  expect(reteach(stuck, simple).isCurable).toHaveProperty("notDetermined");
  expect(() => errorLeft([], simple)).toThrow(RangeError);
});

test("where the tolerance is the same everywhere, the worst error left is that of the minimax line of reference on indicated", () => {
  fc.assert(
    fc.property(readingErrors, (errors) => {
      const { best } = reteach(errors, simple);
      if (!isDetermined(best)) throw new Error("no correction");
      const line = minimaxLine(
        errors.map(({ indicated }) => indicated),
        errors.map(({ reference }) => reference),
      );
      // Distances of 100 are stored to 1e-14; a line read at both ends multiplies that by some tens.
      expectNear(Math.abs(best.worst.errorDistance), line.greatestDeviation, 1e-11);
    }),
    settings,
  );
});

/** Least worst error by looking at every pair of corrections that lays a line half way between three readings. */
function leastByTriples(errors: readonly JudgedError[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const one of errors)
    for (const other of errors) {
      if (one.indicated === other.indicated) continue;
      const slope = (other.reference - one.reference) / (other.indicated - one.indicated);
      const offsets = errors.map(({ reference, indicated }) => reference - slope * indicated);
      least = Math.min(least, (Math.max(...offsets) - Math.min(...offsets)) / 2);
    }
  return least;
}

test("by brute force: no line parallel to one through two readings leaves less than the best correction", () => {
  fc.assert(
    fc.property(readingErrors, (errors) => {
      const { best } = reteach(errors, simple);
      if (!isDetermined(best)) throw new Error("no correction");
      expectNear(Math.abs(best.worst.errorDistance), leastByTriples(errors), 1e-11); // as above
    }),
    settings,
  );
});

/** The terminal line on its own road: mean error of each direction at each end, in a system of two equations. */
function leftByEnds(errors: readonly JudgedError[]): number {
  const places = errors.map(({ point }) => point);
  const [start, end] = [Math.min(...places), Math.max(...places)].map((place) => {
    const ways = (["rising", "falling"] as const).map((way) =>
      errors.filter(({ point, direction }) => point === place && direction === way),
    );
    const average = (of: (error: JudgedError) => number) =>
      ways.reduce((sum, way) => sum + way.reduce((part, error) => part + of(error) / way.length, 0) / 2, 0);
    return { x: average(({ reference }) => reference), d: average(({ indicated }) => indicated) };
  }) as [{ x: number; d: number }, { x: number; d: number }];
  const determinant = end.d - start.d;
  const gain = (end.x - start.x) / determinant;
  const offset = (start.x * end.d - end.x * start.d) / determinant;
  return Math.max(...errors.map(({ reference, indicated }) => Math.abs(offset + gain * indicated - reference)));
}

test("the re-teach at the ends leaves what the line through the mean ends leaves, reckoned otherwise", () => {
  fc.assert(
    fc.property(readingErrors, (errors) => {
      const { ends } = reteach(errors, simple);
      if (!isDetermined(ends)) throw new Error("no re-teach");
      expectNear(Math.abs(ends.worst.errorDistance), leftByEnds(errors), 1e-10); // the determinant may be a tenth
    }),
    settings,
  );
});

test("the best correction leaves no more than the re-teach at the ends, which leaves at most 2 (1 + f) times as much", () => {
  // The ends' line keeps within the best line's error h at both mean ends, for those are averages of readings that do.
  // So the two lines differ by h between the ends, and by h (1 + 2 f) where a reading lies outside them by a part f.
  fc.assert(
    fc.property(readingErrors, (errors) => {
      const { best, ends } = reteach(errors, simple);
      if (!isDetermined(best) || !isDetermined(ends)) throw new Error("no correction");
      const [least, left] = [best, ends].map(({ worst }) => Math.abs(worst.errorDistance)) as [number, number];
      expect(left).toBeGreaterThanOrEqual(least - 1e-10);
      const outside = overshoot(errors);
      expect(left).toBeLessThanOrEqual(2 * (1 + outside) * least + 1e-10);
    }),
    settings,
  );
});

test("means of exactly one reading at each end need no allowance: at most twice as much", () => {
  const one = readingErrors.map((errors) =>
    errors.filter(
      ({ point, direction }, index) =>
        direction === "rising" &&
        errors.findIndex((other) => other.point === point && other.direction === direction) === index,
    ),
  );
  fc.assert(
    fc.property(one, (errors) => {
      const { best, ends } = reteach(errors, simple);
      if (!isDetermined(best) || !isDetermined(ends)) throw new Error("no correction");
      const [least, left] = [best, ends].map(({ worst }) => Math.abs(worst.errorDistance)) as [number, number];
      expect(left).toBeLessThanOrEqual(2 * least + 1e-10);
    }),
    settings,
  );
});

/** How far readings lie outside the two mean ends, as a part of the distance between these. */
function overshoot(errors: readonly JudgedError[]): number {
  const places = errors.map(({ point }) => point);
  const meanOf = (place: number) => {
    const ways = (["rising", "falling"] as const).map((way) =>
      errors.filter(({ point, direction }) => point === place && direction === way).map(({ indicated }) => indicated),
    );
    return ways.reduce((sum, way) => sum + way.reduce((part, d) => part + d, 0) / way.length / ways.length, 0);
  };
  const [from, to] = [meanOf(Math.min(...places)), meanOf(Math.max(...places))];
  const indicated = errors.map((error) => error.indicated);
  return Math.max(0, from - Math.min(...indicated), Math.max(...indicated) - to) / (to - from);
}

test("errors that a line cannot bring inside limits of different width are curable by none that was tried", () => {
  fc.assert(
    fc.property(readingErrors, fc.integer({ min: 1, max: 9 }), (errors, tenths) => {
      const graded = errors.map((error) => {
        const limit = (tenths / 10) * (0.2 + error.reference / 50);
        return { ...error, tolerance: { low: -limit, high: 2 * limit } };
      });
      const { isCurable } = reteach(graded, simple);
      const best = correctionOf(graded, simple);
      if (!isDetermined(best)) throw new Error("no correction");
      const tries = [-0.3, -0.1, 0.1, 0.3].flatMap((lower) =>
        [-0.3, 0, 0.3].map((upper) => ({ lower: best.lower + lower, upper: best.upper + upper })),
      );
      const passes = tries.some((tried) => errorLeft(graded, simple, tried).statement === "pass");
      if (passes) expect(isCurable).toBe(true);
    }),
    settings,
  );
});
