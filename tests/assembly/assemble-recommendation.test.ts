import { describe, expect, test } from "vitest";
import { assembleOverall } from "../../src/assembly/assemble-overall.ts";
import { assembleRecommendation } from "../../src/assembly/assemble-recommendation.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { recordSummary } from "../../src/record/record-summary.ts";
import { demoRecord, demoRecords } from "../report/demo-records.ts";

const stepsOf = ({ recommendation }: CalibrationRecord, phase: "asFound" | "asLeft") => {
  const found = recommendation?.[phase];
  return found && [found, ...found.also].map(({ action, of }) => `${action}: ${of}`);
};

/** What an experienced engineer would say of what was planted in each loop of data-demo. */
const expected: Readonly<Record<string, readonly (readonly string[])[]>> = {
  "ZT-201": [["leave: loop"]],
  "LT-310": [["repair wiring or set-up: set-up", "re-teach: sensor"], ["leave: loop"]],
  "ZT-115": [["re-teach: sensor"], ["leave: loop"]],
  "ZT-407": [["replace: sensor"], ["replace: sensor"]],
  "ZT-520": [["leave: loop"]],
  "LT-640": [["repair wiring or set-up: wiring", "re-teach: sensor", "re-teach: switched output"]],
  "LT-702": [["re-scale: controller"], ["leave: loop"]],
  "ZT-233": [["re-teach: sensor"]],
  "LT-318": [["repair wiring or set-up: set-up"]],
  "ZT-330": [["re-scale: controller", "re-teach: sensor"]],
  "ZT-331": [["repair wiring or set-up: wiring", "cannot be decided: readings"]],
  "LT-332": [["repair wiring or set-up: set-up"]],
  "LT-333": [["repair wiring or set-up: wiring", "re-scale: controller"]],
};

describe("the loops of the demo", () => {
  test.each(Object.entries(expected))("%s is told what was planted in it asks for", (tag, [asFound, asLeft]) => {
    expect(stepsOf(demoRecord(tag), "asFound")).toEqual(asFound);
    expect(stepsOf(demoRecord(tag), "asLeft")).toEqual(asLeft);
  });

  test("are all told something, with a reason and a rule for every step", () => {
    expect(demoRecords.map(({ instrument }) => instrument.tag).toSorted()).toEqual(Object.keys(expected).toSorted());
    for (const { recommendation } of demoRecords) {
      for (const phase of [recommendation?.asFound, recommendation?.asLeft]) {
        for (const step of phase === undefined ? [] : [phase, ...phase.also]) {
          expect(step.reasons.length).toBeGreaterThan(0);
          expect(step.rule).not.toBe("");
          expect(step.does).toMatch(/\.$/u);
        }
      }
    }
  });
});

test("the work that was done is laid beside what the loop as found asked for", () => {
  expect(demoRecord("LT-702").recommendation?.workDone?.agreement).toBe("as asked");
  expect(demoRecord("ZT-407").recommendation?.workDone?.agreement).toBe("something else");
  expect(demoRecord("ZT-331").recommendation?.workDone?.agreement).toBe("nothing was done");
});

describe("where nothing was read as left", () => {
  const record = demoRecord("LT-310");
  const { asLeft: _, ...phases } = record.phases;
  const [q1] = record.switching!;
  const found = (adjustment: "none" | "re-teach", asLeft = q1!.phases.asLeft) => {
    const calibration = { ...record.calibration, adjustment };
    const switching = [{ ...q1!, phases: { asFound: q1!.phases.asFound!, ...(asLeft && { asLeft }) } }];
    const measured = { ...record, phases, calibration, switching };
    return assembleRecommendation({ ...measured, ...assembleOverall(measured) });
  };

  test("after an adjustment, it is to be read before anything else is decided", () => {
    const recommendation = found("re-teach");
    expect(recommendation.recommendation?.asLeft).toMatchObject({
      of: "readings",
      action: "cannot be decided",
      also: [],
    });
    expect(recommendation.recommendation?.asLeft?.does).toContain("Read the loop as left");
  });

  test("and nothing adjusted, readings as found and outputs as left are what there is", () => {
    // What Q1 shares with the analog value asks for the set-up; as left Q1 passes, and the sensor is still off.
    const asked = ["repair wiring or set-up: set-up", "re-teach: sensor"];
    expect(stepsOf({ ...record, ...found("none") }, "asFound")).toEqual(asked);
    expect(stepsOf({ ...record, ...found("none") }, "asLeft")).toEqual(asked.slice(1));
    expect(stepsOf({ ...record, ...found("none", q1!.phases.asFound) }, "asLeft")).toEqual(asked);
  });
});

test("without phases there is nothing to recommend", () => {
  expect(assembleRecommendation({ ...demoRecord("LT-310"), phases: {} })).toEqual({});
});

describe("the filed history", () => {
  const record = demoRecord("ZT-115");
  const summary = recordSummary(sealRecord(record));
  const asked = (history: CalibrationRecord["history"]) =>
    assembleRecommendation({ ...record, history }).recommendation!;

  test("of two re-teaches that drifted the same way ends in a replacement", () => {
    const earlier = [
      { ...summary, calibration: "C-1", performedOn: "2025-04-09" },
      { ...summary, calibration: "C-2", performedOn: "2025-10-09" },
    ];
    // As left inside, as found off the same way: each interval has the drift of this record.
    expect(asked(earlier).asFound).toMatchObject({ action: "replace", of: "sensor" });
    expect(asked(earlier.slice(1)).asFound?.action).toBe("re-teach");
    expect(asked(earlier).history[0]).toContain("From C-1 to C-2, after re-teach");
  });

  test("is said to be missing where none was given", () => {
    expect(asked(undefined).history).toEqual(["No filed history was given."]);
  });
});
