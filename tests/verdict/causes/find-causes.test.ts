import { expect, test } from "vitest";
import { findCauses } from "../../../src/verdict/causes/find-causes.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
import { nothingWrong, planted } from "./planted.ts";

const found = (evidence: ReturnType<typeof planted>) =>
  findCauses(evidence)
    .findings.map(({ row, stage }) => `${row} ${stage}`)
    .sort();

test("two faults at once name both stages", () => {
  expect(found(planted({ seen: (part) => part + 0.02, value: (part) => 0.2 + 0.8 * part }))).toEqual([
    "1 scaling",
    "10 sensor",
  ]);
  const three = planted(
    { seen: (part) => 1.03 * part, signalAtCard: (signal) => 0.97 * signal, value: (part) => part + 0.1 * (1 - part) },
    { hasCard: true, hasCounts: true },
  );
  expect(found(three)).toEqual(["11 wiring", "21 sensor", "3 scaling"]);
});

test("a blind zone does not hide the shift of the rest, nor an obstruction a wrong constant", () => {
  expect(found(planted({ seen: (part) => Math.max(0.25, part) + 0.02 }))).toEqual(["10 sensor", "15 sensor"]);
  expect(found(planted({ seen: (part) => Math.min(0.75, part), value: (part) => 1.1 * part }))).toEqual([
    "16 sensor",
    "4 scaling",
  ]);
});

test("faults that hide each other in the value are both found", () => {
  const hidden = planted({ seen: (part) => part + 0.03, value: (part) => part - 0.03 }, { kind: signalKinds["20–4"] });
  expect(found(hidden)).toEqual(["10 sensor", "9 input card"]);
});

test("no finding is worded as a fact, and each says what would tell", () => {
  const { findings } = findCauses(planted({ seen: (part) => part + 0.02, value: (part) => 1.1 * part }));
  expect(findings).toHaveLength(2);
  for (const { says, separatedBy } of findings) {
    expect(says).toContain("consistent with");
    expect(separatedBy.length).toBeGreaterThan(20);
  }
});

test("a healthy loop has neither finding nor note", () => {
  expect(findCauses(planted(nothingWrong))).toEqual({ findings: [], notes: [] });
});
