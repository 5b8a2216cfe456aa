import { expect, test } from "vitest";
import { slipThatFits, typingAlternatives } from "../../../src/analysis/plausibility/typing-alternatives.ts";
import { expectNear, rounding } from "../sample-loop.ts";

const kindsOf = (typed: number, decimals: number, meant: number) =>
  new Set(
    typingAlternatives(typed, decimals)
      .filter((one) => Math.abs(one.meant - meant) < 1e-9)
      .map(({ kind }) => kind),
  );

test("14.28 may have been meant as 12.48", () => {
  expect(typingAlternatives(14.28, 2)[2]).toEqual({ meant: 12.48, kind: "two digits exchanged" });
});

// By hand: what the fingers do to 12.48, 401, 4.919, −0.5.
test.each([
  [14.28, 2, 12.48, "two digits exchanged"],
  [41, 0, 401, "two digits exchanged"],
  [1.248, 3, 12.48, "decimal mark moved"],
  [12480, 0, 12.48, "decimal mark moved"],
  [0.5, 1, -0.5, "sign wrong"],
  [4.819, 3, 4.919, "one digit wrong"],
  [4.19, 2, 4.919, "one digit left out"],
  [1248, 0, 12048, "one digit left out"],
  [1.48, 2, 12.48, "one digit left out"],
  [4.9919, 4, 4.919, "one digit too many"],
  [112.48, 2, 12.48, "one digit too many"],
] as const)("%d with %i decimals may have been meant as %d: %s", (typed, decimals, meant, kind) => {
  expect(kindsOf(typed, decimals, meant)).toContain(kind);
});

test("4.000 for 40.00 is a decimal mark that moved, and no two digits exchanged", () => {
  expect(kindsOf(4, 3, 40)).toEqual(new Set(["decimal mark moved", "one digit left out"]));
  expect(slipThatFits(4, 3, (meant) => Math.abs(meant - 39.987), 0.1)?.kind).toBe("decimal mark moved");
});

test("the typed number is none of its own alternatives, and all of them are finite", () => {
  for (const [typed, decimals] of [
    [0, 0],
    [4.919, 3],
    [-12, 0],
    [1e-12, 12],
  ] as const) {
    const all = typingAlternatives(typed, decimals);
    expect(all.every(({ meant }) => Number.isFinite(meant) && meant !== typed)).toBe(true);
  }
});

test("of several slips the likeliest kind is taken, and of its numbers the nearest", () => {
  const near = (target: number, within: number) => slipThatFits(14.28, 2, (meant) => Math.abs(meant - target), within);
  expect(near(12.47, 0.05)).toEqual({ meant: 12.48, kind: "two digits exchanged" });
  expect(near(14.38, 0.001)).toEqual({ meant: 14.38, kind: "one digit wrong" });
  expect(near(999, 0.1)).toBeUndefined();
  expectNear(near(1.43, 0.01)?.meant, 1.428, rounding);
});
