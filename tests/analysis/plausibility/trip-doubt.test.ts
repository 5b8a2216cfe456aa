import { expect, test } from "vitest";
import { tripDoubt } from "../../../src/analysis/plausibility/trip-doubt.ts";

const context = { setPoint: 90, span: 150, step: 0.01 };
/** Approach and recede of each cycle. */
const doubtOf = (...cycles: readonly (readonly [number, number])[]) =>
  tripDoubt(
    cycles.flatMap(([approach, recede], cycle) => [
      { direction: "approach" as const, cycle, reference: approach },
      { direction: "recede" as const, cycle, reference: recede },
    ]),
    context,
  );

test("an output that releases farther away than it operates is in no doubt, wherever it is set", () => {
  expect(doubtOf([90.1, 91.2], [90.05, 91.15])).toBeUndefined();
  expect(doubtOf([95.1, 96.2], [95.05, 96.15], [95.12, 96.2])).toBeUndefined();
});

test("approach and recede that are exchanged throughout, or in one cycle that then lies apart", () => {
  expect(doubtOf([91.2, 90.1], [91.15, 90.05])).toBe("exchanged");
  expect(doubtOf([90.16, 91.27], [90.1, 91.16], [91.2, 90.05], [90.05, 91.13])).toBe("exchanged");
});

test("a differential that drowns in the scatter turns a pair round here and there, and is no exchange", () => {
  expect(doubtOf([90.1, 90.3], [90.35, 90.2], [90.2, 90.15])).toBeUndefined();
  expect(doubtOf([90.12, 90.1], [90.11, 90.1])).toBeUndefined();
});

test("a trip far from its fellows", () => {
  expect(doubtOf([90.1, 91.2], [80.1, 91.25], [90.05, 91.2])).toBe("apart");
});
