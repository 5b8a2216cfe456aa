import { expect, test } from "vitest";
import { causesSchema } from "../../src/record/causes-schema.ts";

const finding = {
  id: "datum-shifted",
  title: "datum, mount or zero shifted",
  stage: "sensor",
  says: "This is consistent with a shifted datum.",
  evidence: [{ name: "gain", value: 1, unit: "", standardUncertainty: 0.001 }],
  rivals: [],
  separatedBy: "measure the distance from the datum",
};
const phase = { stageLines: [], findings: [finding], notes: [] };

test("a finding has an id, a place, evidence and what would tell", () => {
  expect(causesSchema.safeParse({ asFound: phase }).success).toBe(true);
});

test.each([
  ["an id that is empty", { id: "" }],
  ["a rival without a title", { rivals: [{ id: "air-temperature" }] }],
  ["a place that does not exist", { stage: "cloud" }],
  ["evidence without a unit", { evidence: [{ name: "gain", value: 1 }] }],
  ["a key that nobody knows", { weight: 1 }],
])("%s is refused", (_, changed) => {
  expect(causesSchema.safeParse({ asFound: { ...phase, findings: [{ ...finding, ...changed }] } }).success).toBe(false);
});

test("an id that this program does not know is read, for a later one may know more", () => {
  const later = { ...finding, id: "mains-hum", rivals: [{ id: "loose-shield", title: "a shield that lies open" }] };
  expect(causesSchema.safeParse({ asFound: { ...phase, findings: [later] } }).success).toBe(true);
});
