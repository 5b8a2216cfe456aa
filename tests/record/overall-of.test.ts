import { expect, test } from "vitest";
import { overallOf } from "../../src/record/overall-of.ts";
import { demoRecord } from "../report/demo-records.ts";

const record = demoRecord("LT-310");
const { overall: _, ...form1 } = record;

test("a record's own word is taken as it stands", () => {
  expect(overallOf(record)).toBe(record.overall);
});

test("of form 1 it is the worst of readings and switched outputs as left, and whether the loop was handed back", () => {
  expect(overallOf(form1)).toMatchObject({ word: "pass", of: "asLeft", loop: "pass", complete: true, missing: [] });
  const loopChecks = { ...record.loopChecks!, incomplete: ["nobody has answered that the loop was restored"] };
  expect(overallOf({ ...form1, loopChecks })).toMatchObject({ word: "not complete", complete: false });
  expect(overallOf({ ...form1, phases: {} })).toMatchObject({ word: "not complete", of: null });
});
