import fc from "fast-check";
import { expect, test } from "vitest";
import type { Candidate } from "../../../src/model/instrument.ts";
import {
  compareCandidate,
  compareCandidates,
  notCompared,
} from "../../../src/verdict/replacement/compare-candidates.ts";
import { fitResults } from "../../../src/verdict/replacement/fit-cell.ts";
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

const fits = candidateWith({ candidate: "fits" });
const finer = candidateWith({ candidate: "finer", accuracy: 0.001 });
const change = candidateWith({ candidate: "one change", connector: "M8" });
const changes = candidateWith({ candidate: "two changes", connector: "M8", function: "NC" });
const open = candidateWith({ candidate: "open", beamAngle: undefined });
const unfit = candidateWith({ candidate: "one unfit", supplyMax: 20 });
const unfitTwice = candidateWith({ candidate: "two unfit", supplyMax: 20, rangeUpper: 3 });
const all = [unfitTwice, open, changes, fits, unfit, change, finer];
const namesOf = (candidates: readonly Candidate[]) =>
  compareCandidates(candidates, loopNeeds()).map(({ candidate }) => candidate);

test("best first: by the worst cell, then by how many fall short, then by the accuracy", () => {
  expect(namesOf(all)).toEqual(["finer", "fits", "one change", "two changes", "open", "one unfit", "two unfit"]);
});

test("alike candidates stand as in the table, each with its place there", () => {
  const twins = [candidateWith({ candidate: "first" }), candidateWith({ candidate: "second" })];
  expect(compareCandidates(twins, loopNeeds()).map(({ candidate, place }) => [candidate, place])).toEqual([
    ["first", 0],
    ["second", 1],
  ]);
  const places = compareCandidates([{ candidate: "A" }, { candidate: "B" }], loopNeeds()).map(({ place }) => place);
  expect(places).toEqual([0, 1]);
});

test("the order of the table does not decide between candidates that differ, and nothing is lost", () => {
  fc.assert(
    fc.property(fc.shuffledSubarray(all, { minLength: all.length }), (shuffled) => {
      expect(namesOf(shuffled)).toEqual(namesOf(all));
      const ranks = compareCandidates(shuffled, loopNeeds()).map(({ overall }) => fitResults.indexOf(overall));
      expect(ranks).toEqual(ranks.toSorted((one, other) => one - other));
    }),
    { seed: 20260604, numRuns: 50 },
  );
});

test("what the loop does not state is named with its columns", () => {
  expect(notCompared(loopNeeds())).toEqual([]);
  const silent = { connector: undefined, pins: undefined, loopPowered: undefined, principle: undefined };
  const needs = loopNeeds({ instrument: silent, outputs: [{ function: undefined, pin: undefined }] });
  expect(notCompared(needs).map(({ demand }) => demand)).toEqual([
    "principle",
    "wires",
    "function of a switched output",
    "connector",
    "pins",
  ]);
  const demands = compareCandidates([candidateWith()], needs)[0]?.cells.map(({ demand }) => demand) ?? [];
  for (const { demand } of notCompared(needs)) expect(demands).not.toContain(demand);
});
