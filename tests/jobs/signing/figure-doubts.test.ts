import { expect, test } from "vitest";
import { cannotBeMade, figureDoubts } from "../../../src/jobs/signing/figure-doubts.ts";
import { reportedRecord } from "../reported-records.ts";

const { record } = await reportedRecord();

test("what the rows give is no doubt", () => {
  expect(figureDoubts(record)).toEqual({ doubts: [] });
});

test("a number that differs in its last digit alone is told so, and is a doubt", () => {
  const forged = structuredClone(record);
  if (forged.phases.asFound?.zeroError) forged.phases.asFound.zeroError.percentSpan *= 1 + 4 * Number.EPSILON;
  const { doubts } = figureDoubts(forged);
  expect(doubts).toHaveLength(1);
  expect(doubts[0]?.says).toMatch(/^one number differs in the last digits only, by 1 in 10\^12 or less/u);
});

test("rows of which nothing can be made are a doubt with the reason", () => {
  expect(cannotBeMade("page", "the whole", new RangeError("no range"))).toEqual({
    ...{ about: "page", place: "the whole", says: "they cannot be made from this record: no range" },
  });
  expect(cannotBeMade("page", "the whole", "odd").says).toContain("odd");
});
