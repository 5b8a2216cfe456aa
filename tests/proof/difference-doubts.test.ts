import { expect, test } from "vitest";
import { compareRecords, type Difference } from "../../src/proof/compare-records.ts";
import { differenceDoubts } from "../../src/proof/difference-doubts.ts";

const sayings = (differences: readonly Difference[]) => differenceDoubts(differences).map(({ says }) => says);

test("a date that the rows do not give is a doubt about the figures at its path", () => {
  expect(differenceDoubts([{ place: "nextDue", expected: null, found: '"2027-03-04"', kind: "value" }])).toEqual([
    { about: "figures", place: "nextDue", says: 'the rows give nothing, the record says "2027-03-04"' },
  ]);
  expect(differenceDoubts([])).toEqual([]);
});

test("a value, a thing that is missing, an order, the whole", () => {
  expect(sayings(compareRecords({ a: 1, b: 2 }, { a: 3 }))).toEqual([
    "the rows give 1, the record says 3",
    "the rows give 2, the record has nothing",
  ]);
  expect(differenceDoubts(compareRecords({ a: 1, b: 2 }, { b: 2, a: 1 }))).toEqual([
    { about: "figures", place: "the whole", says: "its parts are not in the order in which a record is written" },
  ]);
});

test("of many the first ten are told and the rest is counted; a long value is cut", () => {
  const doubts = differenceDoubts(compareRecords(Array(25).fill(0), Array(25).fill("x".repeat(99))));
  expect(doubts).toHaveLength(11);
  expect(doubts[9]?.place).toBe("[9]");
  expect(doubts[0]?.says).toBe(`the rows give 0, the record says "${"x".repeat(58)}…`);
  expect(doubts[10]).toEqual({
    about: "figures",
    place: "further on",
    says: "15 more places differ from what the rows give",
  });
});

test("last digits are one doubt, behind the others", () => {
  const doubts = differenceDoubts(compareRecords({ a: 0.3, b: 1, c: 0.6 }, { a: 0.1 + 0.2, b: 2, c: 0.1 + 0.2 + 0.3 }));
  expect(doubts.map(({ place }) => place)).toEqual(["b", "a"]);
  expect(doubts[1]?.says).toBe(
    "2 numbers differ in the last digits only, by 1 in 10^12 or less, this one first: the rows give 0.3, the record says 0.30000000000000004; so it is when another kind of computer, or another Node.js, made the record",
  );
});
