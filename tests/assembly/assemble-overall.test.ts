import { describe, expect, test } from "vitest";
import { assembleOverall } from "../../src/assembly/assemble-overall.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { demoRecord } from "../report/demo-records.ts";

const record = demoRecord("LT-310");
const overall = (more: Partial<CalibrationRecord> = {}) => assembleOverall({ ...record, ...more }).overall;

type Items = NonNullable<CalibrationRecord["loopChecks"]>["items"];
const item = record.loopChecks!.items[0]!;
const withItems = (...items: Partial<Items[number]>[]) => ({
  loopChecks: {
    ...record.loopChecks!,
    incomplete: [],
    items: items.map((more) => ({ ...item, outside: [], isContradiction: false, ...more })),
  },
});

const output = record.switching![0]!;
const tripped = (asFound: "pass" | "fail", asLeft?: "pass" | "fail") => ({
  switching: [
    {
      ...output,
      phases: {
        asFound: { ...output.phases.asFound!, statement: asFound },
        ...(asLeft && { asLeft: { ...output.phases.asFound!, statement: asLeft } }),
      },
    },
  ],
});

test("the demo's LT-310 passes as it was left, and is complete", () => {
  expect(overall()).toMatchObject({ word: "pass", of: "asLeft", loop: "pass", complete: true, missing: [] });
});

describe("a switched output", () => {
  test("that failed as found and was not tried again keeps the record open: no pass, and no fail", () => {
    const found = overall(tripped("fail"));
    expect(found).toMatchObject({ word: "not complete", outputs: null, complete: false });
    expect(found.missing).toEqual([
      { about: "output", says: `switched output ${output.output.output}, as found fail, was not tried again as left` },
    ]);
  });

  test("that was tried again says what it says, and one that passed as found still stands for itself", () => {
    expect(overall(tripped("fail", "pass"))).toMatchObject({ word: "pass", outputs: "pass" });
    expect(overall(tripped("fail", "fail"))).toMatchObject({ word: "fail", outputs: "fail", complete: true });
    expect(overall(tripped("pass"))).toMatchObject({ word: "pass", outputs: "pass" });
  });

  test("whose wiring does not fit the input is no pass", () => {
    const switching = [{ ...output, wiring: { ...output.wiring, statement: "fail" as const } }];
    expect(overall({ switching })).toMatchObject({ word: "fail", outputs: "fail" });
  });
});

describe("an adjustment that is named, and nothing read after it,", () => {
  const { asLeft: _, ...found } = record.phases;
  const passing = { asFound: { ...found.asFound!, verdict: "pass" as const } };
  const failing = { asFound: { ...found.asFound!, verdict: "fail" as const } };
  const missing = [
    { about: "adjustment", says: "the loop was adjusted (re-teach), and no readings were taken as left" },
  ];

  test("keeps the record open: a pass is of what was found, a fail stays one and is not the whole of it", () => {
    expect(overall({ phases: passing, switching: [] })).toMatchObject({ word: "not complete", loop: "pass", missing });
    expect(overall({ phases: failing, switching: [] })).toMatchObject({ word: "fail", complete: false, missing });
  });

  test("says nothing against the phase as found, which was read as far as it was", () => {
    const { phases } = assembleOverall({ ...record, phases: passing, switching: [] });
    expect(phases.asFound).toMatchObject({ complete: true, missing: [] });
  });

  test("is open too where its outputs were tried again: they pass as left, the loop is unknown", () => {
    const found = overall({ phases: failing, ...tripped("fail", "pass") });
    expect(found).toMatchObject({ word: "not complete", of: "asLeft", loop: null, outputs: "pass", missing });
  });

  test("is another thing than nothing adjusted: there what was found stands for what was left", () => {
    const calibration = { ...record.calibration, adjustment: "none" as const };
    const switched = tripped("fail", "pass");
    expect(overall({ phases: passing, calibration, ...switched })).toMatchObject({ word: "pass", loop: "pass" });
    expect(overall({ phases: failing, calibration, ...switched })).toMatchObject({ word: "fail", complete: true });
  });

  test("or a loop that has nothing to read but its outputs, tried again, is complete", () => {
    expect(overall({ phases: {}, ...tripped("fail", "pass") })).toMatchObject({ word: "pass", complete: true });
  });
});

describe("the loop check", () => {
  test("with an item that failed and was not looked at again after the work keeps the record open", () => {
    const found = overall(withItems({ item: "shield", result: "fail" }));
    expect(found).toMatchObject({ word: "not complete", loopCheck: "pass" });
    expect(found.missing[0]?.says).toBe('the item "shield" of the loop check failed and was not looked at again');
  });

  test("is decided by the last row of an item", () => {
    const shield = { item: "shield" } as const;
    const again = withItems({ ...shield, result: "fail" }, { ...shield, result: "pass" });
    expect(overall(again)).toMatchObject({ word: "pass", loopCheck: "pass", complete: true });
    const still = withItems({ ...shield, result: "fail" }, { ...shield, result: "fail" });
    expect(overall(still)).toMatchObject({ word: "fail", loopCheck: "fail" });
  });

  test("fails where nothing was done to the loop", () => {
    const { asLeft: _, ...found } = record.phases;
    const calibration = { ...record.calibration, adjustment: "none" as const };
    const asIs = { phases: found, calibration, ...tripped("pass"), ...withItems({ item: "shield", result: "fail" }) };
    expect(overall(asIs)).toMatchObject({ of: "asFound", loopCheck: "fail" });
  });

  test("that does not say whether a bypassed loop was restored keeps the record open", () => {
    const loopChecks = { ...record.loopChecks!, incomplete: ["nobody has answered that the loop was restored"] };
    expect(overall({ loopChecks })).toMatchObject({ word: "not complete", complete: false });
  });
});

test("a fail is worse than what is not complete, and a record without readings and trips is not complete", () => {
  const asLeft = { ...record.phases.asLeft!, verdict: "fail" as const };
  expect(overall({ phases: { ...record.phases, asLeft }, ...tripped("fail") }).word).toBe("fail");
  expect(overall({ phases: {}, switching: [] })).toMatchObject({ word: "not complete", of: null, complete: false });
});

test("an end where the signal stood at its own end was reached, and is said to be", () => {
  const { rangeLower } = record.instrument;
  const asLeft = record.phases.asLeft!;
  const first = asLeft.points[0]!.point;
  const phase = {
    ...asLeft,
    points: asLeft.points.slice(1),
    endPoints: asLeft.endPoints?.slice(1),
    readings: asLeft.readings.map((one) => (one.point === first ? { ...one, railed: "low" as const } : one)),
  };
  expect(first).toBe(rangeLower);
  const says = overall({ phases: { ...record.phases, asLeft: phase } }).missing.map((one) => one.says);
  expect(says).toContain(
    "the lower end of the range was reached, at 300 mm, and the signal stood at its own end there, at or beyond: no error was measured",
  );
});

test("as left that was copied from as found says nothing of a loop that was adjusted; of one that was not, it says the same", () => {
  const { asFound, asLeft } = record.phases;
  const phases = { asFound: asLeft!, asLeft: asLeft! };
  const copied = overall({ phases });
  expect(copied).toMatchObject({ word: "not complete", loop: "pass", complete: false });
  expect(copied.missing.map(({ about }) => about)).toContain("copies");
  const untouched = overall({ phases, calibration: { ...record.calibration, adjustment: "none" } });
  expect(untouched.missing.map(({ about }) => about)).not.toContain("copies");
  expect(asFound!.readings.length).toBeGreaterThan(10);
});

test("each phase says of itself whether it is complete", () => {
  const { phases } = assembleOverall({ ...record, instrument: { ...record.instrument, pointsNeeded: 99 } });
  expect(phases.asFound).toMatchObject({ complete: false });
  expect(phases.asLeft?.missing.map(({ about }) => about)).toEqual(["points"]);
});

test("a test point whose readings were all rejected leaves the record open, and one rejected reading does not", () => {
  const asLeft = record.phases.asLeft!;
  const middle = asLeft.points[3]!.point;
  const rejecting = (isRejected: (one: (typeof asLeft.readings)[number], place: number) => boolean) => {
    const readings = asLeft.readings.map((one, place) =>
      isRejected(one, place) ? { ...one, leftOut: "rejected: cart knocked" } : one,
    );
    const isKept = ({ point }: { point: number }) =>
      readings.some((one) => one.point === point && one.leftOut === undefined);
    const points = asLeft.points.filter(isKept);
    const phase = {
      ...asLeft,
      readings,
      points,
      ...(asLeft.endPoints && { endPoints: asLeft.endPoints.filter(isKept) }),
    };
    return overall({ phases: { ...record.phases, asLeft: phase } });
  };
  const open = rejecting(({ point }) => point === middle);
  expect(open.complete).toBe(false);
  expect(open.missing.map(({ says }) => says).join()).toContain("was rejected, and it was not read again");
  const first = asLeft.readings.findIndex(({ point }) => point === middle);
  expect(
    rejecting((_, place) => place === first)
      .missing.map(({ says }) => says)
      .join(),
  ).not.toContain("was rejected");
});
