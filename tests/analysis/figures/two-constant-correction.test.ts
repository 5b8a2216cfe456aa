import { expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import {
  bestCorrection,
  correctedDistance,
  endsCorrection,
  shareOfRoom,
} from "../../../src/analysis/figures/two-constant-correction.ts";
import { frozen } from "../../charts/frozen.ts";
import { expectNear } from "../sample-loop.ts";

const range = Object.freeze({ rangeLower: 0, rangeUpper: 3 });
const limits = { low: -1, high: 1 };
const squares = frozen([0, 1, 4, 9].map((reference, indicated) => ({ indicated, reference, limits })));

test("squares over 0 to 3 are best corrected by −1 and 8, which leaves 1 everywhere", () => {
  const found = bestCorrection(squares, range);
  expect(found).toEqual({ lower: -1, upper: 8 });
  if (!isDetermined(found)) throw new Error("no correction");
  const left = squares.map(({ indicated, reference }) => correctedDistance(indicated, found, range) - reference);
  expect(left).toEqual([-1, 1, 1, -1]);
});

test("limits that are wide at the far end let the near end come first", () => {
  const wide = [
    { indicated: 0, reference: 0, limits: { low: -0.1, high: 0.1 } },
    { indicated: 1, reference: 1.2, limits: { low: -0.1, high: 0.1 } },
    { indicated: 2, reference: 2, limits: { low: -0.1, high: 0.1 } },
    { indicated: 3, reference: 5, limits: { low: -5, high: 5 } },
  ];
  // 0, 1.2 and 2 bend by 0.2: half of it, 0.1, stays at each of the three.
  const found = bestCorrection(wide, range);
  if (!isDetermined(found)) throw new Error("no correction");
  const left = wide.map(({ indicated, reference }) => correctedDistance(indicated, found, range) - reference);
  for (const error of left.slice(0, 3)) expectNear(Math.abs(error), 0.1, 1e-15);
});

test("a shift that is the same everywhere is taken off at both ends, though the near limits are six times narrower", () => {
  // 1 % of reading over 1000 to 6000 mm, every value 50 mm too high.
  const shifted = [1000, 2000, 3000, 4000, 5000, 6000].map((reference) => ({
    reference,
    indicated: reference + 50,
    limits: { low: -reference / 100, high: reference / 100 },
  }));
  const found = bestCorrection(shifted, { rangeLower: 1000, rangeUpper: 6000 });
  if (!isDetermined(found)) throw new Error("no correction");
  expectNear(found.lower, 950, 1e-9);
  expectNear(found.upper, 5950, 1e-9);
});

test("where a part of the reading leaves no room at 0, the others are still put right", () => {
  const from0 = [0, 500, 1000, 1500, 2000].map((reference) => ({
    reference,
    indicated: reference + 30,
    limits: { low: -reference / 100, high: reference / 100 },
  }));
  const found = bestCorrection(from0, { rangeLower: 0, rangeUpper: 2000 });
  if (!isDetermined(found)) throw new Error("no correction");
  expectNear(found.lower, -30, 1e-9);
  expectNear(found.upper, 1970, 1e-9);
});

test("a share of the room is of that side of the middle, and without room none is enough", () => {
  expect(shareOfRoom(-3, { low: -2, high: 2 })).toBe(1.5);
  expect(shareOfRoom(3, { low: 0, high: 4 })).toBe(0.5);
  expect(shareOfRoom(0, { low: 0, high: 0 })).toBe(0);
  expect(shareOfRoom(1, { low: 0, high: 0 })).toBe(Number.POSITIVE_INFINITY);
});

test("a re-teach at two points brings their mean errors to zero", () => {
  const first = { references: [0, 0.2], indicated: [1, 1.2] };
  const last = { references: [100], indicated: [103] };
  const ends = { rangeLower: 0, rangeUpper: 102 };
  const found = endsCorrection(first, last, ends);
  if (!isDetermined(found)) throw new Error("no correction");
  expectNear(correctedDistance(1.1, found, ends), 0.1, 1e-14);
  expectNear(correctedDistance(103, found, ends), 100, 1e-13);
});

test("the docblock's re-teach: what stood for 102 is to stand for 99.02", () => {
  const found = endsCorrection(
    { references: [0], indicated: [1] },
    { references: [100], indicated: [103] },
    { rangeLower: 0, rangeUpper: 102 },
  );
  if (!isDetermined(found)) throw new Error("no correction");
  expectNear(found.lower, -100 / 102, 1e-14);
  expectNear(found.upper, (101 * 100) / 102, 1e-13);
});

test("one indicated distance gives no correction", () => {
  expect(bestCorrection(squares.slice(0, 1), range)).toHaveProperty("notDetermined");
  expect(bestCorrection([squares[0]!, squares[0]!], range)).toHaveProperty("notDetermined");
  const point = { references: [1], indicated: [2] };
  expect(endsCorrection(point, { references: [5], indicated: [2] }, range)).toHaveProperty("notDetermined");
});

test("a correction is a straight line through its two ends", () => {
  expect(correctedDistance(50, { lower: 1, upper: 99 }, { rangeLower: 0, rangeUpper: 100 })).toBe(50);
});
