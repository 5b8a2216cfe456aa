import { expect, test } from "vitest";
import { deadSignalCauses } from "../../../src/verdict/causes/dead-signal-causes.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
import { nothingWrong, planted, rowsOf } from "./planted.ts";

test.each([
  [29, "4–20", 0.02],
  [29, "0–10", 0.003],
  [30, "0–10", 18],
  [30, "4–20", 1.2],
  [30, "0–20", 0.5],
  [18, "4–20", 21.8],
] as const)("row %i: a %s signal that stays at %f whatever the distance", (row, kind, level) => {
  expect(rowsOf(deadSignalCauses, planted({ signal: () => level }, { kind: signalKinds[kind] }))).toEqual([row]);
});

test("on a signal from zero the finding says that nothing tells a broken wire from its low end", () => {
  const [finding] = deadSignalCauses(planted({ signal: () => 0 }, { kind: signalKinds["0–10"] }));
  expect(finding?.says).toContain("nothing in the controller tells a broken wire from its low end");
  const [live] = deadSignalCauses(planted({ signal: () => 0 }));
  expect(live?.says).not.toContain("nothing in the controller");
});

test("a signal that follows, or that stands still inside its range, is none of these", () => {
  expect(rowsOf(deadSignalCauses, planted(nothingWrong))).toEqual([]);
  expect(rowsOf(deadSignalCauses, planted({ signal: () => 12 }))).toEqual([]);
});
