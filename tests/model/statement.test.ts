import fc from "fast-check";
import { expect, test } from "vitest";
import { isInTolerance, type Statement, statementSeverity, worstStatement } from "../../src/model/statement.ts";

const inOrder: readonly Statement[] = Object.freeze([
  "pass",
  "conditional pass",
  "cannot be decided",
  "conditional fail",
  "fail",
]);

test("a pass and a conditional pass together are a conditional pass", () => {
  expect(worstStatement(["pass", "conditional pass"])).toBe("conditional pass");
});

test("from best to worst: what cannot be decided is no pass, and no fail", () => {
  expect(Object.keys(statementSeverity).sort()).toEqual([...inOrder].sort());
  expect(inOrder.map((statement) => statementSeverity[statement])).toEqual([0, 1, 2, 3, 4]);
});

test("of no statements there is no worst", () => {
  expect(worstStatement([])).toBeUndefined();
});

test("the worst is one of those given, whatever their order, and none is worse", () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...inOrder), { minLength: 1 }), (statements) => {
      const worst = worstStatement(statements) as Statement;
      expect(statements).toContain(worst);
      expect(inOrder.indexOf(worst)).toBe(Math.max(...statements.map((statement) => inOrder.indexOf(statement))));
      expect(worstStatement(statements.toReversed())).toBe(worst);
    }),
    { seed: 20260504 },
  );
});

test.each(["pass", "conditional pass"] as const)("a %s counts as in tolerance", (statement) => {
  expect(isInTolerance(statement)).toBe(true);
});

test.each(["conditional fail", "fail", "cannot be decided", null] as const)("%s does not", (statement) => {
  expect(isInTolerance(statement)).toBe(false);
});
