import { rowsExchanged, wildReading } from "./apart-causes.ts";
import type { Cause } from "./cause.ts";
import { clampedOrCut, otherChannel } from "./controller-value-causes.ts";
import { mixedUp, openWire, signalAtItsEnd } from "./dead-signal-causes.ts";
import { hysteresis, notSettled, playInRig } from "./direction-causes.ts";
import type { NamedCause } from "./finding.ts";
import { beyondRange, blindZone, currentLimited, obstruction } from "./limit-causes.ts";
import { fromZeroScaledAsLiveZero, liveZeroScaledFromZero } from "./live-zero-causes.ts";
import { onePointOff } from "./lone-point-causes.ts";
import { lostAndHeld, lostWithFault, weakTarget } from "./lost-target-causes.ts";
import {
  bothConstantsWrong,
  constantsExchanged,
  fullScaleWrong,
  highConstantWrong,
  lowConstantWrong,
  offsetInController,
  unitsMixedUp,
} from "./scaling-causes.ts";
import { mainsHum, scatterEverywhere } from "./scatter-causes.ts";
import {
  airTemperature,
  axisTilted,
  bothEndsTaughtWrong,
  datumShifted,
  endsTaughtWrong,
  otherGas,
  slopeTurnedRound,
  targetTilted,
  voltageOverloaded,
} from "./sensor-line-causes.ts";
import { curved, squareRootTaken } from "./shape-causes.ts";
import {
  differentialTooWide,
  outputAndInputUnfit,
  outputAndValueShifted,
  outputChatters,
  outputDoesNotRepeat,
  outputsExchanged,
  switchPointOff,
} from "./switch-causes.ts";
import { warmUpOrDrift } from "./time-causes.ts";
import { typingError } from "./typing-causes.ts";
import {
  leakageAcrossLoop,
  offsetOfCard,
  rangeOfCardWrong,
  shuntOrGainOff,
  signalChanged,
  voltageDivided,
} from "./wiring-causes.ts";

/** Every cause that is looked for, in the order in which a fault is: no measurement, standing still, the line, its shape, the switch. */
export const causes: readonly Cause[] = [
  openWire,
  mixedUp,
  signalAtItsEnd,
  weakTarget,
  lostWithFault,
  lostAndHeld,
  typingError,
  rowsExchanged,
  wildReading,
  currentLimited,
  blindZone,
  obstruction,
  beyondRange,
  otherChannel,
  clampedOrCut,
  onePointOff,
  squareRootTaken,
  liveZeroScaledFromZero,
  fromZeroScaledAsLiveZero,
  slopeTurnedRound,
  datumShifted,
  endsTaughtWrong,
  bothEndsTaughtWrong,
  airTemperature,
  otherGas,
  axisTilted,
  targetTilted,
  voltageOverloaded,
  leakageAcrossLoop,
  shuntOrGainOff,
  voltageDivided,
  offsetOfCard,
  signalChanged,
  rangeOfCardWrong,
  constantsExchanged,
  unitsMixedUp,
  fullScaleWrong,
  lowConstantWrong,
  highConstantWrong,
  offsetInController,
  bothConstantsWrong,
  curved,
  scatterEverywhere,
  mainsHum,
  notSettled,
  hysteresis,
  playInRig,
  warmUpOrDrift,
  outputAndInputUnfit,
  outputsExchanged,
  switchPointOff,
  outputAndValueShifted,
  differentialTooWide,
  outputDoesNotRepeat,
  outputChatters,
];

/** What can only stand among the rivals: no reading shows it by itself. */
export const rivalsOnly: readonly NamedCause[] = [
  { id: "other-column-slip", title: "a slip in another column of the row" },
  { id: "reference-moved", title: "a reference, a bracket or a target that moved" },
  { id: "reference-position-off", title: "a reference position or a mark that is off" },
  { id: "reference-scale-off", title: "a scale of the reference that is off: its tape, its rail, how it is read" },
  { id: "counts-row-wrong", title: "raw counts in the table instruments that are not those of the card" },
  { id: "trips-noted-wrong", title: "trips noted wrong: approach for recede, or with a slip" },
  { id: "meter-off", title: "a meter that is off at one of the two ends" },
  { id: "display-too-coarse", title: "a display with too few decimals" },
  { id: "outputs-row-wrong", title: "a wrong entry in the table outputs: labels of inputs differ from maker to maker" },
];
