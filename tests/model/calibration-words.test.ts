import { expect, test } from "vitest";
import { phaseInWords, phases } from "../../src/model/calibration-words.ts";

test("each phase has its words, in the order of the work", () => {
  expect(phases.map((phase) => phaseInWords[phase])).toEqual(["as found", "as left"]);
});
