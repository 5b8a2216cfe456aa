import fc from "fast-check";
import { expect, test } from "vitest";
import type { Statement } from "../../../src/model/statement.ts";
import { type DecisionRule, decidePoint, type PointToDecide } from "../../../src/verdict/decision/decision-rule.ts";
import { managedGuardBand } from "../../../src/verdict/decision/managed-guard-band.ts";

const rules = {
  simple: { name: "simple acceptance", guardFactor: 0 },
  guard: { name: "guard band", guardFactor: 1 },
  words: { name: "non-binary guard band", guardFactor: 1 },
  managed: { name: "managed guard band", guardFactor: 1 },
} as const satisfies Record<string, DecisionRule>;

const point = (error: number, rule: DecisionRule, more: Partial<PointToDecide> = {}): PointToDecide =>
  Object.freeze({
    error,
    limits: Object.freeze({ low: -2, high: 2 }),
    expandedUncertainty: 0.5,
    coverageFactor: 2,
    rule,
    magnitude: 100,
    ...more,
  });
const statementOf = (error: number, rule: DecisionRule, more: Partial<PointToDecide> = {}) =>
  decidePoint(point(error, rule, more)).statement;

test("1.2 inside ±2 with U = 0.5 passes by a non-binary guard band, whose acceptance limits are ±1.5", () => {
  expect(decidePoint(point(1.2, rules.words))).toEqual({
    statement: "pass",
    acceptance: { low: -1.5, high: 1.5 },
    guardBand: 0.5,
  });
});

test("the same error gets another word under another rule (1.8 of 2, U = 0.5)", () => {
  expect(statementOf(1.8, rules.simple)).toBe("pass");
  expect(statementOf(1.8, rules.guard)).toBe("fail");
  expect(statementOf(1.8, rules.words)).toBe("conditional pass");
  // TUR 4: w = 0.0531·U, so A = 1.973.
  expect(statementOf(1.8, rules.managed)).toBe("pass");
  expect(statementOf(1.98, rules.managed)).toBe("fail");
});

// Limits on binary fractions, so that each side of a limit is meant.
test.each<[Statement, DecisionRule, number, number]>([
  ["pass", rules.simple, 0, 2],
  ["fail", rules.simple, 2.000001, 100],
  ["pass", rules.guard, 0, 1.5],
  ["fail", rules.guard, 1.500001, 100],
  ["pass", rules.words, 0, 1.5],
  ["conditional pass", rules.words, 1.500001, 2],
  ["conditional fail", rules.words, 2.000001, 2.5],
  ["fail", rules.words, 2.500001, 100],
])("%s, %o: from %d to %d, both ends included, on either side", (statement, rule, from, to) => {
  for (const error of [from, (from + to) / 2, to, -from, -to]) expect(statementOf(error, rule)).toBe(statement);
});

test("a limit that binary numbers miss by their rounding is still on the limit", () => {
  // 0.3 − 0.1 is 0.19999999999999998: the acceptance limit of 0.2.
  const limits = { low: -0.3, high: 0.3 };
  for (const rule of [rules.guard, rules.words])
    expect(statementOf(0.2, rule, { limits, expandedUncertainty: 0.1 })).toBe("pass");
  // 0.1 + 0.2 is 0.30000000000000004: on the tolerance limit.
  expect(statementOf(0.1 + 0.2, rules.words, { limits, expandedUncertainty: 0.1 })).toBe("conditional pass");
  expect(statementOf(0.1 + 0.2, rules.simple, { limits })).toBe("pass");
  expect(statementOf(-0.1 - 0.3, rules.words, { limits, expandedUncertainty: 0.1 })).toBe("conditional fail");
});

test("limits that differ are each moved inwards", () => {
  const limits = { low: -1, high: 3 };
  expect(decidePoint(point(-0.6, rules.words, { limits }))).toEqual({
    statement: "conditional pass",
    acceptance: { low: -0.5, high: 2.5 },
    guardBand: 0.5,
  });
  expect(statementOf(2.4, rules.guard, { limits })).toBe("pass");
  expect(statementOf(-1.4, rules.words, { limits })).toBe("conditional fail");
  expect(statementOf(3.4, rules.words, { limits })).toBe("conditional fail");
  expect(statementOf(-1.6, rules.words, { limits })).toBe("fail");
});

test.each([rules.guard, rules.words])("%o with U above T decides nothing, but for an error beyond T + U", (rule) => {
  const wide = { expandedUncertainty: 5 };
  for (const error of [0, 1.9, -2, 2.1, 6.9, 7, -7]) {
    expect(decidePoint(point(error, rule, wide))).toEqual({
      statement: "cannot be decided",
      acceptance: null,
      guardBand: 5,
    });
  }
  for (const error of [7.000001, -7.000001, 100]) expect(statementOf(error, rule, wide)).toBe("fail");
});

test("an acceptance zone of a single point is none, also where rounding leaves a sliver of it", () => {
  expect(statementOf(0, rules.guard, { expandedUncertainty: 2 })).toBe("cannot be decided");
  const limits = { low: -0.3, high: 0.3 };
  for (const expandedUncertainty of [0.1 + 0.2, 0.3, 0.3 - 1e-16])
    expect(statementOf(0, rules.guard, { limits, expandedUncertainty })).toBe("cannot be decided");
  expect(statementOf(0, rules.guard, { limits, expandedUncertainty: 0.2999 })).toBe("pass");
});

test("simple acceptance decides whatever the uncertainty, and a managed guard band only from a ratio of 0.6", () => {
  expect(statementOf(1.9, rules.simple, { expandedUncertainty: 50 })).toBe("pass");
  expect(statementOf(0, rules.managed, { expandedUncertainty: 2 / 0.61 })).toBe("pass");
  expect(statementOf(0, rules.managed, { expandedUncertainty: 2 / 0.59 })).toBe("cannot be decided");
});

test.each<[Partial<PointToDecide>, string]>([
  [{ coverageFactor: 2.31 }, "k is 2.31 and not 2"],
  [{ coverageFactor: 1.65 }, "k is 1.65 and not 2"],
  [{ coverageFactor: undefined }, "k is not known"],
  [{ limits: { low: -1, high: 3 } }, "the two sides of the tolerance differ"],
  [{ expandedUncertainty: 3.4 }, "U is more than 1.67 times the tolerance"],
])("the managed guard band does not hold with %o: a guard band of U, and why", (more, whyNotManaged) => {
  const { guardBand, ...decided } = decidePoint(point(0, rules.managed, more));
  expect(decided.whyNotManaged).toBe(whyNotManaged);
  expect(guardBand).toBe(more.expandedUncertainty ?? 0.5);
});

test("it holds for k of 2 to 2.05, as printed, and nothing is said then", () => {
  for (const coverageFactor of [2, 2.05]) {
    const decided = decidePoint(point(0, rules.managed, { coverageFactor }));
    expect(decided.guardBand).toBe(managedGuardBand(0.5, 4));
    expect(decided).not.toHaveProperty("whyNotManaged");
  }
});

test("a guard factor scales the guard band; one of 0 is simple acceptance", () => {
  const factor = (guardFactor: number): DecisionRule => ({ name: "guard band", guardFactor });
  expect(Math.abs(decidePoint(point(0, factor(0.83))).guardBand - 0.415)).toBeLessThan(1e-15);
  expect(statementOf(2, factor(0))).toBe("pass");
  expect(statementOf(2, { name: "non-binary guard band", guardFactor: 0 })).toBe("pass");
  expect(statementOf(2.1, { name: "non-binary guard band", guardFactor: 0 })).toBe("fail");
});

test("no tolerance at all: only simple acceptance of an error of nothing passes", () => {
  const limits = { low: 0, high: 0 };
  expect(statementOf(0, rules.simple, { limits })).toBe("pass");
  expect(statementOf(0.1, rules.simple, { limits })).toBe("fail");
  for (const rule of [rules.guard, rules.words, rules.managed])
    expect(statementOf(0, rule, { limits })).toBe("cannot be decided");
});

const severity: Record<Statement, number> = {
  pass: 0,
  "conditional pass": 1,
  "conditional fail": 2,
  "cannot be decided": 2,
  fail: 3,
};
const anyRule = fc.constantFrom<DecisionRule>(...Object.values(rules));
const anySixteenth = (least: number, most: number) => fc.integer({ min: least, max: most }).map((whole) => whole / 16);

test("farther out is never better, the mirror image is the same, and another unit changes no word", () => {
  fc.assert(
    fc.property(anyRule, anySixteenth(0, 80), anySixteenth(0, 80), anySixteenth(1, 64), (rule, one, other, U) => {
      const more = { expandedUncertainty: U };
      const [near, far] = [Math.min(one, other), Math.max(one, other)];
      expect(severity[statementOf(near, rule, more)]).toBeLessThanOrEqual(severity[statementOf(far, rule, more)]);
      expect(statementOf(-far, rule, more)).toBe(statementOf(far, rule, more));
      const inInches = {
        limits: { low: -2 / 25.4, high: 2 / 25.4 },
        expandedUncertainty: U / 25.4,
        magnitude: 100 / 25.4,
      };
      expect(statementOf(far / 25.4, rule, inInches)).toBe(statementOf(far, rule, more));
    }),
    { numRuns: 1000 },
  );
});

test("an error is compared as it is, not as it would be printed", () => {
  expect(statementOf(2.0000001, rules.simple)).toBe("fail");
  expect(statementOf(1.5000001, rules.words)).toBe("conditional pass");
});

test.each<Partial<PointToDecide>>([
  { error: Number.NaN },
  { limits: { low: 2, high: -2 } },
  { limits: { low: Number.NEGATIVE_INFINITY, high: 2 } },
  { expandedUncertainty: -0.1 },
  { expandedUncertainty: Number.NaN },
  { magnitude: 0 },
  { rule: { name: "guard band", guardFactor: -1 } },
  { rule: rules.managed, expandedUncertainty: 0 },
])("%o is refused", (more) => {
  expect(() => decidePoint(point(0, rules.guard, more))).toThrow(RangeError);
});
