import { expect, test } from "vitest";
import { greatestOf, leastOf } from "../../src/numeric/least-and-greatest.ts";
import { filesBelow, isCode } from "../architecture/source-files.ts";

test("the least and the greatest are those of Math, also of none, of a zero with a sign and of what is no number", () => {
  for (const values of [[3, 1, 2], [-1.5], [], [0, -0], [-0, 0], [1, Number.NaN, 2]]) {
    expect(leastOf(values)).toBe(Math.min(...values));
    expect(greatestOf(values)).toBe(Math.max(...values));
  }
});

test("a million values do not fill the stack", () => {
  const values = Array.from({ length: 1_000_000 }, (_, place) => (place * 7919) % 1_000_003);
  expect(leastOf(values)).toBe(0);
  expect(greatestOf(values)).toBe(1_000_002);
});

test("no file of src spreads a list into Math.min or Math.max", () => {
  const spread = filesBelow("src/").filter(
    (file) => isCode(file) && /Math\.(min|max)\((?:[^()]|\([^()]*\))*\.\.\./u.test(codeOf(file.text)),
  );
  expect(spread.map(({ path }) => path)).toEqual([]);
});

/** Without docblocks, one of which says why. */
function codeOf(text: string): string {
  return text.replace(/\/\*\*[\s\S]*?\*\//gu, "");
}
