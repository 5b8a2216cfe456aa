import { describe, expect, test } from "vitest";
import type { Calibration, LoopCheck } from "../../../src/model/calibration.ts";
import type { Instrument } from "../../../src/model/instrument.ts";
import { judgeLoopChecks } from "../../../src/verdict/loop-check/judge-loop-checks.ts";

const instrument: Instrument = Object.freeze({
  tag: "LT-1",
  rangeLower: 0,
  rangeUpper: 100,
  distanceUnit: "mm",
  signalLower: 4,
  signalUpper: 20,
  signalUnit: "mA",
  tolerance: 1,
  toleranceBasis: "distance",
  supplyMin: 12,
});
const calibration: Calibration = Object.freeze({ calibration: "C-1", tag: "LT-1" });
const row = (item: string, more: Partial<LoopCheck> = {}): LoopCheck => ({ calibration: "C-1", item, ...more });
const judged = (checks: readonly LoopCheck[], more: Partial<Instrument> = {}, work: Partial<Calibration> = {}) =>
  judgeLoopChecks(checks, {
    instrument: { ...instrument, ...more },
    calibration: { ...calibration, ...work },
    outputs: [],
  });

test("a row finds its item whatever its capitals, and an item of the user's own is kept", () => {
  const { findings } = judged([row("Supply at full-output", { measured: 11 }), row("smell of burning")]);
  expect(findings.map(({ item, result }) => [item?.number, result])).toEqual([
    [4, "fail"],
    [undefined, "not looked at"],
  ]);
});

test("items that apply and have no result are named; 'not applicable' is a result", () => {
  const before = judged([]).notLookedAt;
  expect(before).toContain("insulation");
  const after = judged([
    row("insulation", { result: "not applicable" }),
    row("shield"),
    row("burden", { measured: 5 }),
  ]);
  expect(before.filter((key) => !after.notLookedAt.includes(key))).toEqual(["insulation"]);
});

test("what the readings add decides too", () => {
  const further = new Map([
    ["end to end" as const, { finding: { isPass: false, says: "as left: fail" }, basis: "readings" }],
  ]);
  const context = { instrument: { ...instrument, valueLower: 0, valueUpper: 1 }, calibration, outputs: [] };
  const { findings } = judgeLoopChecks([row("end to end", { result: "pass" })], context, further);
  expect(findings[0]).toMatchObject({ isContradiction: true, outside: ["as left: fail"] });
});

describe("restored", () => {
  const missing = ["nobody has answered that the loop was restored"];

  test("is asked for where the loop is a safety function or was bypassed, and nowhere else", () => {
    expect(judged([], { criticality: "safety" }).incomplete).toEqual(missing);
    expect(judged([], {}, { bypassPermit: "EX-1" }).incomplete).toEqual(missing);
    expect(judged([], {}, { bypassPermit: "none" }).incomplete).toEqual([]);
    for (const criticality of ["quality", "general", undefined] as const) {
      expect(judged([], { criticality }).incomplete).toEqual([]);
    }
  });

  test("only a pass of its last row closes it", () => {
    const incomplete = (...results: readonly LoopCheck["result"][]) =>
      judged(
        results.map((result) => row("Restored", { result })),
        { criticality: "safety" },
      ).incomplete;
    expect(incomplete("pass")).toEqual([]);
    expect(incomplete("fail", "pass")).toEqual([]);
    expect(incomplete("pass", "fail")).toEqual(["the answer to whether the loop was restored is: fail"]);
    expect(incomplete("not applicable")).toEqual(["the answer to whether the loop was restored is: not applicable"]);
    expect(incomplete(undefined)).toEqual(missing);
  });
});
