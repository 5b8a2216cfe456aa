import { expect, test } from "vitest";
import { missingEvidence } from "../../src/assembly/missing-evidence.ts";

type Record = Parameters<typeof missingEvidence>[0];
type Phase = Parameters<typeof missingEvidence>[1];

const rule = (name: Record["decisionRule"]["name"]) => ({ name }) as Record["decisionRule"];
const rail = { standard: "RAIL-1", quantity: "distance", uncertaintyUnit: "mm", expandedUncertainty: 0.2 };
const record = (name: Record["decisionRule"]["name"], standards: readonly object[] = []): Record => ({
  decisionRule: rule(name),
  standards: standards as Record["standards"],
});
const phase = (...readings: object[]): Phase => ({ readings: readings as Phase["readings"] });
const says = (of: Record, found: Phase) => missingEvidence(of, found).map((one) => one.says);
const read = { signal: 12, errorDistance: 0.1 };

test("a value that was read and that nobody says how to judge is no end of the loop that passes", () => {
  const simple = record("simple acceptance");
  expect(says(simple, phase({ ...read, value: 700 }))).toEqual([
    "the controller's value was read and not judged, for value_lower and value_upper are not stated",
  ]);
  expect(says(simple, phase({ ...read, value: 700, loopErrorDistance: 0.1 }))).toEqual([]);
  expect(says(simple, phase({ ...read, counts: 13824 }))).toEqual([
    "the raw counts were read and not judged, for counts_lower and counts_upper are not stated",
  ]);
  expect(says(simple, phase({ ...read, counts: 13824, inputCardErrorDistance: 0.1 }))).toEqual([]);
  expect(says(simple, phase({ counts: 13824, errorDistance: 0.1 })), "counts alone are the first stage").toEqual([]);
  expect(says(simple, phase(read))).toEqual([]);
});

test("a rule that takes U off wants the U of the reference in it; simple acceptance takes none off", () => {
  for (const name of ["guard band", "non-binary guard band", "managed guard band"] as const) {
    expect(says(record(name), phase(read))[0]).toContain("no standard of the reference distance is named with its own");
    expect(says(record(name, [rail]), phase(read))).toEqual([]);
    expect(says(record(name, [{ ...rail, expandedUncertainty: undefined }]), phase(read))).toHaveLength(1);
    expect(says(record(name, [{ ...rail, uncertaintyUnit: "mA" }]), phase(read))).toHaveLength(1);
  }
  expect(says(record("simple acceptance"), phase(read))).toEqual([]);
  expect(says(record("guard band"), phase())).toEqual([]);
});
