import { axisCharacteristic } from "../../../analysis/stages/staged-readings.ts";
import type { Sighting } from "../cause.ts";
import type { CausePlace, Evidence } from "../finding.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { lineNumbers, placeOf } from "./line-words.ts";
import { liveZeroMistake } from "./live-zero.ts";
import { onceFor } from "./once-for.ts";
import { atSignal, signalEnds, trueZero } from "./signal-order.ts";
import { isOff, type StageEvidence } from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";
import { isTurnedRound, missOf, namedByZero, type ZeroCandidate } from "./zero-candidates.ts";

/** Gains of one raw full scale read as another, both ways: 27648, 32767, 32000, 4000, 4095. */
const fullScales = [
  [27648, 32767],
  [4000, 4095],
  [32000, 32767],
  [27648, 32000],
] as const;

/** Factors between units that are mixed up. */
const unitFactors = [25.4, 1 / 25.4, 10, 0.1, 100, 0.01, 1000, 0.001] as const;

/** Causes that the line of a stage after the sensor can name, by their ids. */
type LineCause =
  | "constants-exchanged"
  | "units-mixed-up"
  | "full-scale-count-wrong"
  | "low-constant-wrong"
  | "high-constant-wrong"
  | "both-constants-wrong"
  | "offset-of-card"
  | "shunt-or-gain-off";

/** What the line of a stage after the sensor is named. */
export type ScalingLine = {
  cause: LineCause;
  rivals: readonly LineCause[];
  place: CausePlace;
  stage: StageEvidence;
  /** The factor between two units, where they were mixed up. */
  unitFactor?: number;
  /** One raw full scale read as another, where the gain is that. */
  fullScale?: readonly [number, number];
};

/**
 * The sightings of one cause in the lines of the error between the signal and the value.
 *
 * The place without error names the constant: the high end of the signal (the low constant is wrong), the low end (the
 * high one), the true zero of the signal (shunt or gain), the middle (the two exchanged), the engineering zero (units),
 * nowhere (an offset).
 *
 * @param evidence of a phase
 * @param cause that asks
 * @param seen its words, and the numbers that it has besides those of the line
 * @returns one for each stage after the sensor whose line has that name
 * Source: own reckoning of two-point scaling; the choice between places by `namedByZero`.
 * @example scalingLineSightings(evidence, "low-constant-wrong", () => ({ says: "It is wrong." })).length // 0
 */
export function scalingLineSightings(
  evidence: CauseEvidence,
  cause: LineCause,
  seen: (line: ScalingLine) => Pick<Sighting, "says" | "separatedBy"> & { numbers?: Evidence[] },
): readonly Sighting[] {
  return scalingLines(evidence)
    .filter((line) => line.cause === cause)
    .map((line) => {
      const { numbers = [], ...words } = seen(line);
      return {
        ...words,
        stage: line.place,
        evidence: [...lineNumbers(evidence, line.stage), ...numbers],
        rivals: line.rivals,
      };
    });
}

const scalingLines = onceFor((evidence) =>
  evidence.stages
    .filter(({ stage }) => stage === "input card" || stage === "scaling" || stage === "input card and scaling")
    .filter((stage) => isOff(stage, evidence.mattering) && liveZeroMistake(evidence, stage) === undefined)
    .map((stage) => scalingLine(evidence, stage)),
);

function scalingLine(evidence: CauseEvidence, stage: StageEvidence): ScalingLine {
  const place = placeOf(stage.stage);
  if (isTurnedRound(stage)) return { cause: "constants-exchanged", rivals: [], place, stage };
  const unitFactor = unitFactorOf(evidence, stage);
  if (unitFactor !== undefined) {
    return { cause: "units-mixed-up", rivals: ["high-constant-wrong"], place, stage, unitFactor };
  }
  return { ...byPlace(evidence, stage, place), stage };
}

function byPlace(
  { instrument }: CauseEvidence,
  stage: StageEvidence,
  place: CausePlace,
): Omit<ScalingLine, "stage" | "unitFactor"> {
  const ends = signalEnds(instrument);
  const isNumbersOnly = stage.stage === "scaling";
  const fullScale = fullScaleOf(stage);
  const high = fullScale === undefined ? "high-constant-wrong" : "full-scale-count-wrong";
  const gainAtZero: ZeroCandidate<LineCause>[] = isNumbersOnly
    ? []
    : [{ name: "shunt-or-gain-off", at: atSignal(ends, trueZero(ends)) }];
  const offset: ZeroCandidate<LineCause>[] = isNumbersOnly ? [] : [{ name: "offset-of-card", at: "nowhere" }];
  const constants: ZeroCandidate<LineCause>[] = [
    { name: high, at: atSignal(ends, 0) },
    { name: "low-constant-wrong", at: atSignal(ends, 100) },
  ];
  const isGainFirst = stage.stage === "input card" && fullScale === undefined;
  const { named, rivals } = namedByZero(
    stage,
    isGainFirst ? [...offset, ...gainAtZero, ...constants] : [...offset, ...constants, ...gainAtZero],
  );
  if (named === undefined) return { cause: "both-constants-wrong", rivals: ["low-constant-wrong", ...rivals], place };
  const isOfCard = named === "offset-of-card" || named === "shunt-or-gain-off";
  const isFullScale = named === "full-scale-count-wrong";
  return {
    cause: named,
    rivals: isFullScale && !isNumbersOnly ? [...rivals, "high-constant-wrong"] : rivals,
    place: isOfCard ? "input card" : place,
    ...(isFullScale && fullScale && { fullScale }),
  };
}

function fullScaleOf({ line }: StageEvidence): readonly [number, number] | undefined {
  if (line === undefined) return undefined;
  const slack = Math.max(thresholds.gainWithin / 2, 2 * line.gainStandardUncertainty);
  return fullScales
    .flatMap(([one, other]) => [[one, other] as const, [other, one] as const])
    .find(([one, other]) => Math.abs(line.gain - one / other) <= slack);
}

/** The factor by which the value is too great or too small about its own zero; only a value in units can have one. */
function unitFactorOf({ loop }: CauseEvidence, stage: StageEvidence): number | undefined {
  const { line } = stage;
  const value = axisCharacteristic(loop, "value");
  if (line === undefined || value === undefined || line.output !== "value") return undefined;
  const relative = (factor: number) => Math.max(thresholds.gainWithin * factor, 3 * line.gainStandardUncertainty, 1e-9);
  const factor = unitFactors.find((candidate) => Math.abs(line.gain - candidate) <= relative(candidate));
  const engineeringZero = (-100 * value.outputAtLower) / (value.outputAtUpper - value.outputAtLower);
  if (factor === undefined || missOf(stage, engineeringZero) > thresholds.namedWithinUncertainties) return undefined;
  return factor;
}
