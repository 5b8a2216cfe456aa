import type { Calibration } from "../../../src/model/calibration.ts";
import type { Candidate, Instrument, Output } from "../../../src/model/instrument.ts";
import type { FitCell } from "../../../src/verdict/replacement/fit-cell.ts";
import type { LoopNeeds } from "../../../src/verdict/replacement/loop-needs.ts";
import { frozen } from "../../charts/frozen.ts";

/** An ultrasonic loop of 400 to 4000 mm on 4 to 20 mA, ±36 mm, with everything stated that a candidate is held against. */
const instrument: Instrument = {
  tag: "LT-1",
  principle: "ultrasonic",
  rangeLower: 400,
  rangeUpper: 4000,
  distanceUnit: "mm",
  signalLower: 4,
  signalUpper: 20,
  signalUnit: "mA",
  tolerance: 1,
  toleranceBasis: "percent of span",
  airMin: -5,
  airMax: 32,
  supplyMin: 12,
  supplyMax: 30,
  supplyVoltage: 24,
  loopPowered: false,
  cardResistance: 250,
  barrierResistance: 0,
  cableLength: 100,
  cableSection: 0.5,
  connector: "M12, 5 pins",
  pins: "1 L+; 2 signal; 3 0 V",
};

const output: Output = {
  tag: "LT-1",
  output: "Q1",
  setPoint: 500,
  polarity: "PNP",
  function: "NO",
  controllerInput: "sinking",
  pin: "4",
};

/** Meets every demand of that loop. */
const candidate: Candidate = {
  candidate: "candidate A",
  principle: "ultrasonic",
  rangeLower: 0.3,
  rangeUpper: 6,
  distanceUnit: "m",
  signalLower: 4,
  signalUpper: 20,
  signalUnit: "mA",
  polarity: "PNP",
  function: "either",
  supplyMin: 10,
  supplyMax: 30,
  loopPowered: false,
  loadMax: 500,
  temperatureCompensated: true,
  beamAngle: 6,
  blindZone: 0.35,
  connector: "m12, 5 Pins",
  pins: "1 L+, 2 Signal, 3 0V, 4 Q1",
  accuracy: 0.009,
  ambientMin: -25,
  ambientMax: 60,
  accuracyBasis: "distance",
};

export type NeedsChanges = {
  instrument?: Partial<Instrument>;
  calibration?: Partial<Calibration>;
  outputs?: readonly Partial<Output>[];
} & Partial<Pick<LoopNeeds, "airExtremes" | "standardsUncertainty">>;

export function loopNeeds(changes: NeedsChanges = {}): LoopNeeds {
  const { outputs = [{}], airExtremes, standardsUncertainty = 2 } = changes;
  return frozen({
    instrument: { ...instrument, ...changes.instrument },
    calibration: { calibration: "C-1", tag: "LT-1", targetWidth: 600, targetHeight: 500, ...changes.calibration },
    outputs: outputs.map((more) => ({ ...output, ...more })),
    airExtremes: airExtremes ?? [
      { temperature: -5, errorAtUpper: 180, toleranceAtUpper: 36 },
      { temperature: 32, errorAtUpper: -80, toleranceAtUpper: 36 },
    ],
    standardsUncertainty,
  });
}

export function candidateWith(more: Partial<Candidate> = {}): Candidate {
  return frozen({ ...candidate, ...more });
}

/** Result and reason of a cell, for one glance. */
export function told(cell: FitCell | undefined): string {
  return `${cell?.result}: ${cell?.reason}`;
}
