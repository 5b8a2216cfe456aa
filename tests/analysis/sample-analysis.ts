import { analysePhase, type PhaseAnalysis } from "../../src/analysis/figures/analyse-phase.ts";
import { isDetermined } from "../../src/analysis/figures/figure.ts";
import type { Loop } from "../../src/analysis/readings/loop.ts";
import type { Reading } from "../../src/model/calibration.ts";
import { frozen } from "../charts/frozen.ts";
import { reading, signalLoop } from "./sample-loop.ts";

/** The figures of readings that can be judged. */
export function analysisOf(readings: readonly Reading[], loop: Loop = signalLoop): PhaseAnalysis {
  const analysis = analysePhase(readings, loop);
  if (!isDetermined(analysis)) throw new RangeError(`analysisOf: ${analysis.notDetermined}`);
  return analysis;
}

/** A phase of which no reading is left: no figure is determined. */
export const emptyAnalysis: PhaseAnalysis = frozen({
  ...analysisOf([reading(50, { signal: 12, rejected: "target slipped" })]),
  readings: [],
});
