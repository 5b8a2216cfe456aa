import { expect, test } from "vitest";
import { from1 } from "../../../src/record/versions/from-1.ts";

test("form 1 becomes form 2, and what was read is not touched", () => {
  const written = Object.freeze({ schema: "spanwright-record/1", revision: 1 });
  expect(from1(written)).toEqual({ schema: "spanwright-record/2", revision: 1 });
});

test("what 0.1.0 did not say of an earlier record is null", () => {
  const history = [{ tag: "LT-1" }, { tag: "LT-1", serial: "7", pointsOf: "sensor" }];
  expect(from1({ schema: "spanwright-record/1", history }).history).toEqual([
    { tag: "LT-1", serial: null, pointsOf: null },
    { tag: "LT-1", serial: "7", pointsOf: "sensor" },
  ]);
});

test("the controller's points are those of the end of the loop", () => {
  const phases = { asFound: { points: [1], controllerPoints: [2] }, asLeft: { points: [3] } };
  expect(from1({ schema: "spanwright-record/1", phases }).phases).toEqual({
    asFound: { points: [1], endPoints: [2], endOf: "controller", complete: true, missing: [] },
    asLeft: { points: [3], endOf: "sensor", complete: true, missing: [] },
  });
});

test("the rule with a non-binary statement has its name of today wherever it stands", () => {
  const rule = { name: "four words", guardFactor: 1, givenForThisRun: { name: "four words" } };
  const instrument = { tag: "LT-1", decisionRule: "four words" };
  expect(from1({ schema: "spanwright-record/1", decisionRule: rule, instrument })).toMatchObject({
    decisionRule: { name: "non-binary guard band", guardFactor: 1, givenForThisRun: { name: "non-binary guard band" } },
    instrument: { decisionRule: "non-binary guard band" },
  });
  expect(from1({ schema: "spanwright-record/1", decisionRule: { name: "guard band" } }).decisionRule).toEqual({
    name: "guard band",
  });
});

test("isAgreed is called isStated", () => {
  const of = (staircase: unknown) => from1({ schema: "spanwright-record/1", overTheYears: { staircase } }).overTheYears;
  expect(of({ isAgreed: true, months: 12 })).toEqual({ staircase: { isStated: true, months: 12 } });
  expect(of({ isStated: false, months: 12 })).toEqual({ staircase: { isStated: false, months: 12 } });
  expect(of(null)).toEqual({ staircase: null });
});
