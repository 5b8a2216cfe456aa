import type { Instrument } from "../../model/instrument.ts";
import type { LoopItem } from "./loop-item.ts";

const seesThroughAir = ({ principle }: Instrument) => principle !== "inductive" && principle !== "capacitive";

/** Target, beam, air, mounting, settings: what is checked where the sensor hangs; and that all of it was put back. */
export const siteItems = [
  {
    number: 23,
    key: "indicators",
    look: "watch the lights of the sensor with the target at three distances",
    record: "power, outputs, echo or quality",
    accepted: "as the manual says",
  },
  {
    number: 24,
    key: "target",
    look: "look at size, flatness, angle, surface, colour or gloss, kind of metal, and whether it is still",
    record: "its smaller side; the rest as a remark",
    accepted: "at least as wide as the beam at range_upper",
    unit: "distance",
    appliesTo: seesThroughAir,
  },
  {
    number: 24,
    key: "target metal",
    look: "look at kind of metal, thickness and size against the standard target",
    record: "kind and size",
    accepted: "the standard target, or with the reduction factor of its metal",
    appliesTo: ({ principle }) => principle === "inductive",
  },
  {
    number: 25,
    key: "blind zone",
    look: "bring the target nearer until the reading jumps or stands still",
    record: "the nearest distance that is still measured",
    accepted: "no more than range_lower",
    unit: "distance",
    appliesTo: seesThroughAir,
  },
  {
    number: 26,
    key: "obstructions",
    look: "look along the beam for walls, stand-pipes, steps, other sensors",
    record: "each with its distance",
    accepted: "none inside the beam",
    appliesTo: seesThroughAir,
  },
  {
    number: 27,
    key: "air",
    look: "measure the air at the sensor and at the target; look for draught, fumes, dust, sun on the body",
    record: "the temperature at the sensor; the rest as a remark",
    accepted: "between air_min and air_max of the sensor",
    unit: "°C",
  },
  {
    number: 28,
    key: "mounting",
    look: "pull at the bracket; measure the angle of the axis and the distance from the datum",
    record: "angle, datum plane (face, flange or thread), offset of the reference",
    accepted: "tight, square, and on its mark",
  },
  {
    number: 29,
    key: "condition",
    look: "look at face or window, connector, cable and seals",
    record: "what was found and what was cleaned",
    accepted: "clean, dry, not strained",
  },
  {
    number: 30,
    key: "warm-up",
    look: "note when power came on and when the first reading was taken",
    record: "minutes between them",
    accepted: "what the procedure asks for, in the column low, or more",
    unit: "min",
  },
  {
    number: 31,
    key: "settings",
    look: "read the sensor's settings before the work and after it",
    record: "range, slope, damping, what it does without an echo, switching mode, taught values, lock",
    accepted: "as meant, and changed only where the record says so",
  },
  {
    number: 32,
    key: "drives running",
    look: "hold the target still; read the signal with pumps, drives and heaters nearby off, and again with them running",
    record: "the change of the signal",
    accepted: "no more than the loop's tolerance",
    unit: "signal",
  },
  {
    number: 33,
    key: "insulation",
    look: "only where the site's procedure asks for it, with the device disconnected: insulation and surge parts",
    record: "as the procedure says",
    accepted: "as the procedure says",
  },
  {
    number: 34,
    key: "restored",
    look: "put wires back, take out forces, simulations, jumpers and the bypass; see a live reading; hand the loop over",
    record: "to whom, and when",
    accepted: "everything back, and somebody has taken the loop over",
  },
] as const satisfies readonly LoopItem[];
