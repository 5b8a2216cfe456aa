import type { Candidate } from "../../model/instrument.ts";
import { type AccuracyFit, fitAccuracy } from "./fit-accuracy.ts";
import { fitAir } from "./fit-air.ts";
import { fitBeam } from "./fit-beam.ts";
import { type FitCell, type FitResult, fitResults, worstFit } from "./fit-cell.ts";
import { fitConnection, pinsOfLoop } from "./fit-connection.ts";
import { fitHazardousArea } from "./fit-hazardous-area.ts";
import { fitLoad } from "./fit-load.ts";
import { fitOutputs } from "./fit-outputs.ts";
import { fitPrinciple } from "./fit-principle.ts";
import { fitRange } from "./fit-range.ts";
import { fitSignal } from "./fit-signal.ts";
import { fitSupply } from "./fit-supply.ts";
import { fitSurroundings } from "./fit-surroundings.ts";
import { fitWires } from "./fit-wires.ts";
import type { LoopNeeds } from "./loop-needs.ts";

/** How one candidate answers every demand of a loop; overall: its worst cell. */
export type CandidateFit = {
  candidate: string;
  overall: FitResult;
  cells: readonly FitCell[];
  accuracy: AccuracyFit | null;
};

/**
 * Holds one candidate against every demand of a loop. It compares what the tables state, and recommends nothing.
 *
 * @param candidate a checked row
 * @param needs of the loop
 * @returns a cell for each demand, in the same order for every candidate; the worst of them; the figures of its accuracy
 * Source: each demand's own file.
 * @example compareCandidate({ candidate: "A" }, needs).overall // "cannot be told"
 */
export function compareCandidate(candidate: Candidate, needs: LoopNeeds): CandidateFit {
  const accuracy = fitAccuracy(candidate, needs);
  const cells = [
    ...fitPrinciple(candidate, needs),
    ...fitRange(candidate, needs),
    accuracy.cell,
    fitAir(candidate, needs),
    fitBeam(candidate, needs),
    fitSignal(candidate, needs),
    fitLoad(candidate, needs),
    fitSupply(candidate, needs),
    ...fitWires(candidate, needs),
    ...fitOutputs(candidate, needs),
    ...fitConnection(candidate, needs),
    ...fitHazardousArea(candidate, needs),
    ...fitSurroundings(candidate, needs),
  ];
  return {
    candidate: candidate.candidate,
    overall: worstFit(cells.map(({ result }) => result)),
    cells,
    accuracy: accuracy.figures,
  };
}

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
