import { expect, test } from "vitest";
import { isSetPointOff, noteDoubt } from "../../../src/verdict/switching/switched-state.ts";
import { switchedState } from "../recommendation/sample-switching.ts";

const found = (...of: Parameters<typeof switchedState>) => switchedState(...of).found!;

test("a set point is off where it was not accepted, and not where it cannot be decided", () => {
  expect(isSetPointOff(found("teach"))).toBe(true);
  expect(isSetPointOff(found())).toBe(false);
  const open = { error: 1, expandedUncertainty: 30, decision: { statement: "cannot be decided" } as const };
  expect(isSetPointOff(found(undefined, { setPoint: open }))).toBe(false);
  expect(isSetPointOff(found(undefined, { setPoint: null }))).toBe(false);
});

test("without a tolerance nobody knows whether it is off, whatever explains its error", () => {
  const bare = { error: -21, expandedUncertainty: 1, decision: null };
  expect(isSetPointOff(found("shift", { setPoint: bare }))).toBe(false);
  expect(isSetPointOff(found(undefined, { setPoint: bare }))).toBe(false);
});

test("trips are in doubt as they are noted where they contradict each other, by the digits that were typed", () => {
  const pair = (approach: number, recede: number) => [
    { direction: "approach" as const, cycle: 1, reference: approach, isCounted: true },
    { direction: "recede" as const, cycle: 1, reference: recede, isCounted: true },
  ];
  expect(noteDoubt({ setPoint: 700 }, { trips: pair(712, 700), decimals: 1 }, 1000)).toBe("exchanged");
  expect(noteDoubt({ setPoint: 700 }, { trips: pair(712, 711), decimals: 0 }, 1000)).toBeUndefined();
  const uncounted = pair(712, 700).map((trip) => ({ ...trip, isCounted: false }));
  expect(noteDoubt({ setPoint: 700 }, { trips: uncounted, decimals: 1 }, 1000)).toBeUndefined();
});
