import { expect, test } from "vitest";
import { compareCandidate } from "../../../src/verdict/replacement/compare-candidate.ts";
import { candidateWith, loopNeeds } from "./sample-loop-needs.ts";

test("a candidate that meets every demand fits", () => {
  const { overall, cells } = compareCandidate(candidateWith(), loopNeeds());
  expect(cells.filter(({ result }) => result !== "fits")).toEqual([]);
  expect(overall).toBe("fits");
});

test("a candidate of which nothing is known cannot be told, in every cell", () => {
  const { overall, cells, accuracy } = compareCandidate({ candidate: "A" }, loopNeeds());
  expect(new Set(cells.map(({ result }) => result))).toEqual(new Set(["cannot be told"]));
  expect(overall).toBe("cannot be told");
  expect(accuracy).toBeNull();
});

test("one cell that does not fit is enough", () => {
  expect(compareCandidate(candidateWith({ supplyMax: 20 }), loopNeeds()).overall).toBe("does not fit");
});

test("demands and needs are the same for every candidate, and each demand stands once", () => {
  const needs = loopNeeds({ instrument: { hazardousArea: true }, outputs: [{}, { output: "Q2" }] });
  const asked = (candidate: Parameters<typeof compareCandidate>[0]) =>
    compareCandidate(candidate, needs).cells.map((cell) => [cell.demand, cell.needs]);
  const all = asked(candidateWith());
  expect(new Set(all.map(([demand]) => demand)).size).toBe(all.length);
  expect(asked({ candidate: "B" })).toEqual(all);
  expect(asked(candidateWith({ principle: "inductive", signalUnit: "V", polarity: "none" }))).toEqual(all);
});
