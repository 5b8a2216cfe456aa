import { deviationsFromRepeats, repeatScatter, type StageReading } from "../../analysis/readings/repeated-readings.ts";
import { errorOffLine } from "../../analysis/stages/stage-lines.ts";
import { chiSquaredQuantile } from "../../numeric/chi-squared-quantile.ts";
import { listedKey } from "../loop-check/loop-items.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { drifts, errorOf, type StageEvidence } from "./evidence/stage-evidence.ts";
import { thresholds } from "./evidence/thresholds.ts";
import type { Evidence } from "./finding.ts";
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
  remedyAt: {
    "input card": {
      cures: "wiring",
      does: "look at screen, earth and filter of the card's channel, and whether drives or mains move its counts while the signal stands still",
    },
    scaling: {
      cures: "scaling",
      does: "look in the controller why the value moves while the raw counts stand still: a filter, an average, a calculation, or a value that was noted at another moment",
      isOfConstants: false,
    },
  },
  detect: (evidence) => [...(isHumming(evidence) ? [] : sightings(evidence)), ...behindSightings(evidence)],
};

/** What follows the signal scatters by itself, against what it is made of. */
function behindSightings(evidence: CauseEvidence): readonly Sighting[] {
  return evidence.stages
    .filter(({ input, stage, made }) => input !== "reference" && stage !== "wiring" && made === undefined)
    .flatMap((stage) =>
      sightingsIn(evidence, stage, aboutLine(stage)).map((sighting) => ({
        ...sighting,
        ...(stage.stage === "scaling" ? ofController : ofCard),
      })),
    );
}

const ofCard = {
  stage: "input card",
  says: "What is made of the signal scatters by itself, against that signal, by about as much as the tolerance allows. This is consistent with mains or drives that couple into the input, with a screen or an earth that is missing, or with an input that is worn.",
  rivals: ["mains-hum"],
  separatedBy:
    "hold one simulated signal at the card and read its counts ten times, with drives and heaters off, then running",
} as const;

const ofController = {
  stage: "scaling",
  says: "The value scatters by itself, against its raw counts, by about as much as the tolerance allows. This is consistent with a filter, an average or a calculation in the controller, or with a value that was noted at another moment than its counts.",
  rivals: [],
  separatedBy: "hold one simulated signal at the card and read counts and value together, ten times",
} as const;

/** The same scatter, where something speaks for the mains: drives that move the signal, or readings that swing. */
export const mainsHum: Cause = {
  id: "mains-hum",
  title: "hum of mains or drives on the signal",
  place: "wiring",
  separatedBy:
    "hold the target still and watch the signal with an oscilloscope, or read it with drives and heaters off, then running",
  remedy: {
    cures: "wiring",
    does: "lay the signal away from mains and drives, earth its screen at one end, filter what is left, and read again",
  },
  isSeenAtSensor: true,
  detect: (evidence) =>
    isHumming(evidence)
      ? sightings(evidence).map((sighting) => ({
          ...sighting,
          says: "Repeated readings of the same point scatter by about as much as the tolerance allows, and it is not the scatter of noise: drives move the signal, or the readings swing between two ends as those of a hum do. This is consistent with mains or drives that couple into the signal.",
          evidence: [...sighting.evidence, ...humNumbers(evidence)],
          rivals: ["scatter-everywhere", "weak-target", "reference-moved"],
        }))
      : [],
};

function sightings(evidence: CauseEvidence): readonly Sighting[] {
  const sensor = sensorOf(evidence);
  return sensor === undefined || isWeak(evidence) ? [] : sightingsIn(evidence, sensor);
}

function sensorOf({ stages }: CauseEvidence): StageEvidence | undefined {
  return stages.find(({ stage }) => stage === "sensor" || stage === "sensor and wiring");
}

/** Own choice: so few repeats of a point, and so few readings, tell no shape of a scatter. */
const fewestRepeats = 8;
const fewestReadings = 60;
/** A sine has a kurtosis of 1.5, a rectangle 1.8, noise 3. */
const kurtosisOfSwing = 1.8;

function isHumming(evidence: CauseEvidence): boolean {
  const kurtosis = kurtosisOf(evidence);
  return isMovedByDrives(evidence) || (kurtosis !== undefined && kurtosis < kurtosisOfSwing);
}

function isMovedByDrives({ loopChecks }: CauseEvidence): boolean {
  return loopChecks.some(({ item, result }) => listedKey(item) === "drives running" && result === "fail");
}

function humNumbers(evidence: CauseEvidence): Evidence[] {
  const kurtosis = kurtosisOf(evidence);
  const change = evidence.loopChecks.find(({ item }) => listedKey(item) === "drives running")?.measured;
  return [
    ...(typeof change === "number"
      ? [{ name: "change with drives running", value: change, unit: evidence.instrument.signalUnit }]
      : []),
    ...(kurtosis === undefined
      ? []
      : [{ name: "kurtosis of the repeats (3 for noise, 1.5 for a sine)", value: kurtosis, unit: "" }]),
  ];
}

/** Fourth moment over the square of the second, of readings less the mean of those that repeat them. */
function kurtosisOf(evidence: CauseEvidence): number | undefined {
  const sensor = sensorOf(evidence);
  const used = sensor === undefined ? [] : deviationsFromRepeats(stageReadings(sensor));
  const many = used.filter(({ groupSize }) => groupSize >= fewestRepeats);
  if (many.length < fewestReadings) return undefined;
  const moment = (power: number) => many.reduce((sum, { error }) => sum + error ** power, 0) / many.length;
  const square = moment(2);
  return square > 0 ? moment(4) / square ** 2 : undefined;
}

/** Two standard deviations at least, over the tolerance. */
const chanceOfLess = 0.05;

function sightingsIn(
  { mattering }: CauseEvidence,
  stage: StageEvidence,
  readings = stageReadings(stage),
): readonly Sighting[] {
  const scatter = stage.line === undefined ? undefined : leastScatter(readings);
  if (scatter === undefined || drifts(stage, mattering)) return [];
  const { standardDeviation, least } = scatter;
  const tolerance = mattering / thresholds.matteringPartOfTolerance;
  const isWide = (one: number) => 2 * one > thresholds.scatterOverTolerance * tolerance;
  if (!isWide(least) || !isWide(leastScatter(withoutWidestPoint(readings))?.standardDeviation ?? least)) return [];
  return [
    {
      says: "Repeated readings of the same point scatter by about as much as the tolerance allows, near and far alike. This is consistent with a target, a mount or a supply that is not steady, with draught or mains hum, or with a worn sensor.",
      evidence: [
        { name: "standard deviation of repeated readings", value: standardDeviation, unit: "% of span" },
        { name: "the same at least", value: least, unit: "% of span" },
        { name: "tolerance", value: tolerance, unit: "% of span" },
      ],
      rivals: ["weak-target", "mains-hum", "reference-moved"],
    },
  ];
}

function leastScatter(readings: readonly StageReading[]) {
  const scatter = repeatScatter(readings);
  if (scatter === undefined) return undefined;
  const { standardDeviation, degreesOfFreedom: freedom } = scatter;
  const least = standardDeviation * Math.sqrt(freedom / chiSquaredQuantile(1 - chanceOfLess, freedom));
  return { standardDeviation, least };
}

/** One point that does not repeat is no scatter everywhere: the others have to scatter as well. */
function withoutWidestPoint(readings: readonly StageReading[]): readonly StageReading[] {
  const squares = new Map<number, number>();
  for (const { error, reading } of deviationsFromRepeats(readings)) {
    squares.set(reading.point, (squares.get(reading.point) ?? 0) + error ** 2);
  }
  const [widest] = [...squares].reduce((most, one) => (one[1] > most[1] ? one : most), [Number.NaN, -1]);
  return readings.filter(({ point }) => point !== widest);
}

/** What its own line makes of a scatter in front of it is none of the stage, nor is what rounding makes: a step or less. */
function aboutLine(stage: StageEvidence): readonly StageReading[] {
  const { line, resolution } = stage;
  if (line === undefined) return [];
  const readings = stageReadings(stage).map((one) => ({
    ...one,
    error: errorOffLine(one.error, line.fit, one.input),
  }));
  const rounding = resolution * Math.max(1, Math.abs(line.gain));
  return (repeatScatter(readings)?.standardDeviation ?? 0) > rounding ? readings : [];
}

function stageReadings(stage: StageEvidence): readonly StageReading[] {
  return stage.readings.map((reading) => errorOf(reading, stage));
}
