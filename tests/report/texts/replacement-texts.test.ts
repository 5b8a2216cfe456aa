import { expect, test } from "vitest";
import type { CandidateFitRecord, CandidatesRecord } from "../../../src/record/candidates-schema.ts";
import {
  introductionWords,
  notComparedWords,
  otherReasons,
  overallReasons,
  overallWords,
  sideBySide,
  supplyWords,
} from "../../../src/report/texts/replacement-texts.ts";
import type { FitResult } from "../../../src/verdict/replacement/fit-cell.ts";

const fitWith = (overall: FitResult, ...results: readonly FitResult[]): CandidateFitRecord => ({
  row: 2,
  candidate: "A",
  overall,
  cells: results.map((result, index) => ({
    demand: `demand ${index}`,
    result,
    needs: "",
    offers: "",
    reason: `reason ${index}`,
  })),
  accuracy: null,
});
const compared = (more: Partial<CandidatesRecord>): CandidatesRecord => ({
  because: "the loop does not pass",
  fits: [],
  notCompared: [],
  ...more,
});

test("a candidate that fits has no reasons; one that asks for changes has them", () => {
  expect(overallWords(fitWith("fits", "fits"))).toBe("fits");
  expect(overallReasons(fitWith("fits", "fits"))).toEqual([]);
  const change = fitWith("fits with a change", "fits", "fits with a change");
  expect(overallWords(change)).toBe("fits with changes");
  expect(overallReasons(change)).toEqual(["demand 1: reason 1"]);
  expect(otherReasons(change)).toBeUndefined();
});

test("what is open or to be changed beside a failing demand is named", () => {
  const fit = fitWith("does not fit", "does not fit", "cannot be told", "fits with a change", "fits with a change");
  expect(overallReasons(fit)).toEqual(["demand 0: reason 0"]);
  expect(otherReasons(fit)).toBe("Besides, cannot be told: demand 1; to be changed: demand 2, demand 3.");
  expect(otherReasons(fitWith("cannot be told", "cannot be told", "fits"))).toBeUndefined();
});

test("why it stands there is said, and that nothing is recommended", () => {
  expect(introductionWords(compared({}))).toMatch(/^The loop as it was left does not pass\..*recommends none/u);
  expect(introductionWords(compared({ because: "replacing is recommended" }))).toMatch(/^Replacing is among/u);
});

test("what was not compared is named with its columns", () => {
  expect(notComparedWords(compared({}))).toBeUndefined();
  expect(notComparedWords(compared({ notCompared: [{ demand: "wires", columns: "loop_powered" }] }))).toBe(
    "Not compared, for the tables do not state what the loop has now: wires (loop_powered).",
  );
});

test("seven candidates stand as three, three and one, in their order", () => {
  const fits = Array.from({ length: 7 }, (_, row) => ({ ...fitWith("fits"), row }));
  expect(sideBySide(compared({ fits })).map((group) => group.map(({ row }) => row))).toEqual([
    [0, 1, 2],
    [3, 4, 5],
    [6],
  ]);
});

test("what is said of getting a candidate is told, and nothing where nothing is", () => {
  const fit = fitWith("fits");
  const supply = { sparePart: "EX-S-7", leadTime: 1, price: "320", indicators: "power" };
  expect(supplyWords({ ...fit, supply })).toBe("spare part: EX-S-7; to be had in 1 day; price: 320; indicators: power");
  expect(supplyWords({ ...fit, supply: undefined })).toBeUndefined();
});
