import { expect, test } from "vitest";
import { causesSchema } from "../../src/record/causes-schema.ts";

const finding = {
  row: 10,
  title: "datum, mount or zero shifted",
  stage: "sensor",
  says: "This is consistent with a shifted datum.",
  evidence: [{ name: "gain", value: 1, unit: "", standardUncertainty: 0.001 }],
  rivals: [],
  separatedBy: "measure the distance from the datum",
};
const phase = { stageLines: [], findings: [finding], notes: [] };

test("a finding has a row of the list, a place, evidence and what would tell", () => {
  expect(causesSchema.safeParse({ asFound: phase }).success).toBe(true);
});

test.each([
  ["a row that does not exist", { row: 35 }],
  ["a place that does not exist", { stage: "cloud" }],
  ["evidence without a unit", { evidence: [{ name: "gain", value: 1 }] }],
  ["a key that nobody knows", { weight: 1 }],
])("%s is refused", (_, changed) => {
  expect(causesSchema.safeParse({ asFound: { ...phase, findings: [{ ...finding, ...changed }] } }).success).toBe(false);
});
