import { expect, test } from "vitest";
import { phases } from "../../src/model/calibration-words.ts";
import { phaseNames, phaseTitles, phaseWords, tablePhase } from "../../src/record/phase-name.ts";

test("the phases of a record are those of the tables, each once", () => {
  expect(Object.values(tablePhase).toSorted()).toEqual(phases.toSorted());
});

test("as found is as found", () => {
  expect(tablePhase).toEqual({ asFound: "as_found", asLeft: "as_left" });
});

test("a title is the words with a capital", () => {
  for (const name of phaseNames) {
    expect(phaseTitles[name].toLowerCase()).toBe(phaseWords[name]);
    expect(phaseTitles[name]).not.toBe(phaseWords[name]);
  }
});
