import { axisCharacteristic } from "../../analysis/stages/staged-readings.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { type CausePlace, causeTitles, type Finding, rivalName } from "./finding.ts";
import { lineNumbers, placeOf } from "./line-words.ts";
import { liveZeroRow } from "./live-zero-causes.ts";
import { atSignal, signalEnds, trueZero } from "./signal-order.ts";
import { isOff, lineErrorAt, type StageEvidence } from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";
import { missOf, namedByZero, type ZeroCandidate } from "./zero-candidates.ts";

/** Gains of one raw full scale read as another, both ways: 27648, 32767, 32000, 4000, 4095. */
const fullScales = [
  [27648, 32767],
  [4000, 4095],
  [32000, 32767],
  [27648, 32000],
] as const;

/** Factors between units that are mixed up. */
const unitFactors = [25.4, 1 / 25.4, 10, 0.1, 100, 0.01, 1000, 0.001] as const;

/**
 * Rows 3 to 7, 9 and 11: what is wrong between the signal and the value, from the line of its error on its input.
 *
 * The place without error names the constant: the high end of the signal (the low constant is wrong), the low end (the
 * high one), the true zero of the signal (shunt or gain), the middle (the two exchanged), the engineering zero (units),
 * nowhere (an offset).
 *
 * @param evidence of a phase
 * @returns at most one finding for each stage after the sensor
 * Source: own reckoning of two-point scaling; the choice between places by `namedByZero`.
 * @example scalingCauses(evidence)[0].row // 4
 */
export function scalingCauses(evidence: CauseEvidence): readonly Finding[] {
  return evidence.stages
    .filter(({ stage }) => stage === "input card" || stage === "scaling" || stage === "input card and scaling")
    .filter((stage) => isOff(stage, evidence.mattering) && liveZeroRow(evidence, stage) === undefined)
    .map((stage) => findingOf(evidence, stage));
}

type Named = { row: number; rivals: readonly number[]; place: CausePlace; says: string; isBoth?: true };

function findingOf(evidence: CauseEvidence, stage: StageEvidence): Finding {
  const { row, rivals, place, says, isBoth } = namedCause(evidence, stage);
  return {
    row,
    title: isBoth ? "both scaling constants wrong" : (causeTitles[row] as string),
    stage: place,
    says,
    evidence: [...lineNumbers(evidence, stage), ...listEvidence(stage, row)],
    rivals: rivals.map(rivalName),
    separatedBy:
      separations[row] ?? "read the constants of the scaling and compute one value by hand from its raw counts",
  };
}

function namedCause(evidence: CauseEvidence, stage: StageEvidence): Named {
  const place = placeOf(stage.stage);
  if (isInverted(stage)) {
    return {
      row: 7,
      rivals: [],
      place,
      says: "The value falls where it is to rise, about the middle of the range. This is consistent with exchanged scaling constants.",
    };
  }
  const factor = unitFactorOf(evidence, stage);
  if (factor !== undefined) {
    return {
      row: 6,
      rivals: [4],
      place,
      says: `The value is ${shortFactor(factor)} times what it is to be, about its own zero. This is consistent with units mixed up in the scaling.`,
    };
  }
  return namedByPlace(evidence, stage, place);
}

function namedByPlace({ instrument }: CauseEvidence, stage: StageEvidence, place: CausePlace): Named {
  const ends = signalEnds(instrument);
  const isNumbersOnly = stage.stage === "scaling";
  const zero = trueZero(ends);
  const high = fullScaleGain(stage) === undefined ? 4 : 5;
  const gainAtZero: ZeroCandidate<number>[] = isNumbersOnly ? [] : [{ name: 11, at: atSignal(ends, zero) }];
  const offset: ZeroCandidate<number>[] = isNumbersOnly ? [] : [{ name: 9, at: "nowhere" }];
  const constants: ZeroCandidate<number>[] = [
    { name: high, at: atSignal(ends, 0) },
    { name: 3, at: atSignal(ends, 100) },
  ];
  const isCardAlone = stage.stage === "input card";
  const ordered =
    isCardAlone && high === 4 ? [...offset, ...gainAtZero, ...constants] : [...offset, ...constants, ...gainAtZero];
  const { named, rivals } = namedByZero(stage, ordered);
  if (named === undefined) {
    return {
      row: 4,
      rivals: [3, ...rivals.filter((rival) => rival !== 3 && rival !== 4)],
      place,
      says: bothSays(isNumbersOnly),
      isBoth: true,
    };
  }
  const open = high === 5 && named === 5 && !isNumbersOnly ? [...rivals, 4] : rivals;
  return {
    row: named,
    rivals: [...new Set(open)],
    place: named === 9 || named === 11 ? "input card" : place,
    says: placeSays[named] as string,
  };
}

const placeSays: Readonly<Record<number, string>> = {
  3: "The value is right at the high end of the signal and wrong at the low end. This is consistent with a wrong scaling constant at the low end.",
  4: "The value is right at the low end of the signal and wrong at the high end. This is consistent with a wrong scaling constant at the high end.",
  5: "The value is right at the low end of the signal, and its gain is that of one raw full scale read as another. This is consistent with a wrong raw full-scale count.",
  9: "The value is off by the same amount over the whole range. This is consistent with an offset of the input card, or of a 0 V that the signal shares with the supply.",
  11: "The error grows in proportion to the signal, from its true zero on. This is consistent with a wrong shunt resistor, a wrong gain of the card, or a leakage beside the shunt.",
};

function bothSays(isNumbersOnly: boolean): string {
  const also = isNumbersOnly ? "" : ", or with an offset and a gain together";
  return `The value is wrong at both ends of the signal. This is consistent with both scaling constants wrong${also}.`;
}

const separations: Readonly<Record<number, string>> = {
  3: "simulate the signal's low end at the card and read the raw count and the value",
  4: "simulate the signal's high end at the card and read the raw count and the value",
  5: "simulate the signal's high end at the card and read the raw count",
  6: "read the unit of the scaling constants in the controller",
  7: "read the scaling constants in the controller",
  9: "read the value with a simulated signal that shares no 0 V with the loop; for a voltage, measure between the two 0 V points",
  11: "measure the shunt resistor with the loop isolated, and the signal at both ends of the cable",
};

function isInverted(stage: StageEvidence): boolean {
  const { line } = stage;
  if (line === undefined) return false;
  const slack = Math.max(thresholds.inverseGainWithin, 2 * line.gainStandardUncertainty);
  return Math.abs(line.gain + 1) <= slack && Math.abs(lineErrorAt(stage, 50).percentSpan) <= 100 * slack;
}

function fullScaleGain({ line }: StageEvidence): readonly [number, number] | undefined {
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

function listEvidence(stage: StageEvidence, row: number): Finding["evidence"] {
  const pair = fullScaleGain(stage);
  if (row !== 5 || pair === undefined) return [];
  return [{ name: `${pair[0]} / ${pair[1]}`, value: pair[0] / pair[1], unit: "" }];
}

function shortFactor(factor: number): string {
  return String(Number(factor.toPrecision(4)));
}
