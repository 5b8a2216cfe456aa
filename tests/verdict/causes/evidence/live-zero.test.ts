import { expect, test } from "vitest";
import { liveZeroMistake } from "../../../../src/verdict/causes/evidence/live-zero.ts";
import { signalKinds } from "../../../computed/faults/faulty-loop.ts";
import { nothingWrong, planted } from "../planted.ts";

const mistakeOf = (evidence: ReturnType<typeof planted>, stage: 0 | 1) =>
  liveZeroMistake(evidence, evidence.stages[stage]!);

test("4 mA read as 0 to 20 mA is 20 % of it: +20 % at the low end, right at the high end", () => {
  expect(mistakeOf(planted({ value: (part) => (4 + 16 * part) / 20 }), 1)).toBe("live-zero-scaled-from-zero");
  expect(mistakeOf(planted({ value: (part) => (4 + 16 * part) / 20 + 0.01 }), 1)).toBeUndefined();
});

test("a signal from zero read as 4 to 20 mA: −25 % at the low end, right at the high end", () => {
  const zeroAsLive = (part: number) => (20 * part - 4) / 16;
  expect(mistakeOf(planted({ value: zeroAsLive }, { kind: signalKinds["0–20"] }), 1)).toBe(
    "from-zero-scaled-as-live-zero",
  );
  expect(mistakeOf(planted({ seen: zeroAsLive }), 0)).toBe("from-zero-scaled-as-live-zero");
});

test("a healthy stage, one without a line and the wiring have neither", () => {
  const evidence = planted(nothingWrong);
  expect(mistakeOf(evidence, 1)).toBeUndefined();
  expect(liveZeroMistake(evidence, { ...evidence.stages[1]!, line: undefined })).toBeUndefined();
  expect(liveZeroMistake(evidence, { ...evidence.stages[1]!, stage: "wiring" })).toBeUndefined();
});
