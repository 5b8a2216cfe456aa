import { expect, test } from "vitest";
import { scalingFinding } from "../../../src/verdict/loop-check/scaling-finding.ts";

const about = { title: "as left", unit: "mm", range: { rangeLower: 0, rangeUpper: 100 } };
const share = (of: number, reference = 50, tolerance = 1) => ({
  ...{ share: of, reference, toleranceLow: -tolerance, toleranceHigh: tolerance },
});

test("the share that takes up the most of its tolerance decides, not the greatest", () => {
  expect(scalingFinding([share(0.9), share(-0.5, 10, 0.4)], about)?.finding).toEqual({
    isPass: false,
    says: "as left, computing the value from raw counts differs from the value shown by −0.5 mm at 10 mm, tolerance there −0.4 mm",
  });
});

test("on the limit passes, and without a share nothing is said", () => {
  expect(scalingFinding([share(1), share(0, 20, 0)], about)?.finding?.isPass).toBe(true);
  expect(scalingFinding([], about)).toBeUndefined();
});

test("where nothing is allowed, a share that is none passes and any other does not", () => {
  expect(scalingFinding([share(0, 20, 0)], about)?.finding?.isPass).toBe(true);
  expect(scalingFinding([share(0.1, 20, 0)], about)?.finding?.isPass).toBe(false);
});
