import { describe, expect, test } from "vitest";
import { changedOutputs, missingOutputs, outputsWord } from "../../src/assembly/outputs-of-overall.ts";
import type { Statement } from "../../src/record/record-schema.ts";
import type { SwitchedPhaseRecord, SwitchingRecord } from "../../src/record/switching-schema.ts";
import { demoRecord } from "../report/demo-records.ts";

const [output] = demoRecord("LT-310").switching!;

/** A phase of the demo's Q1 with another statement. */
const judged = (statement: Statement | null): SwitchedPhaseRecord => ({ ...output!.phases.asFound!, statement });
/** One of which trips were taken the other way only. */
const otherWay: SwitchedPhaseRecord = { ...judged(null), setPoint: null };

const q1 = (phases: SwitchingRecord["phases"], more: Partial<SwitchingRecord["output"]> = {}) => ({
  switching: [{ ...output!, output: { ...output!.output, ...more }, phases }],
});
const said = (...[record, of]: Parameters<typeof missingOutputs>) => missingOutputs(record, of).map(({ says }) => says);

describe("an output of the table", () => {
  test("that nobody tried is named, in whatever state the loop was read", () => {
    for (const of of ["asFound", "asLeft", null] as const) {
      expect(missingOutputs(q1({}), of)).toEqual([{ about: "output", says: "switched output Q1 was not tried" }]);
      expect(outputsWord(q1({}), of)).toBeNull();
    }
  });

  test("that was tripped the other way only is open, and named with the direction in which it counts", () => {
    expect(said(q1({ asFound: otherWay }), "asFound")).toEqual([
      "the set point of switched output Q1 was not measured on approach, the direction in which it counts, as found",
    ]);
    expect(said(q1({ asFound: otherWay }, { criticalDirection: "recede" }), "asFound")[0]).toContain("on recede");
  });

  test("that failed as found is open until it is tried again in that direction", () => {
    const asFound = judged("fail");
    expect(said(q1({ asFound }), "asLeft")).toEqual(["switched output Q1, as found fail, was not tried again as left"]);
    const again = q1({ asFound, asLeft: otherWay });
    expect(said(again, "asLeft")[0]).toContain("was not measured on approach");
    expect(outputsWord(again, "asLeft")).toBeNull();
    const passed = q1({ asFound, asLeft: judged("pass") });
    expect([said(passed, "asLeft"), outputsWord(passed, "asLeft")]).toEqual([[], "pass"]);
  });

  test("that passed as found stands for itself, and what was found is no question of what was left", () => {
    const asFound = judged("pass");
    for (const phases of [{ asFound }, { asFound, asLeft: otherWay }]) {
      expect([said(q1(phases), "asLeft"), outputsWord(q1(phases), "asLeft")]).toEqual([[], "pass"]);
    }
    expect(said(q1({ asFound: judged("fail") }), "asFound")).toEqual([]);
  });
});

test("one that trips elsewhere as left than as found, by more than both uncertainties, was worked on", () => {
  const at = (error: number, expandedUncertainty = 3) => {
    const phase = judged("pass");
    return { ...phase, setPoint: { ...phase.setPoint!, error, expandedUncertainty } };
  };
  const changed = (asFound: SwitchedPhaseRecord, asLeft: SwitchedPhaseRecord) =>
    changedOutputs(q1({ asFound, asLeft }), (distance) => `${distance} mm`);
  // By the root of the sum of squares: √(3² + 4²) = 5.
  expect(changed(at(1), at(6, 4))).toEqual([]);
  expect(changed(at(1), at(-4.01, 4))).toEqual([
    {
      about: "adjustment",
      says: "switched output Q1 trips 5.01 mm off where it tripped as found, more than the uncertainty, and no adjustment is named",
    },
  ]);
  expect(changed(at(1), otherWay)).toEqual([]);
});

test("without outputs nothing is missing, and nothing is said", () => {
  expect([missingOutputs({}, "asFound"), outputsWord({}, "asFound")]).toEqual([[], null]);
});
