import { expect, test } from "vitest";
import { lastPhaseOf, phasesOf } from "../../src/record/phases-of.ts";

test("phases stand in the order of the work, whatever the order of the fields; one that is not there is left out", () => {
  expect(phasesOf({ phases: { asLeft: 2 } })).toEqual([{ name: "asLeft", title: "As left", phase: 2 }]);
  expect(phasesOf({ phases: { asLeft: 2, asFound: 1 } }).map(({ phase }) => phase)).toEqual([1, 2]);
  expect(phasesOf({ phases: { asFound: undefined } })).toEqual([]);
});

test("the last phase is as left, or as found where it was not read again", () => {
  expect(lastPhaseOf({ phases: { asFound: 1 } })?.name).toBe("asFound");
  expect(lastPhaseOf({ phases: { asLeft: 2, asFound: 1 } })?.phase).toBe(2);
  expect(lastPhaseOf({ phases: {} })).toBeUndefined();
});
