import { describe, expect, test } from "vitest";
import type { LoopCheck } from "../../../src/model/calibration.ts";
import { judgeLoopCheck } from "../../../src/verdict/loop-check/judge-loop-check.ts";
import type { LoopLimit } from "../../../src/verdict/loop-check/loop-limits.ts";

const check = (more: Partial<LoopCheck>): LoopCheck => ({ calibration: "C-1", item: "supply at full output", ...more });
const volts = { unit: "V" };
const supply: LoopLimit = Object.freeze({ low: 12, high: 30, basis: "supply_min, supply_max" });

describe("the result", () => {
  test("is what the technician wrote, whatever the number", () => {
    const pass = judgeLoopCheck(check({ result: "pass", measured: 11.4 }), volts, supply);
    expect(pass).toMatchObject({ result: "pass", decidedBy: "technician" });
    const fail = judgeLoopCheck(check({ result: "fail", measured: 24 }), volts, supply);
    expect(fail).toMatchObject({ result: "fail", decidedBy: "technician", outside: [], isContradiction: false });
  });

  test("follows from the number where none is written; on a limit is inside", () => {
    const byNumber = (measured: number) => judgeLoopCheck(check({ measured }), volts, supply);
    expect(byNumber(12)).toMatchObject({ result: "pass", decidedBy: "number" });
    expect(byNumber(11.999)).toMatchObject({ result: "fail", decidedBy: "number", isContradiction: false });
  });

  test("is 'not looked at' without a result, a number, or a limit for the number", () => {
    for (const row of [check({}), check({ measured: "loose" })]) {
      expect(judgeLoopCheck(row, volts, supply)).toMatchObject({ result: "not looked at", decidedBy: null });
    }
    expect(judgeLoopCheck(check({ measured: 24 }), volts, undefined).result).toBe("not looked at");
    // What the tables say is no look at the loop.
    expect(judgeLoopCheck(check({}), volts, { ...supply, computed: 24 }).result).toBe("not looked at");
  });
});

describe("a contradiction", () => {
  test("is a pass whose number lies outside the workbook's limits, or outside its own", () => {
    const known = judgeLoopCheck(check({ result: "pass", measured: 11.4 }), volts, supply);
    expect(known).toMatchObject({ isContradiction: true, outside: ["11.4 V where 12 to 30 V is allowed"] });
    const own = judgeLoopCheck(check({ result: "pass", measured: 24, low: 24.5, unit: "V" }), undefined, undefined);
    expect(own).toMatchObject({ isContradiction: true, outside: ["24 V where 24.5 V or more is allowed"] });
    expect(judgeLoopCheck(check({ result: "pass", measured: 24 }), volts, supply).isContradiction).toBe(false);
  });

  test("is a pass that another table contradicts by a number or in words", () => {
    const burden: LoopLimit = { high: 571.43, computed: 603, basis: "load_max" };
    expect(judgeLoopCheck(check({ result: "pass", measured: 500 }), { unit: "Ω" }, burden).outside).toEqual([
      "603 Ω by the tables where 571.43 Ω at most is allowed",
    ]);
    const finding: LoopLimit = { finding: { isPass: false, says: "as left: fail" }, basis: "the readings" };
    expect(judgeLoopCheck(check({ result: "pass" }), {}, finding)).toMatchObject({
      isContradiction: true,
      found: "as left: fail",
      outside: ["as left: fail"],
    });
    expect(judgeLoopCheck(check({ result: "fail" }), {}, finding).isContradiction).toBe(false);
  });
});

describe("limits", () => {
  test("are the narrower of the row's own and the workbook's, on each side", () => {
    const limitsOf = (low: number, high: number) => judgeLoopCheck(check({ low, high }), volts, supply).limits;
    expect(limitsOf(18, 40)).toEqual({ low: 18, high: 30 });
    expect(limitsOf(10, 24)).toEqual({ low: 12, high: 24 });
    expect(judgeLoopCheck(check({ low: "dry" }), volts, supply).limits).toEqual({ low: 12, high: 30 });
  });

  test("are turned into the unit of the row", () => {
    const limit: LoopLimit = { high: 500, computed: 282.9, basis: "load_max" };
    const found = judgeLoopCheck(check({ result: "pass", measured: 0.6, unit: "kΩ" }), { unit: "Ω" }, limit);
    expect(found).toMatchObject({ unit: "kΩ", limits: { low: null, high: 0.5 }, isContradiction: true });
    // 282.9 / 1000, one rounding.
    expect(Math.abs((found.computed ?? 0) - 0.2829)).toBeLessThan(1e-16);
  });

  test("of another kind of unit are not compared, and that is said", () => {
    const found = judgeLoopCheck(check({ result: "pass", measured: 5, unit: "mA" }), volts, supply);
    expect(found).toMatchObject({ limits: { low: null, high: null }, isContradiction: false });
    expect(found.basis).toBe("not compared: it is measured in V");
  });

  test("the unit of the item stands in where the row names none, and capitals do not matter", () => {
    expect(judgeLoopCheck(check({ measured: 24 }), volts, supply).unit).toBe("V");
    expect(
      judgeLoopCheck(check({ measured: 1, unit: "Wires" }), { unit: "wires" }, { low: 2, basis: "x" }).result,
    ).toBe("fail");
  });
});

test("the example of the docblock", () => {
  expect(judgeLoopCheck(check({ item: "warm-up", measured: 20, low: 15 }), undefined, undefined).result).toBe("pass");
});
