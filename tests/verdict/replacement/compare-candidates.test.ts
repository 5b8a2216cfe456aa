import fc from "fast-check";
import { expect, test } from "vitest";
import type { Candidate } from "../../../src/model/instrument.ts";
import { compareCandidates, notCompared } from "../../../src/verdict/replacement/compare-candidates.ts";
import { fitResults } from "../../../src/verdict/replacement/fit-cell.ts";
import { candidateWith, loopNeeds } from "./sample-loop-needs.ts";

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
