import * as z from "zod";
import { decimalMarks } from "../units/read-number.ts";
import {
  choice,
  choices,
  choiceUnlessSaid,
  date,
  list,
  number,
  requiredChoice,
  requiredNumber,
  requiredText,
  text,
  tolerance,
  wholeNumber,
  yesNo,
} from "./column.ts";
import { media } from "./medium.ts";
import { signatureMeanings } from "./signer.ts";

export const principles = [
  "ultrasonic",
  "photoelectric",
  "laser",
  "radar",
  "inductive",
  "capacitive",
  "other",
] as const;
/** Copper cores of IEC 60228: classes 5 and 6 plain, the same tinned, classes 1 and 2 plain. */
export const conductors = ["flexible", "flexible tinned", "solid or stranded"] as const;
/** What a due date means: the day itself, or the last day of its month. */
export const dueRules = ["day", "month end"] as const;
export const distanceUnits = ["mm", "cm", "m", "in", "ft"] as const;
export const signalUnits = ["mA", "V"] as const;
export const toleranceBases = ["percent of span", "percent of reading", "distance", "signal"] as const;
/** How a second term of a tolerance belongs to the first: added, or whichever of the two is the greater, or the less. */
export const toleranceCombinations = ["sum", "greater", "less"] as const;

/** Simple acceptance; a guard band of guard_factor · U; the same with a non-binary statement in four words; a managed guard band. */
export const decisionRules = [
  "simple acceptance",
  "guard band",
  "non-binary guard band",
  "managed guard band",
] as const;

/** One tag: the loop that is calibrated, what it should do, and how far it may be off. */
export const instrumentSchema = z.strictObject({
  tag: requiredText("the loop's tag, as on the drawing and in the controller"),
  description: text("what it measures"),
  location: text("where it hangs"),
  principle: choice(principles, "how it senses the distance"),
  serial: text("serial number"),
  rangeLower: requiredNumber("distance", "distance at which the signal is at its lower end"),
  rangeUpper: requiredNumber("distance", "distance at which the signal is at its upper end"),
  distanceUnit: requiredChoice(distanceUnits, "unit of every distance of this tag"),
  signalLower: requiredNumber("signal", "signal meant at range_lower; above signal_upper for a reverse-acting loop"),
  signalUpper: requiredNumber("signal", "signal meant at range_upper"),
  signalUnit: requiredChoice(signalUnits, "unit of the signal"),
  tolerance: tolerance(
    "greatest error allowed; the upper side where tolerance_minus is given; or the whole of it in words, such as ±0.5 % of reading or 5 mm, whichever is greater",
    { above: 0 },
  ),
  toleranceBasis: choiceUnlessSaid(
    toleranceBases,
    "what the tolerance is a part of, or its unit; empty where the tolerance says it",
  ),
  toleranceMinus: number("tolerance", "greatest error allowed downwards, where it differs", { above: 0 }),
  secondTolerance: number("second tolerance", "a second tolerance beside the first", { above: 0 }),
  secondToleranceBasis: choice(toleranceBases, "basis of the second tolerance"),
  secondToleranceMinus: number("second tolerance", "the second tolerance downwards, where it differs", { above: 0 }),
  toleranceCombined: choice(
    toleranceCombinations,
    "how the second tolerance belongs to the first: sum, or whichever is the greater or the less; sum where empty",
  ),
  toleranceIsWide: yesNo("yes where a tolerance of more than 25 % of span is meant; without it such a one is refused"),
  adjustAt: number("%", "percent of tolerance from which adjusting is asked for though it passes", {
    above: 0,
    atMost: 100,
  }),
  reteachResidualMax: number(
    "%",
    "most that the best zero and span may leave, percent of tolerance, where a re-teach is advised; 50 where empty",
    { above: 0 },
  ),
  reteachScatterMax: number(
    "%",
    "two standard deviations of repeated readings, percent of tolerance, up to which a re-teach is advised; 25 where empty",
    { above: 0 },
  ),
  replaceScatterFrom: number(
    "%",
    "two standard deviations of repeated readings (lower bound, 95 %), percent of tolerance, beyond which replacing is advised once the target is proved; 100 where empty",
    { above: 0 },
  ),
  replaceResidualFrom: number(
    "%",
    "what the best zero and span leave, percent of tolerance, beyond which replacing is advised; 100 where empty",
    { above: 0 },
  ),
  driftGrowthMax: number("none", "times as fast as before that a drift may run and be taught away; 2 where empty", {
    above: 0,
  }),
  stageShareFrom: number("%", "error of one stage, percent of tolerance, from which it is at fault; 50 where empty", {
    above: 0,
  }),
  countsLower: number("none", "raw counts of the input card meant at range_lower"),
  countsUpper: number("none", "raw counts of the input card meant at range_upper"),
  valueLower: number("controller value", "controller value meant at range_lower"),
  valueUpper: number("controller value", "controller value meant at range_upper"),
  valueUnit: text("unit of the controller value"),
  faultLow: number("signal", "signal at or below which the sensor reports a fault"),
  faultHigh: number("signal", "signal at or above which the sensor reports a fault"),
  temperatureCompensated: yesNo("whether an ultrasonic sensor corrects for the air temperature"),
  taughtAt: number("°C", "air temperature when it was taught"),
  ingress: text("protection against dust and water that the place asks for, such as IP65"),
  responseMax: number("s", "longest time that the loop may take to follow a step", { above: 0 }),
  medium: choice(media, "what is between sensor and target in service; air where empty"),
  airMin: number("°C", "coldest air expected at the sensor"),
  airMax: number("°C", "hottest air expected at the sensor"),
  blindZone: number("distance", "nearest distance that it can measure", { atLeast: 0 }),
  beamAngle: number("°", "full opening angle of the beam", { above: 0, atMost: 180 }),
  supplyMin: number("V", "lowest supply voltage", { atLeast: 0 }),
  supplyMax: number("V", "highest supply voltage", { atLeast: 0 }),
  loadMax: number("Ω", "greatest load of the signal output", { atLeast: 0 }),
  loadMin: number("Ω", "least load of a voltage output", { atLeast: 0 }),
  supplyVoltage: number("V", "least voltage of the supply that feeds the loop", { above: 0 }),
  cardResistance: number("Ω", "input resistance of the controller's card", { atLeast: 0 }),
  barrierResistance: number("Ω", "resistance of a barrier and of whatever else is in series; 0 if there is nothing", {
    atLeast: 0,
  }),
  cableLength: number("m", "length of the signal cable, one way", { atLeast: 0 }),
  cableSection: number("mm²", "cross-section of one core", { above: 0 }),
  cableAwg: wholeNumber("American wire gauge of one core, where no cross-section is given"),
  cableConductor: choice(conductors, "kind of copper core, for a cross-section; flexible where empty"),
  cableTemperature: number("°C", "hottest temperature of the cable; 20 °C where empty", { atLeast: -60, atMost: 200 }),
  loopPowered: yesNo("whether the sensor lives on the signal current (two wires)"),
  connector: text("kind of connector at the sensor"),
  pins: text("what each pin carries, such as 1 L+; 2 signal; 3 0 V"),
  intervalMonths: number("months", "whole months between calibrations", { atLeast: 1, isWhole: true }),
  dueRule: choice(dueRules, "whether it is due on the day itself (the default) or by the end of that month"),
  intervalAgreedBy: text("who agreed to the interval; without a name no due date is printed"),
  criticality: choice(["safety", "quality", "general"], "what depends on the loop"),
  hazardousArea: yesNo("whether it stands in a hazardous area"),
  decisionRule: choice(decisionRules, "how a result is compared with the tolerance; simple acceptance where empty"),
  guardFactor: number("none", "guard band as a part of the expanded uncertainty, 0 to 1", { atLeast: 0, atMost: 1 }),
  rulePrescribedBy: text("who prescribed the decision rule"),
  ruleAgreedOn: date("day on which the decision rule was agreed"),
  minimumTur: number("none", "least test uncertainty ratio asked for; 4 where empty", { above: 0 }),
  pointsNeeded: number("none", "test points that a phase needs to be complete; 5 where empty", {
    atLeast: 1,
    isWhole: true,
  }),
  endsWithin: number(
    "%",
    "how near both ends of the range the first and the last test point have to be; 10 % of span where empty",
    {
      atLeast: 0,
      atMost: 100,
    },
  ),
  inToleranceRate: number("%", "part of such loops that is found in tolerance, for the risk of false acceptance", {
    above: 0,
    atMost: 99.999,
  }),
  figureBasis: text("the standard, with edition, whose terms the figures follow"),
  toleranceSource: text("where the tolerance comes from: process need, maker figure, other"),
  toleranceSetBy: text("who set the tolerance"),
  inServiceSince: date("day on which it was put into service"),
  signaturesNeeded: choices(
    signatureMeanings,
    "signatures that make a record issued, in their order, with ; between them; performed; authorised where empty",
  ),
  fourEyes: yesNo("whether who performed may neither review nor authorise; no where empty"),
  decimalMark: choice(decimalMarks, "decimal mark of its record and label; point where empty"),
});

export type Instrument = z.infer<typeof instrumentSchema>;
export type ToleranceBasis = (typeof toleranceBases)[number];
export type ToleranceCombination = (typeof toleranceCombinations)[number];
export type DecisionRuleName = (typeof decisionRules)[number];
export type Conductor = (typeof conductors)[number];
export type DistanceUnit = (typeof distanceUnits)[number];
export type SignalUnit = (typeof signalUnits)[number];

/** One switched output of a tag. */
export const outputSchema = z.strictObject({
  tag: requiredText("tag of the table instruments"),
  output: requiredText("name of the output, such as Q1"),
  setPoint: requiredNumber("distance", "distance at which it is meant to switch"),
  setPointTolerance: number("distance", "greatest error allowed of the set point", { above: 0 }),
  differentialMax: number("%", "greatest differential travel, in percent of the operating distance", { above: 0 }),
  repeatMax: number("%", "greatest spread of the operating distance, in percent of it", { above: 0 }),
  polarity: choice(["PNP", "NPN"], "which rail the output switches"),
  function: choice(["NO", "NC"], "normally open or normally closed"),
  controllerInput: choice(["sinking", "sourcing"], "kind of the controller's input"),
  wire: text("wire colour or number"),
  pin: text("pin of the connector"),
  criticalDirection: choice(["approach", "recede"], "direction in which the set point counts; approach where empty"),
  inputType: choice(["1", "2", "3"], "type of the controller's input after IEC 61131-2"),
  onVoltage: number("V", "voltage across the controller's input while the output is on"),
  offVoltage: number("V", "voltage across the controller's input while the output is off"),
  currentMax: number("mA", "greatest current that the output may carry", { above: 0 }),
});

export type Output = z.infer<typeof outputSchema>;

/** A part that could replace the sensor. */
export const candidateSchema = z.strictObject({
  candidate: requiredText("name of the candidate"),
  tags: list("tags that it is considered for, with ; between them; every tag where empty"),
  principle: choice(principles, "how it senses the distance"),
  rangeLower: number("distance", "nearest distance of its range"),
  rangeUpper: number("distance", "farthest distance of its range"),
  distanceUnit: choice(distanceUnits, "unit of its distances"),
  signalLower: number("signal", "lower end of its signal"),
  signalUpper: number("signal", "upper end of its signal"),
  signalUnit: choice(signalUnits, "unit of its signal"),
  polarity: choice(["PNP", "NPN", "either", "none"], "which rail its outputs switch; none where it has no such output"),
  function: choice(["NO", "NC", "either"], "normally open or normally closed"),
  switchedOutputs: wholeNumber("how many switched outputs it has"),
  supplyMin: number("V", "lowest supply voltage", { atLeast: 0 }),
  supplyMax: number("V", "highest supply voltage", { atLeast: 0 }),
  loopPowered: yesNo("whether it lives on the signal current (two wires)"),
  loadMax: number("Ω", "greatest load of its signal output", { atLeast: 0 }),
  loadMin: number("Ω", "least load of a voltage output", { atLeast: 0 }),
  temperatureCompensated: yesNo("whether it corrects for the air temperature"),
  beamAngle: number("°", "full opening angle of its beam", { above: 0, atMost: 180 }),
  blindZone: number("distance", "nearest distance that it can measure", { atLeast: 0 }),
  connector: text("kind of connector"),
  pins: text("what each pin carries, such as 1 L+; 2 signal; 3 0 V; 4 Q1"),
  hazardousArea: yesNo("whether it is approved for the hazardous area of the loop"),
  accuracy: number("accuracy", "greatest error that its data state", { above: 0 }),
  accuracyBasis: choice(toleranceBases, "basis of the accuracy"),
  responseTime: number("s", "longest time that it takes to follow a step", { above: 0 }),
  ambientMin: number("°C", "coldest surroundings that it is made for"),
  ambientMax: number("°C", "hottest surroundings that it is made for"),
  ingress: text("protection against dust and water that it has, such as IP67"),
  outputCurrent: number("mA", "greatest current that its switched outputs carry", { above: 0 }),
  indicators: text("lights or display that it has"),
  sparePart: text("number of the part in the stores, or that there is none"),
  leadTime: number("days", "how long it takes to get one", { atLeast: 0 }),
  price: text("what one costs, with its currency"),
});

export type Candidate = z.infer<typeof candidateSchema>;
