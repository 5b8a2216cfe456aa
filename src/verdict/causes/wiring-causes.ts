import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { isLeakage, leakageNumbers } from "./evidence/leakage.ts";
import { lineNumbers } from "./evidence/line-words.ts";
import { onceFor } from "./evidence/once-for.ts";
import { scalingLineSightings } from "./evidence/scaling-line.ts";
import { sensorLineSightings } from "./evidence/sensor-line.ts";
import { atSignal, signalEnds, signalErrorAt, trueZero } from "./evidence/signal-order.ts";
import { isOff, type StageEvidence } from "./evidence/stage-evidence.ts";
import { thresholds } from "./evidence/thresholds.ts";
import { missOf, namedByZero } from "./evidence/zero-candidates.ts";
import type { Evidence } from "./finding.ts";

// What is wrong with the signal on its way: seen between the terminals of sensor and card where it was read at both, in
// the signal at the sensor, or in what the card makes of it.

/** A current beside that of the sensor; it grows as the voltage across the sensor does, so that it is greater at the low end. */
export const leakageAcrossLoop: Cause = {
  id: "leakage-across-loop",
  title: "leakage across the two-wire loop",
  place: "wiring",
  separatedBy:
    "measure the current at both ends of the cable, and the insulation between the cores with the loop isolated",
  remedy: { cures: "wiring", does: "dry and seal cable, glands and junction boxes, and measure the insulation" },
  isSeenAtSensor: true,
  detect: (evidence) => [
    ...sensorLineSightings(evidence, "leakage-across-loop", ({ stage }) => ({
      says: "The signal is too great everywhere, and more so at its low end. This is consistent with a leakage across the two wires of the loop.",
      numbers: leakageNumbers(evidence, stage),
    })),
    ...wiringSightings(
      evidence,
      "leakage-across-loop",
      "The difference is greater at the low end: consistent with a leakage across the two wires of the loop.",
      (stage) => leakageNumbers(evidence, stage),
    ),
  ],
};

/** An error in proportion to the signal, from its true zero on. */
export const shuntOrGainOff: Cause = {
  id: "shunt-or-gain-off",
  title: "shunt resistor or gain about the true zero of the signal",
  place: "wiring",
  separatedBy:
    "measure the signal at both ends of the cable, and the resistance between the cores with the loop isolated",
  remedy: {
    cures: "wiring",
    does: "measure the shunt resistor and whatever lies parallel to the input, and mend what is wrong",
  },
  detect: (evidence) => [
    ...sensorLineSightings(evidence, "shunt-or-gain-off", () => ({
      says: "The signal is too small in proportion to itself, from 0 mA on. This is consistent with a current of which a part is shunted before it is measured.",
    })),
    ...wiringSightings(
      evidence,
      "shunt-or-gain-off",
      "The difference grows in proportion to the signal: consistent with a leakage beside the shunt that takes part of the signal.",
    ),
    ...scalingLineSightings(evidence, "shunt-or-gain-off", () => ({
      says: "The error grows in proportion to the signal, from its true zero on. This is consistent with a wrong shunt resistor, a wrong gain of the card, or a leakage beside the shunt.",
      separatedBy: "measure the shunt resistor with the loop isolated, and the signal at both ends of the cable",
    })),
  ],
};

/** A voltage output feeds an input that takes current, over a wire that has resistance. */
export const voltageDivided: Cause = {
  id: "voltage-divided",
  title: "voltage divided between a resistance in the wire and the input",
  place: "wiring",
  separatedBy: "measure the voltage at both ends of the cable while the input is connected, and once more without it",
  remedy: {
    cures: "wiring",
    does: "find what lies in the wire or loads it, a bad contact, a barrier, an input of too low resistance, and mend it",
  },
  detect: (evidence) => [
    ...wiringSightings(
      evidence,
      "voltage-divided",
      "The difference grows in proportion to the signal: consistent with a resistance in the wire and an input that takes current from it.",
    ),
    ...scalingLineSightings(evidence, "voltage-divided", () => ({
      says: "The error grows in proportion to the signal, from 0 V on. This is consistent with a voltage that is divided on its way to the card, or with a wrong gain of the card.",
      separatedBy: "measure the voltage at both ends of the cable while the input is connected",
    })),
  ],
};

/** Between the terminals of sensor and card, and no one cause alone makes it. */
export const signalChanged: Cause = {
  id: "signal-changed",
  title: "signal changed on its way from sensor to card",
  place: "wiring",
  separatedBy:
    "measure the signal at both ends of the cable with one meter, and with the loop isolated the insulation between the cores and to earth",
  remedy: { cures: "wiring", does: "find what changes the signal between sensor and input card" },
  detect: (evidence) =>
    wiringSightings(
      evidence,
      "signal-changed",
      "The difference neither stays the same nor is lost in proportion to the signal: consistent with an isolator, a splitter or a barrier in between whose span is off, with two faults of the wiring at once, or with a meter that is off.",
    ),
};

/** Between signal and counts lies the card alone, and the wire where the signal was read at the sensor only. */
export const rangeOfCardWrong: Cause = {
  id: "range-of-card-wrong",
  title: "gain or configured range of the input card",
  place: "input card",
  separatedBy:
    "read the configured range of the channel, and simulate both ends of the signal at its terminals against the raw counts",
  remedy: {
    cures: "wiring",
    does: "put the configured range of the card's channel right; where it is right, have the card adjusted, or changed",
  },
  detect: (evidence) =>
    scalingLineSightings(evidence, "range-of-card-wrong", ({ stage }) => ({
      says: `What the card makes of the signal is off by another amount at each end of it. This is consistent with a wrong gain of the input card, or with a channel that is configured for another range${stage.output === "counts" ? ": no scaling constant lies between signal and counts" : ""}.`,
    })),
};

/** The same error over the whole range. */
export const offsetOfCard: Cause = {
  id: "offset-of-card",
  title: "offset of the input card, or of a 0 V shared with the supply",
  place: "input card",
  separatedBy:
    "read the value with a simulated signal that shares no 0 V with the loop; for a voltage, measure between the two 0 V points",
  remedy: {
    cures: "wiring",
    does: "find the offset of the input card, or of the 0 V that it shares with the supply, and remove it there",
  },
  remedyBeside: {
    rival: "both-constants-wrong",
    remedy: {
      cures: "scaling",
      does: "compare the two scaling constants in the controller with those of the design, and put them right; where they are right, find the offset of the input card, or of a shared 0 V, and remove it there",
      isOfConstants: false,
    },
  },
  detect: (evidence) => [
    ...wiringSightings(
      evidence,
      "offset-of-card",
      "The difference is the same over the whole range: consistent with a voltage along a shared 0 V, or with a constant current that comes in or gets lost.",
    ),
    ...scalingLineSightings(evidence, "offset-of-card", ({ stage: { stage } }) => ({
      says: `${stage === "input card" ? "The raw counts are" : "The value is"} off by the same amount over the whole range. This is consistent with an offset of the input card, or of a 0 V that the signal shares with the supply${stage === "input card" ? "" : "; and as well with two scaling constants that are off by the same amount"}.`,
    })),
  ],
};

/** The cause of a line between the terminals of sensor and card. */
type WiringCause =
  | "offset-of-card"
  | "shunt-or-gain-off"
  | "voltage-divided"
  | "leakage-across-loop"
  | "signal-changed";

/** Between the terminals of sensor and card: the place without error names the cause, by Ohm's law. */
function wiringSightings(
  evidence: CauseEvidence,
  cause: WiringCause,
  says: string,
  numbersOf: (stage: StageEvidence) => Evidence[] = () => [],
): readonly Sighting[] {
  return wiringLines(evidence)
    .filter((line) => line.cause === cause)
    .map(({ stage, rivals }) => ({
      stage: "wiring",
      says: `The signal at the card is not the signal at the sensor. ${says}`,
      evidence: [...lineNumbers(evidence, stage), ...numbersOf(stage)],
      // Two meters, or one at two places: no reading here excludes that one of them is off.
      rivals: [...rivals, "meter-off"],
      separatedBy: whatTells(evidence),
    }));
}

function whatTells({ instrument }: CauseEvidence): string {
  return instrument.signalUnit === "V"
    ? "measure at both ends of the cable with one meter, with the input connected and without it, and between the two 0 V points"
    : "with the loop isolated, measure the insulation between the cores and to earth, and the shunt resistor";
}

const wiringLines = onceFor((evidence) =>
  evidence.stages
    .filter((stage) => stage.stage === "wiring" && isOff(stage, evidence.matteringAtEnds))
    .map((stage) => ({ stage, ...wiringLine(evidence, stage) })),
);

function wiringLine(evidence: CauseEvidence, stage: StageEvidence): { cause: WiringCause; rivals: WiringCause[] } {
  const { instrument } = evidence;
  const ends = signalEnds(instrument);
  const isLost = signalErrorAt(stage, ends, 100).percentSpan < 0;
  const lost = instrument.signalUnit === "V" ? "voltage-divided" : "shunt-or-gain-off";
  const { named, rivals } = namedByZero<WiringCause>(stage, [
    { name: "offset-of-card", at: "nowhere" },
    ...(isLost ? [{ name: lost, at: atSignal(ends, trueZero(ends)) } as const] : []),
  ]);
  const isNotLevel = missOf(stage, "nowhere") > thresholds.excludedBeyondUncertainties;
  const leaks = isLeakage(evidence, stage) && (named === undefined || isNotLevel);
  if (leaks) return { cause: "leakage-across-loop", rivals: named === undefined ? [...rivals] : [...rivals, named] };
  return named === undefined
    ? { cause: "signal-changed", rivals: ["offset-of-card"] }
    : { cause: named, rivals: [...rivals] };
}
