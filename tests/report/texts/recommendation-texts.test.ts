import { expect, test } from "vitest";
import {
  actionWords,
  constantsWords,
  firstReasons,
  headlineParts,
  laterWords,
  recommendationNow,
  recommendedPhases,
  stepsOf,
  thresholdOrigin,
  thresholdWords,
  workDoneWords,
} from "../../../src/report/texts/recommendation-texts.ts";
import { stepOf } from "../../../src/verdict/recommendation/step.ts";
import { demoRecord } from "../demo-records.ts";

const step = (action: Parameters<typeof stepOf>[0]["action"], of: Parameters<typeof stepOf>[0]["of"]) =>
  stepOf({ action, of, does: "Do it.", rule: "a rule", reasons: [] });

test("a headline names each kind of work once, in its order", () => {
  expect(headlineParts([step("re-teach", "sensor")])).toEqual(["Re-teach"]);
  expect(
    headlineParts([
      step("repair wiring or set-up", "set-up"),
      step("repair wiring or set-up", "wiring"),
      step("re-teach", "sensor"),
      step("re-teach", "switched output"),
      step("cannot be decided", "readings"),
    ]),
  ).toEqual(["Put the set-up right", "then repair the wiring", "then re-teach", "then look again"]);
});

test("the first page has two reasons of the only step, one of each where there are several", () => {
  const [one, two, three] = [{ says: "One." }, { says: "Two." }, { says: "Three." }];
  const reasons = [one, two, three];
  expect(firstReasons({ reasons }, 1)).toEqual([one, two]);
  expect(firstReasons({ reasons }, 2)).toEqual([one]);
});

test("what cannot be decided is named so where it stands first", () => {
  expect(actionWords(step("cannot be decided", "readings"))).toBe("Cannot be decided yet");
  expect(laterWords(step("cannot be decided", "readings"))).toBe("Look again");
  expect(actionWords(step("re-teach", "switched output"))).toBe("Re-teach the switched output");
});

test("a loop that is left says all that is asked for", () => {
  const does = "Leave it as it is, and complete the calibration.";
  expect(headlineParts([{ ...step("leave", "loop"), does }])).toEqual([
    "Leave it as it is, and complete the calibration",
  ]);
});

test("now is the last phase; the section shows it first", () => {
  expect(recommendationNow(demoRecord("LT-310"))?.phase).toBe("asLeft");
  expect(recommendationNow(demoRecord("ZT-233"))?.phase).toBe("asFound");
  expect(recommendedPhases(demoRecord("LT-310")).map(({ title }) => title)).toEqual(["As left", "As found"]);
  expect(recommendationNow({ ...demoRecord("ZT-233"), recommendation: undefined })).toBeUndefined();
});

test("constants are those of the design; the forecast's stand beside them where they may be used", () => {
  const record = demoRecord("LT-702");
  const [found] = stepsOf(record.recommendation!.asFound!);
  // Planted: 0 to 27648 counts shown as 100 to 2 instead of 100 to 0 % fill.
  expect(constantsWords(record, "asFound", found!)).toMatch(
    /^100 % fill at 0 counts, 0 % fill at 27648 counts, as designed; 99\.\d+ % fill at 0 counts, /u,
  );
  const scaled = stepsOf(demoRecord("ZT-330").recommendation!.asFound!)[0]!;
  expect(constantsWords(demoRecord("ZT-330"), "asFound", scaled)).toBe(
    "300 mm at 4 mA, 1500 mm at 20 mA, as designed.",
  );
  expect(constantsWords(record, "asFound", { constants: null })).toBeUndefined();
});

test("asked and done stand beside each other", () => {
  expect(workDoneWords(demoRecord("LT-702"))).toBe(
    "As found, this asks for: re-scale. Adjustment stated in the table: re-scale; that is what was asked for.",
  );
  const { recommendation, ...record } = demoRecord("LT-702");
  expect(workDoneWords({ ...record, recommendation: { ...recommendation!, workDone: undefined } })).toBeUndefined();
});

test("where more is asked for than an adjustment, none is not all of it", () => {
  const record = demoRecord("LT-310");
  const words = (first: ReturnType<typeof step>, complete: boolean) =>
    workDoneWords({
      ...record,
      phases: { asFound: { ...record.phases.asFound!, complete } },
      recommendation: {
        ...record.recommendation!,
        asFound: { ...first, also: [] },
        workDone: { asked: [first.action], done: "none", agreement: "as asked" },
      },
    });
  expect(words(step("leave", "loop"), true)).toMatch(/none; that is what was asked for\.$/u);
  const open = /none; no other was asked for, and whether the rest .* was done, the table does not say\.$/u;
  expect(words(step("leave", "loop"), false)).toMatch(open);
  expect(words(step("cannot be decided", "readings"), true)).toMatch(open);
});

test("a limit has its unit and its column", () => {
  const [adjustAt, residual] = demoRecord("LT-310").recommendation!.thresholds;
  expect([thresholdWords(adjustAt!), thresholdOrigin(adjustAt!)]).toEqual([
    "80 % of the tolerance",
    "instruments table, adjust_at",
  ]);
  expect(thresholdOrigin(residual!)).toBe("default, own choice; reteach_residual_max sets it");
  const growth = demoRecord("LT-310").recommendation!.thresholds.find(({ name }) => name === "driftGrowthMax");
  expect(thresholdWords(growth!)).toBe("2 times");
});
