import { expect, test } from "vitest";
import { findCauses } from "../../../src/verdict/causes/find-causes.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
import { nothingWrong, planted } from "./planted.ts";

const found = (evidence: ReturnType<typeof planted>) =>
  findCauses(evidence).findings.map(({ id, stage }) => `${id}: ${stage}`);

test("two faults at once name both stages", () => {
  expect(found(planted({ seen: (part) => part + 0.02, value: (part) => 0.2 + 0.8 * part }))).toEqual([
    "live-zero-scaled-from-zero: scaling",
    "datum-shifted: sensor",
  ]);
  const three = planted(
    { seen: (part) => 1.03 * part, signalAtCard: (signal) => 0.97 * signal, value: (part) => part + 0.1 * (1 - part) },
    { hasCard: true, hasCounts: true },
  );
  expect(found(three)).toEqual([
    "ends-taught-wrong: sensor",
    "shunt-or-gain-off: wiring",
    "low-constant-wrong: scaling",
  ]);
});

test("a blind zone does not hide the shift of the rest, nor an obstruction a wrong constant", () => {
  expect(found(planted({ seen: (part) => Math.max(0.25, part) + 0.02 }))).toEqual([
    "blind-zone: sensor",
    "datum-shifted: sensor",
  ]);
  expect(found(planted({ seen: (part) => Math.min(0.75, part), value: (part) => 1.1 * part }))).toEqual([
    "obstruction-in-beam: sensor",
    "high-constant-wrong: scaling",
  ]);
});

test("faults that hide each other in the value are both found", () => {
  const hidden = planted({ seen: (part) => part + 0.03, value: (part) => part - 0.03 }, { kind: signalKinds["20–4"] });
  expect(found(hidden)).toEqual(["datum-shifted: sensor", "offset-of-card: input card"]);
});

test("no finding is worded as a fact, and each says what would tell", () => {
  const { findings } = findCauses(planted({ seen: (part) => part + 0.02, value: (part) => 1.1 * part }));
  expect(findings).toHaveLength(2);
  for (const { says, separatedBy } of findings) {
    expect(says).toContain("consistent with");
    expect(separatedBy.length).toBeGreaterThan(20);
  }
});

test("a rival has its title beside its id, once, and no cause is its own rival", () => {
  const twoWires = { instrument: { loopPowered: true } };
  const [finding] = findCauses(planted({ seen: (part) => part + 0.02 }, twoWires)).findings;
  expect(finding?.rivals).toEqual([
    { id: "leakage-across-loop", title: "leakage across the two-wire loop" },
    { id: "both-ends-taught-wrong", title: "both ends of the range taught wrong" },
    { id: "reference-position-off", title: "a reference position or a mark that is off" },
  ]);
});

test("a healthy loop has neither finding nor note", () => {
  expect(findCauses(planted(nothingWrong))).toEqual({ findings: [], notes: [] });
});
