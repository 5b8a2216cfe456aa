import * as z from "zod";
import { adjustments, directions, phases, tripDirections } from "./calibration-words.ts";
import {
  choice,
  choiceOfSeveral,
  choices,
  date,
  expectedDate,
  expectedText,
  list,
  number,
  numberOrWords,
  requiredChoice,
  requiredDate,
  requiredNumber,
  requiredText,
  sheetText,
  text,
  time,
  unit,
  wholeNumber,
} from "./column.ts";
import { airBounds } from "./instrument-words.ts";
import { media } from "./medium.ts";

/** What an entry sheet says of a row: original observations are kept with where and when they were typed. */
const typedColumns = () => ({
  typedAt: sheetText("when it was typed into an entry sheet, local time with its distance from UTC"),
  typedIn: sheetText("number of that sheet, with four digits for the device"),
  typedBefore: sheetText("what stood there before it was typed again, each with the moment until which it did"),
});

/** One reference used. */
export const standardSchema = z.strictObject({
  standard: requiredText("name by which calibrations refer to it"),
  description: text("what it is"),
  serial: text("serial number"),
  quantity: choice(
    ["distance", "current", "voltage", "temperature", "humidity", "pressure", "resistance", "time", "other"],
    "what it measures",
  ),
  certificate: requiredText("number of its calibration certificate"),
  calibratedOn: requiredDate("date of that certificate"),
  dueOn: requiredDate("day until which it may be used"),
  traceableTo: text("who or what the certificate is traceable to"),
  expandedUncertainty: number("stated by row", "expanded uncertainty of the certificate", { above: 0 }),
  relativeUncertainty: number(
    "%",
    "where the certificate states U = a + b·L: b in percent of what is measured, a being the expanded uncertainty",
    { atLeast: 0, atMost: 100 },
  ),
  uncertaintyUnit: unit("unit of the uncertainty, the resolution and the drift"),
  coverageFactor: number("none", "coverage factor of that uncertainty", { above: 0 }),
  resolution: number("stated by row", "smallest step that it shows; 0 says that it has none", { atLeast: 0 }),
  driftPerYear: number("stated by row", "greatest drift expected in a year", { atLeast: 0 }),
});

export type Standard = z.infer<typeof standardSchema>;

/** One event: who proved which loop, when, with what, under which conditions. */
export const calibrationSchema = z.strictObject({
  calibration: requiredText("number of the calibration; its record carries it"),
  tag: requiredText("tag of the table instruments"),
  performedOn: expectedDate("day on which the work was done"),
  performedBy: expectedText("who did the work"),
  receivedOn: date("day on which the item was received"),
  place: text("where the work was done: bench, in place, elsewhere"),
  reason: choice(["new", "due", "doubted", "after repair", "after replacement"], "why it was done"),
  procedure: text("procedure and its edition"),
  workOrder: text("number of the work order"),
  standards: list("names of the standards used, with a comma, ; or + between them"),
  airTemperature: number("°C", "air temperature at the sensor", airBounds),
  relativeHumidity: number("%", "relative humidity of the air", { atLeast: 0, atMost: 100 }),
  pressure: number("hPa", "air pressure", { above: 0 }),
  medium: choice(media, "what was between sensor and target, where it was not what is there in service"),
  targetMaterial: text("what the target is made of"),
  targetWidth: number("distance", "width of the target", { above: 0 }),
  targetHeight: number("distance", "height of the target", { above: 0 }),
  targetTilt: number("°", "tilt of the target against the axis", { atLeast: 0, atMost: 90 }),
  alignmentAngle: number("°", "greatest angle between the reference and the axis of the sensor", {
    atLeast: 0,
    atMost: 45,
  }),
  targetSurface: text("surface of the target"),
  adjustment: choiceOfSeveral(
    adjustments,
    { restIn: "alsoAdjusted", order: ["replace", "re-teach", "repair", "re-scale"] },
    "what was adjusted; of several with a comma, ; or + between them, what weighs most, the others in also_adjusted",
  ),
  alsoAdjusted: choices(adjustments, "what was adjusted besides"),
  adjustmentNote: text("how it was adjusted"),
  reviewedBy: text("who reviewed the results"),
  reviewedOn: date("day of the review"),
  approvedBy: text("who approved the record"),
  approvedOn: date("day of the approval"),
  bypassPermit: text("number of the permit to bypass the loop; empty or none where it was not bypassed"),
  returnedToService: text("when and by whom the loop was handed back"),
  remarks: text("anything else worth keeping"),
  laboratory: text("name of whoever calibrated, as an organisation"),
  laboratoryAddress: text("its address"),
  owner: text("name and contact of the owner of the loop"),
  conditionReceived: text("condition of the item before the work"),
  deviations: text("what was added to, left out of or done other than the procedure says"),
  issuedOn: date("day of issue"),
  affected: text("found out of tolerance: functions, products, batches that it may have touched"),
  impactDecision: text("found out of tolerance: what was decided about it, also 'no impact, because …'"),
  impactDecidedBy: text("who decided that"),
  impactDecidedOn: date("day of that decision"),
  ownerToldOn: date("day on which the owner was told of it"),
  ...typedColumns(),
});

export type Calibration = z.infer<typeof calibrationSchema>;

/** One reading: what the sensor gave and what the controller showed at one reference distance. */
export const readingSchema = z.strictObject({
  calibration: requiredText("calibration of the table calibrations"),
  phase: requiredChoice(phases, "before or after anything was adjusted"),
  cycle: wholeNumber("number of the run out and back, from 1"),
  direction: requiredChoice(directions, "whether the reference was rising or falling"),
  point: number("distance", "nominal position of the test point"),
  reference: requiredNumber("distance", "reference distance"),
  signal: number("signal", "signal of the sensor"),
  signalAtCard: number("signal", "the same signal at the terminals of the input card"),
  counts: number("none", "raw counts of the input card"),
  value: number("controller value", "value that the controller showed"),
  time: time("when it was read"),
  rejected: text("why the reading is left out of the figures"),
  remark: text("a note"),
  ...typedColumns(),
});

export type Reading = z.infer<typeof readingSchema>;

/** One change of state of a switched output. */
export const tripSchema = z.strictObject({
  calibration: requiredText("calibration of the table calibrations"),
  phase: requiredChoice(phases, "before or after anything was adjusted"),
  output: requiredText("output of the table outputs"),
  direction: requiredChoice(tripDirections, "which way the target moved"),
  cycle: wholeNumber("number of the run, from 1"),
  reference: requiredNumber("distance", "reference distance at which the state changed"),
  state: choice(["on", "off"], "state of the controller's input after the change; it tells NO from NC"),
  ...typedColumns(),
});

export type Trip = z.infer<typeof tripSchema>;

/** One item of the loop around the sensor that was looked at. */
export const loopCheckSchema = z.strictObject({
  calibration: requiredText("calibration of the table calibrations"),
  item: requiredText("what was looked at"),
  result: choice(["pass", "fail", "not applicable"], "the result; empty where it was not looked at"),
  measured: numberOrWords("what was measured"),
  unit: text("unit of what was measured"),
  low: numberOrWords("lowest value allowed"),
  high: numberOrWords("highest value allowed"),
  checkedBy: text("who looked at it, where it was not who performed the calibration"),
  time: time("when it was looked at"),
  remark: text("a note"),
  ...typedColumns(),
});

export type LoopCheck = z.infer<typeof loopCheckSchema>;
