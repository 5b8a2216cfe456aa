import { expect, test } from "vitest";
import { fitResults, worstFit } from "../../../src/verdict/replacement/fit-cell.ts";

test("what is known not to fit outweighs what cannot be told", () => {
  expect(worstFit(["fits", "does not fit", "cannot be told"])).toBe("does not fit");
});

test("the worst of two is the later one of the list, in either order, and nothing at all fits", () => {
  for (const [place, one] of fitResults.entries()) {
    for (const [other, another] of fitResults.entries()) {
      expect(worstFit([one, another])).toBe(fitResults[Math.max(place, other)]);
    }
  }
  expect(worstFit([])).toBe("fits");
});
