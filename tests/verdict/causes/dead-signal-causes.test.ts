import { expect, test } from "vitest";
import { mixedUp, openWire, signalAtItsEnd } from "../../../src/verdict/causes/dead-signal-causes.ts";
import { lostWithFault } from "../../../src/verdict/causes/lost-target-causes.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const deadSignalCauses = [mixedUp, openWire, signalAtItsEnd, lostWithFault];

test.each([
  ["open-wire", "4–20", 0.02],
  ["open-wire", "0–10", 0.003],
  ["current-and-voltage-mixed-up", "0–10", 18],
  ["current-and-voltage-mixed-up", "4–20", 1.2],
  ["current-and-voltage-mixed-up", "0–20", 0.5],
  ["target-lost-fault", "4–20", 21.8],
  ["signal-at-its-end", "4–20", 20.5],
  ["signal-at-its-end", "4–20", 3.8],
  ["signal-at-its-end", "0–10", 10.3],
] as const)("%s: a %s signal that stays at %f whatever the distance", (id, kind, level) => {
  expect(idsOf(deadSignalCauses, planted({ signal: () => level }, { kind: signalKinds[kind] }))).toEqual([id]);
});

test("on a signal from zero the finding says that nothing tells a broken wire from its low end", () => {
  const [finding] = findingsOf(deadSignalCauses, planted({ signal: () => 0 }, { kind: signalKinds["0–10"] }));
  expect(finding?.says).toContain("nothing in the controller tells a broken wire from its low end");
  const [live] = findingsOf(deadSignalCauses, planted({ signal: () => 0 }));
  expect(live?.says).not.toContain("nothing in the controller");
});

test("a signal that follows, or that stands still inside its range, is none of these", () => {
  expect(idsOf(deadSignalCauses, planted(nothingWrong))).toEqual([]);
  expect(idsOf(deadSignalCauses, planted({ signal: () => 12 }))).toEqual([]);
});
