import type { Candidate } from "../../model/instrument.ts";
import { type AccuracyFit, fitAccuracy } from "./fit-accuracy.ts";
import { fitAir } from "./fit-air.ts";
import { fitBeam } from "./fit-beam.ts";
import { type FitCell, type FitResult, worstFit } from "./fit-cell.ts";
import { fitConnection } from "./fit-connection.ts";
import { fitHazardousArea } from "./fit-hazardous-area.ts";
import { fitLoad } from "./fit-load.ts";
import { fitOutputs } from "./fit-outputs.ts";
import { fitPrinciple } from "./fit-principle.ts";
import { fitRange } from "./fit-range.ts";
import { fitSignal } from "./fit-signal.ts";
import { fitSupply } from "./fit-supply.ts";
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
  ];
  return {
    candidate: candidate.candidate,
    overall: worstFit(cells.map(({ result }) => result)),
    cells,
    accuracy: accuracy.figures,
  };
}
