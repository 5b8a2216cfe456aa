import { axisCharacteristic } from "../../../analysis/stages/staged-readings.ts";
import type { Sighting } from "../cause.ts";
import type { CausePlace, Evidence } from "../finding.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { lineNumbers, placeOf } from "./line-words.ts";
import { liveZeroMistake } from "./live-zero.ts";
import { onceFor } from "./once-for.ts";
import { atSignal, signalEnds, signalErrorAt, trueZero } from "./signal-order.ts";
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
  | "offset-in-controller"
  | "offset-of-card"
  | "range-of-card-wrong"
  | "voltage-divided"
  | "shunt-or-gain-off";

type LineRival = LineCause | "counts-row-wrong";

/** What the line of a stage after the sensor is named. */
export type ScalingLine = {
  cause: LineCause;
  rivals: readonly LineRival[];
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
 * nowhere (an offset). Between signal and counts there are no constants: that is the card, or its range. Where the counts
 * between were not read, card and scaling both stand.
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
        ...(line.stage.stage === "input card and scaling" && { separatedBy: countsWouldTell }),
        ...words,
        stage: line.place,
        evidence: [...lineNumbers(evidence, line.stage), ...numbers],
        rivals: line.rivals,
      };
    });
}

const countsWouldTell =
  "read the raw counts at the same points as well: what they are off by is the card's, and the rest the scaling's";

const scalingLines = onceFor((evidence) =>
  evidence.stages
    .filter(({ stage }) => stage === "input card" || stage === "scaling" || stage === "input card and scaling")
    .filter((stage) => isOff(stage, evidence.matteringAtEnds) && liveZeroMistake(evidence, stage) === undefined)
    .filter(({ made }) => made === undefined)
    .map((stage) => scalingLine(evidence, stage)),
);

function scalingLine(evidence: CauseEvidence, stage: StageEvidence): ScalingLine {
  if (stage.stage === "input card") return { ...ofCard(evidence, stage), place: "input card", stage };
  const place = placeOf(stage.stage);
  if (isTurnedRound(stage)) return { cause: "constants-exchanged", rivals: [], place, stage };
  const unitFactor = unitFactorOf(evidence, stage);
  if (unitFactor !== undefined) {
    return { cause: "units-mixed-up", rivals: ["high-constant-wrong"], place, stage, unitFactor };
  }
  return { ...(stage.stage === "scaling" ? ofScaling : ofCardOrScaling)(evidence, stage), stage };
}

type Named = Pick<ScalingLine, "cause" | "rivals" | "fullScale">;

/** From signal to counts: the controller's constants come after it, and what the table says of the counts may be wrong. */
function ofCard(evidence: CauseEvidence, stage: StageEvidence): Named {
  if (isTurnedRound(stage)) return { cause: "range-of-card-wrong", rivals: ["counts-row-wrong"] };
  const ends = signalEnds(evidence.instrument);
  const fullScale = fullScaleOf(stage);
  const range: ZeroCandidate<LineCause>[] = [
    { name: fullScale === undefined ? "range-of-card-wrong" : "full-scale-count-wrong", at: atSignal(ends, 0) },
    { name: "range-of-card-wrong", at: atSignal(ends, 100) },
  ];
  const gain: ZeroCandidate<LineCause> = {
    name: inProportion(evidence, stage),
    at: atSignal(ends, trueZero(ends)),
  };
  const isGainFirst = gain.name === "shunt-or-gain-off" && fullScale === undefined;
  const { named = "range-of-card-wrong", rivals } = namedByZero(stage, [
    { name: "offset-of-card", at: "nowhere" },
    ...(isGainFirst ? [gain, ...range] : [...range, gain]),
  ]);
  const others = named === "offset-of-card" ? rivals : [...rivals, "range-of-card-wrong" as const];
  return { cause: named, rivals: [...others, "counts-row-wrong"], ...scaleOf(named, fullScale) };
}

/** From counts to value there are numbers only. */
function ofScaling({ instrument }: CauseEvidence, stage: StageEvidence): Named & Pick<ScalingLine, "place"> {
  const fullScale = fullScaleOf(stage);
  const { named = "both-constants-wrong", rivals } = namedByZero<LineCause>(stage, [
    { name: "offset-in-controller", at: "nowhere" },
    ...constantsOf(instrument, fullScale),
  ]);
  const others = named === "offset-in-controller" ? [...rivals, "both-constants-wrong" as const] : rivals;
  return { cause: named, rivals: others, place: "scaling", ...scaleOf(named, fullScale) };
}

/** From signal to value: nothing that was read excludes the card, nor the two constants. */
function ofCardOrScaling(evidence: CauseEvidence, stage: StageEvidence): Named & Pick<ScalingLine, "place"> {
  const ends = signalEnds(evidence.instrument);
  const fullScale = fullScaleOf(stage);
  const { named = "both-constants-wrong", rivals } = namedByZero<LineCause>(stage, [
    { name: "offset-of-card", at: "nowhere" },
    ...constantsOf(evidence.instrument, fullScale),
    { name: inProportion(evidence, stage), at: atSignal(ends, trueZero(ends)) },
  ]);
  const isOfCard = ofCardIds.has(named);
  return {
    cause: named,
    rivals: [
      ...(named === "offset-of-card" ? (["offset-in-controller"] as const) : []),
      ...rivals,
      ...(named === "full-scale-count-wrong" ? (["high-constant-wrong"] as const) : []),
      isOfCard ? "both-constants-wrong" : "range-of-card-wrong",
    ],
    place: isOfCard ? "input card" : "scaling",
    ...scaleOf(named, fullScale),
  };
}

const ofCardIds: ReadonlySet<LineCause> = new Set([
  "offset-of-card",
  "range-of-card-wrong",
  "voltage-divided",
  "shunt-or-gain-off",
]);

function constantsOf(instrument: CauseEvidence["instrument"], fullScale: FullScale): ZeroCandidate<LineCause>[] {
  const ends = signalEnds(instrument);
  return [
    { name: fullScale === undefined ? "high-constant-wrong" : "full-scale-count-wrong", at: atSignal(ends, 0) },
    { name: "low-constant-wrong", at: atSignal(ends, 100) },
  ];
}

/** A current goes through a shunt; a voltage is divided on its way to the card, which takes from it, or the card has another gain. */
function inProportion({ instrument }: CauseEvidence, stage: StageEvidence): LineCause {
  if (instrument.signalUnit === "mA") return "shunt-or-gain-off";
  const isTooLittle = signalErrorAt(stage, signalEnds(instrument), 100).percentSpan < 0;
  return isTooLittle && stage.input === "signal" ? "voltage-divided" : "range-of-card-wrong";
}

type FullScale = ScalingLine["fullScale"];

function scaleOf(named: LineCause, fullScale: FullScale): Pick<ScalingLine, "fullScale"> {
  return named === "full-scale-count-wrong" && fullScale !== undefined ? { fullScale } : {};
}

function fullScaleOf({ line }: StageEvidence): FullScale {
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
