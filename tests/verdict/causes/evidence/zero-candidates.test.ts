import { expect, test } from "vitest";
import { isTurnedRound, missOf, namedByZero } from "../../../../src/verdict/causes/evidence/zero-candidates.ts";
import { planted } from "../planted.ts";

const candidates = [
  { name: "datum", at: "nowhere" },
  { name: "far end", at: 0 },
  { name: "near end", at: 100 },
  { name: "face", at: -20 },
] as const;
const named = (seen: (part: number) => number) => namedByZero(planted({ seen }).stages[0]!, candidates);

test("a line is named by the place where it has no error", () => {
  expect(named((part) => part + 0.02)).toEqual({ named: "datum", rivals: [] });
  expect(named((part) => part * 1.02)).toEqual({ named: "far end", rivals: [] });
  expect(named((part) => part - 0.02 * (1 - part))).toEqual({ named: "near end", rivals: [] });
  expect(named((part) => part + 0.02 * (part + 0.2))).toEqual({ named: "face", rivals: [] });
});

test("a line through none of the places is not named", () => {
  expect(named((part) => part + 0.05 * (part - 0.4)).named).toBeUndefined();
});

test("what the uncertainty leaves open stands among the rivals", () => {
  const stage = planted({ seen: (part) => part + 0.004 * part }, { noise: 0.6 }).stages[0]!;
  const { rivals } = namedByZero(stage, candidates);
  expect(rivals.length).toBeGreaterThan(0);
});

test("a level line misses being level by less than three uncertainties; a stage without a line is refused", () => {
  expect(missOf(planted({ seen: (part) => part + 0.02 }).stages[0]!, "nowhere")).toBeLessThan(3);
  expect(() => missOf({ ...planted({}).stages[0]!, line: undefined }, "nowhere")).toThrow(TypeError);
});

test("a line is turned round that falls about the middle, and neither one about an end nor a steep one", () => {
  const isTurned = (seen: (part: number) => number) => isTurnedRound(planted({ seen }).stages[0]!);
  expect(isTurned((part) => 1 - part)).toBe(true);
  expect(isTurned((part) => 0.8 - part)).toBe(false);
  expect(isTurned((part) => 1 - 1.1 * part)).toBe(false);
  expect(isTurned((part) => part)).toBe(false);
});
