import { notDetermined } from "../analysis/figures/figure.ts";
import type { Trip } from "../model/calibration.ts";
import type { Output } from "../model/instrument.ts";
import { worstStatement } from "../model/statement.ts";
import type { WiringRecord } from "../record/switching-schema.ts";
import { inputMatch } from "../verdict/switching/input-match.ts";
import { inputVoltage } from "../verdict/switching/input-voltage.ts";
import { switchingFunction } from "../verdict/switching/switching-function.ts";
import { orNull, type Reasons } from "./phase/assemble-figures.ts";

/**
 * How an output and the controller's input fit: polarity, the voltages across the input against its
 * type, and the function by what its trips did.
 *
 * @param output its row
 * @param trips of the last phase in which it was tripped
 * @returns what could be judged, the worst of it as statement, and why the rest could not
 * Source: `input-match.ts`, `input-voltage.ts`.
 * @example assembleWiring({ tag: "LT-1", output: "Q1", setPoint: 100, polarity: "PNP", controllerInput: "sinking" })
 *   .statement // "pass"
 */
export function assembleWiring(output: Output, trips: readonly Trip[] = []): WiringRecord {
  const reasons: Reasons = {};
  const isTold = trips.some(({ state }) => state !== undefined);
  const functionMatch = isTold ? orNull("functionMatch", switchingFunction(output, trips), reasons) : undefined;
  const match = orNull("inputMatch", inputMatch(output), reasons);
  const onVoltage = orNull("onVoltage", voltageOf(output, "on"), reasons);
  const offVoltage = orNull("offVoltage", voltageOf(output, "off"), reasons);
  const statements = [match, onVoltage, offVoltage, functionMatch].flatMap((judged) => judged?.statement ?? []);
  return {
    inputMatch: match,
    onVoltage,
    offVoltage,
    ...(functionMatch !== undefined && { functionMatch }),
    statement: worstStatement(statements) ?? null,
    notDetermined: reasons,
  };
}

function voltageOf({ inputType, onVoltage, offVoltage }: Output, state: "on" | "off") {
  const volts = state === "on" ? onVoltage : offVoltage;
  if (volts === undefined) return notDetermined(`no ${state}_voltage is stated`);
  if (inputType === undefined) return notDetermined("no input_type is stated, so no limits are known");
  return inputVoltage(inputType, state, volts);
}
