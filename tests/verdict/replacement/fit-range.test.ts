import fc from "fast-check";
import { expect, test } from "vitest";
import type { Candidate } from "../../../src/model/instrument.ts";
import { fitResults } from "../../../src/verdict/replacement/fit-cell.ts";
import { fitRange } from "../../../src/verdict/replacement/fit-range.ts";
import { candidateWith, loopNeeds, told } from "./sample-loop-needs.ts";

const cells = (more: Partial<Candidate>) => fitRange(candidateWith(more), loopNeeds());

test("0.2 to 6 m with a blind zone of 0.3 m reaches 400 to 4000 mm", () => {
  const [near, far] = cells({ rangeLower: 0.2, blindZone: 0.3 });
  expect(near).toMatchObject({ result: "fits", needs: "400 mm", offers: "300 mm, its blind zone" });
  expect(far).toMatchObject({ result: "fits", needs: "4000 mm", offers: "6000 mm" });
});

test("a blind zone of 0.45 m hides the first 50 mm, though the range begins at 0.2 m", () => {
  expect(told(cells({ rangeLower: 0.2, blindZone: 0.45 })[0])).toBe(
    "does not fit: out of reach: the first 50 mm of the range",
  );
});

test("3.5 m leave the last 500 mm out of reach, and 4 m end on the end: 4000 mm is inside in any unit", () => {
  expect(told(cells({ rangeUpper: 3.5 })[1])).toBe("does not fit: out of reach: the last 500 mm of the range");
  expect(cells({ rangeUpper: 4 })[1]?.result).toBe("fits");
  expect(cells({ rangeLower: 0.4, blindZone: 0.4 })[0]).toMatchObject({ result: "fits", offers: "400 mm" });
  // 4000 / 25.4 in, as a double; times 25.4 it need not be 4000 to the last bit.
  expect(cells({ distanceUnit: "in", rangeLower: 1, blindZone: 1, rangeUpper: 4000 / 25.4 })[1]?.result).toBe("fits");
});

test("without a range, or without its unit, nothing can be told; a blind zone alone can rule it out", () => {
  expect(cells({ rangeLower: undefined, blindZone: undefined })[0]?.result).toBe("cannot be told");
  expect(told(cells({ rangeLower: undefined })[0])).toBe("cannot be told: range_lower is not stated");
  expect(cells({ rangeLower: undefined, blindZone: 0.5 })[0]?.result).toBe("does not fit");
  expect(cells({ rangeUpper: undefined })[1]?.result).toBe("cannot be told");
  expect(cells({ distanceUnit: undefined }).map(({ result }) => result)).toEqual(["cannot be told", "cannot be told"]);
});

test("a wider range or a smaller blind zone never makes a cell worse", () => {
  const size = fc.double({ min: 0, max: 8, noNaN: true });
  fc.assert(
    fc.property(size, size, size, size, (lower, blindZone, upper, more) => {
      const range = { rangeLower: lower, blindZone, rangeUpper: upper };
      const wider = { rangeLower: lower - more, blindZone: blindZone / (1 + more), rangeUpper: upper + more };
      const [before, after] = [cells(range), cells(wider)].map((pair) =>
        pair.map(({ result }) => fitResults.indexOf(result)),
      );
      for (const [place, rank] of (after ?? []).entries()) expect(rank).toBeLessThanOrEqual(before?.[place] ?? 0);
    }),
    { seed: 20260601, numRuns: 300 },
  );
});
