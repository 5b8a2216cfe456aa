/** Types of a 24 V DC digital input whose voltages are published. */
export type InputType = "1" | "2" | "3";

type Limits = { low: number; high: number };

/** Voltage across the input, in V, that is read as 0 and as 1. IEC 61131-2, current-sinking 24 V DC inputs. */
export const inputLimitsVolts: Readonly<Record<InputType, Readonly<{ off: Limits; on: Limits }>>> = Object.freeze({
  "1": { off: { low: -3, high: 5 }, on: { low: 15, high: 30 } },
  "2": { off: { low: -3, high: 5 }, on: { low: 11, high: 30 } },
  "3": { off: { low: -3, high: 5 }, on: { low: 11, high: 30 } },
});

/** A voltage, the limits that it has to keep, and what the input makes of it. */
export type JudgedVoltage = {
  volts: number;
  low: number;
  high: number;
  readAs: "0" | "1" | "neither for certain" | "outside the range of the input";
  statement: "pass" | "fail";
};

/**
 * Judges the voltage across a controller's input with the output on, or off; on a limit is inside.
 *
 * @param type of the input
 * @param state of the output
 * @param volts between the input and its common, positive where the input conducts; for a sourcing input the same
 *   voltage is measured against the other rail (own choice: the standard's table is for sinking inputs)
 * @returns the limits for that state, what the input reads, pass where it reads 1 with the output on and 0 with it off
 * Source: IEC 61131-2, 24 V DC inputs of type 1 and type 3, as printed in the manuals of two unrelated makers of inputs;
 *   type 2, which takes more current at the voltages of type 3, from memory.
 * @example inputVoltage("1", "on", 13).readAs // "neither for certain"
 */
export function inputVoltage(type: InputType, state: "on" | "off", volts: number): JudgedVoltage {
  const { low, high } = inputLimitsVolts[type][state];
  const statement = volts >= low && volts <= high ? "pass" : "fail";
  return { volts, low, high, readAs: readAs(type, volts), statement };
}

function readAs(type: InputType, volts: number): JudgedVoltage["readAs"] {
  const { off, on } = inputLimitsVolts[type];
  if (volts < off.low || volts > on.high) return "outside the range of the input";
  if (volts <= off.high) return "0";
  return volts >= on.low ? "1" : "neither for certain";
}
