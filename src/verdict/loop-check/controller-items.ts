import { loopOf } from "../../analysis/readings/loop.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { LoopItem } from "./loop-item.ts";

const isCounted = ({ countsLower }: Instrument) => countsLower !== undefined;
const isScaled = ({ valueLower }: Instrument) => valueLower !== undefined;

/** Card, counts, scaling, alarms: what is checked in the controller. */
export const controllerItems = [
  {
    number: 10,
    key: "card channel",
    look: "open the configuration of the card",
    record: "slot, channel, range, two or four wires, filter, isolation group",
    accepted: "as the design says",
  },
  {
    number: 11,
    key: "counts at 0 %",
    look: "simulate the signal of range_lower and read the raw value of the card",
    record: "counts",
    accepted: "counts_lower, within the loop's whole tolerance there",
    unit: "counts",
    appliesTo: isCounted,
  },
  {
    number: 11,
    key: "counts at 100 %",
    look: "simulate the signal of range_upper and read the raw value of the card",
    record: "counts",
    accepted: "counts_upper, within the loop's whole tolerance there",
    unit: "counts",
    appliesTo: isCounted,
  },
  {
    number: 12,
    key: "scaling",
    look: "read the constants of the scaling; compute one value by hand from its raw counts",
    record:
      "raw and engineering limits, clamp, filter, whole numbers or not: dividing whole numbers loses the fraction",
    accepted: "the value computed from raw is the value shown, within the loop's tolerance",
    appliesTo: isScaled,
  },
  {
    number: 13,
    key: "end to end",
    look: "compare reference, signal at both ends of the cable, counts, controller value and operator display",
    record: "where the readings are, or what differs",
    accepted: "what the controller shows passes at every test point",
    appliesTo: isScaled,
  },
  {
    number: 14,
    key: "broken wire",
    look: "with the controller's action made safe, lift one core of the signal",
    record: "alarm or quality, value shown, seconds until then; on a signal that begins at 0, that nothing tells",
    accepted: "an alarm; a signal that begins at 0 cannot give one, and that is written down",
  },
  {
    number: 15,
    key: "low fault threshold",
    look: "read, or find by simulation, below which signal the controller reports a fault",
    record: "the signal",
    accepted: "from the sensor's low fault level up to its least measurement; 3.6 to 3.8 mA for NAMUR NE 43",
    unit: "signal",
    appliesTo: (instrument) => loopOf(instrument).faultLevels.low !== undefined,
  },
  {
    number: 15,
    key: "high fault threshold",
    look: "read, or find by simulation, above which signal the controller reports a fault; note the hold-off time",
    record: "the signal",
    accepted: "from the sensor's greatest measurement up to its high fault level; 20.5 to 21 mA for NAMUR NE 43",
    unit: "signal",
    appliesTo: (instrument) => loopOf(instrument).faultLevels.high !== undefined,
  },
  {
    number: 16,
    key: "trip point",
    look: "move the target slowly, in the direction that matters, until the controller acts",
    record: "the distance; action and reset as a remark",
    accepted: "set_point within its tolerance",
    unit: "distance",
    eachOutput: true,
  },
] as const satisfies readonly LoopItem[];
