import type { Candidate } from "../../model/instrument.ts";
import { type CandidateFit, compareCandidate } from "./compare-candidate.ts";
import { type FitResult, fitResults } from "./fit-cell.ts";
import { pinsOfLoop } from "./fit-connection.ts";
import type { LoopNeeds } from "./loop-needs.ts";

/** A candidate with its place in the table, from 0. */
export type OrderedFit = CandidateFit & { place: number };

/**
 * Holds every candidate against a loop, the best first: first by the worst of its cells; then by how many demands it does
 * not meet, how many cannot be told, how many ask for a change; then by how often its accuracy goes into the tolerance;
 * then as they stand in the table.
 *
 * @param candidates in the order of their table
 * @param needs of the loop
 * @returns one comparison a candidate, best first
 * Source: own choice of the order.
 * @example compareCandidates([{ candidate: "A" }, { candidate: "B" }], needs).map(({ place }) => place) // [0, 1]
 */
export function compareCandidates(candidates: readonly Candidate[], needs: LoopNeeds): readonly OrderedFit[] {
  return candidates.map((candidate, place) => ({ ...compareCandidate(candidate, needs), place })).toSorted(inOrder);
}

function inOrder(one: OrderedFit, other: OrderedFit): number {
  const differences = [
    fitResults.indexOf(one.overall) - fitResults.indexOf(other.overall),
    ...fitResults.toReversed().map((result) => countOf(one, result) - countOf(other, result)),
    (other.accuracy?.ratio ?? 0) - (one.accuracy?.ratio ?? 0),
  ];
  return differences.find((difference) => difference !== 0) ?? one.place - other.place;
}

function countOf({ cells }: CandidateFit, result: FitResult): number {
  return cells.filter((cell) => cell.result === result).length;
}

/**
 * The demands that are not compared, for the loop's rows do not state what is there now.
 *
 * @param needs of the loop
 * @returns demand and the columns that would say it
 * Source: own choice: what is convenient to keep is asked for only where it is stated.
 * @example notCompared({ ...needs, instrument: { ...needs.instrument, connector: undefined } }).map(({ demand }) =>
 *   demand) // ["connector"]
 */
export function notCompared({
  instrument,
  outputs,
}: Pick<LoopNeeds, "instrument" | "outputs">): readonly { demand: string; columns: string }[] {
  const isWithoutFunction = outputs.some((output) => output.function === undefined);
  return [
    ...(instrument.principle === undefined ? [{ demand: "principle", columns: "principle" }] : []),
    ...(instrument.loopPowered === undefined ? [{ demand: "wires", columns: "loop_powered" }] : []),
    ...(isWithoutFunction ? [{ demand: "function of a switched output", columns: "function" }] : []),
    ...(instrument.connector === undefined ? [{ demand: "connector", columns: "connector" }] : []),
    ...(pinsOfLoop(instrument, outputs) === "" ? [{ demand: "pins", columns: "pins, or pin of an output" }] : []),
  ];
}
