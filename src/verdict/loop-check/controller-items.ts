import { loopOf } from "../../analysis/readings/loop.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { LoopItem } from "./loop-item.ts";

const isCounted = ({ countsLower }: Instrument) => countsLower !== undefined;
const isScaled = ({ valueLower }: Instrument) => valueLower !== undefined;

type Injected<Word extends string, Part extends string> = LoopItem & { key: `${Word} at ${Part}` };

/** An item for each part of the signal that is injected at the terminals of the card: 4, 8, 12, 16 and 20 mA. */
function countsAt<Part extends string>(...parts: readonly Part[]): readonly Injected<"counts", Part>[] {
  return parts.map((part) => ({
    number: 15,
    key: `counts at ${part}`,
    look: `inject ${part} of the signal at the terminals of the card, and read its raw value`,
    record: "counts",
    accepted: "on the line from counts_lower to counts_upper, within the loop's whole tolerance there",
    unit: "counts",
    appliesTo: isCounted,
  }));
}

function valueAt<Part extends string>(...parts: readonly Part[]): readonly Injected<"value", Part>[] {
  return parts.map((part) => ({
    number: 17,
    key: `value at ${part}`,
    look: `inject ${part} of the signal at the terminals of the card, and read the value of the controller`,
    record: "the value in the controller's unit",
    accepted: "on the line from value_lower to value_upper, within the loop's whole tolerance there",
    unit: "value",
    appliesTo: isScaled,
  }));
}

/** Card, counts, scaling, alarms: what is checked in the controller. */
export const controllerItems = [
  {
    number: 14,
    key: "card channel",
    look: "open the configuration of the card",
    record: "slot, channel, range, two or four wires, filter, isolation group",
    accepted: "as the design says",
  },
  ...countsAt("0 %", "25 %", "50 %", "75 %", "100 %"),
  {
    number: 16,
    key: "scaling",
    look: "read the constants of the scaling; compute one value by hand from its raw counts",
    record:
      "raw and engineering limits, clamp, filter, whole numbers or not: dividing whole numbers loses the fraction",
    accepted: "the value computed from raw is the value shown, within the loop's tolerance",
    appliesTo: isScaled,
  },
  ...valueAt("0 %", "25 %", "50 %", "75 %", "100 %"),
  {
    number: 17,
    key: "display and trend",
    look: "at each step of the injection, read the operator's display and look for the step in the trend",
    record: "what differed, with unit and decimals of the display",
    accepted: "the display shows what the controller has, and the trend keeps it",
    appliesTo: isScaled,
  },
  {
    number: 18,
    key: "end to end",
    look: "compare reference, signal at both ends of the cable, counts, controller value and operator display",
    record: "where the readings are, or what differs",
    accepted: "what the controller shows passes at every test point",
    appliesTo: isScaled,
  },
  {
    number: 19,
    key: "broken wire",
    look: "with the controller's action made safe, lift one core of the signal",
    record: "alarm or quality, value shown, seconds until then; on a signal that begins at 0, that nothing tells",
    accepted: "an alarm; a signal that begins at 0 cannot give one, and that is written down",
  },
  {
    number: 19,
    key: "power loss",
    look: "with the controller's action made safe, take the supply from the sensor, and then from the controller's card",
    record: "what the value, the alarm and the final element did, each time",
    accepted: "they go to the side that the loop's data call safe",
  },
  {
    number: 19,
    key: "lost target",
    look: "with the controller's action made safe, take the target out of the beam",
    record: "signal, alarm, seconds until then, and what the final element did",
    accepted: "what the settings say of a lost target, and the side that the loop's data call safe",
  },
  {
    number: 20,
    key: "low fault threshold",
    look: "read, or find by simulation, below which signal the controller reports a fault",
    record: "the signal",
    accepted: "from the sensor's low fault level up to its least measurement; 3.6 to 3.8 mA for NAMUR NE 43",
    unit: "signal",
    appliesTo: (instrument) => loopOf(instrument).faultLevels.low !== undefined,
  },
  {
    number: 20,
    key: "high fault threshold",
    look: "read, or find by simulation, above which signal the controller reports a fault; note the hold-off time",
    record: "the signal",
    accepted: "from the sensor's greatest measurement up to its high fault level; 20.5 to 21 mA for NAMUR NE 43",
    unit: "signal",
    appliesTo: (instrument) => loopOf(instrument).faultLevels.high !== undefined,
  },
  {
    number: 21,
    key: "trip point",
    look: "move the target slowly, in the direction that matters, until the controller acts",
    record: "the distance; action and reset as a remark",
    accepted: "set_point within its tolerance",
    unit: "distance",
    eachOutput: true,
  },
  {
    number: 22,
    key: "response",
    look: "let the target, or the injected signal, make one step from a tenth to nine tenths of the range",
    record: "seconds until the value is within its tolerance of the new one",
    accepted: "no longer than response_max of the loop",
    unit: "s",
  },
  {
    number: 22,
    key: "filter",
    look: "read the damping of the sensor, the filter of the card and that of the controller",
    record: "seconds of each",
    accepted: "as designed; together no more than the response allows",
  },
] as const satisfies readonly LoopItem[];
