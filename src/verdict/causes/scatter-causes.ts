import { repeatScatter } from "../../analysis/readings/repeated-readings.ts";
import { chiSquaredQuantile } from "../../numeric/chi-squared-quantile.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { drifts, type StageEvidence } from "./evidence/stage-evidence.ts";
import { thresholds } from "./evidence/thresholds.ts";
import { isWeak } from "./lost-target-causes.ts";

/** Repeated readings lie as far apart as the tolerance allows, near and far alike. */
export const scatterEverywhere: Cause = {
  id: "scatter-everywhere",
  title: "scatter of repeated readings over the whole range",
  place: "sensor",
  separatedBy:
    "read one point ten times with a large, flat, hard target square to the axis; then once more with motors and drives off",
  remedy: {
    cures: "set-up",
    does: "prove with a large, flat, hard target, square to the axis and held still, that it is not target, mount, draught or mains hum; look at supply, screen and filter, and only then at the sensor",
  },
  detect: (evidence) => {
    const sensor = evidence.stages.find(({ stage }) => stage === "sensor" || stage === "sensor and wiring");
    return sensor === undefined || isWeak(evidence) ? [] : sightingsIn(evidence, sensor);
  },
};

/** Two standard deviations at least, over the tolerance. */
const chanceOfLess = 0.05;

function sightingsIn({ mattering }: CauseEvidence, stage: StageEvidence): readonly Sighting[] {
  const scatter = scatterOf(stage);
  if (scatter === undefined || drifts(stage, mattering)) return [];
  const { standardDeviation, degreesOfFreedom } = scatter;
  const least =
    standardDeviation * Math.sqrt(degreesOfFreedom / chiSquaredQuantile(1 - chanceOfLess, degreesOfFreedom));
  const tolerance = mattering / thresholds.matteringPartOfTolerance;
  if (2 * least <= thresholds.scatterOverTolerance * tolerance) return [];
  return [
    {
      says: "Repeated readings of the same point scatter by about as much as the tolerance allows, near and far alike. This is consistent with a target, a mount or a supply that is not steady, with draught or mains hum, or with a worn sensor.",
      evidence: [
        { name: "standard deviation of repeated readings", value: standardDeviation, unit: "% of span" },
        { name: "the same at least", value: least, unit: "% of span" },
        { name: "tolerance", value: tolerance, unit: "% of span" },
      ],
      rivals: ["weak-target", "reference-moved"],
    },
  ];
}

function scatterOf({ line, readings, input, output }: StageEvidence) {
  if (line === undefined) return undefined;
  const used = readings.map(({ index, point, direction, cycle, elapsed, percent }) => {
    const given = percent[input] as number;
    return { index, point, direction, cycle, elapsed, input: given, error: (percent[output] as number) - given };
  });
  return repeatScatter(used);
}
