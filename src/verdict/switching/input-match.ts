import { type Figure, notDetermined } from "../../analysis/figures/figure.ts";
import type { Output } from "../../model/instrument.ts";

/** The kind of input that an output of each polarity can drive. */
const inputFor = { PNP: "sinking", NPN: "sourcing" } as const;

/** Whether an output can drive its input, and the input that it needs. */
export type InputMatch = { needs: "sinking" | "sourcing"; statement: "pass" | "fail" };

/**
 * Whether output and controller input fit: a PNP output gives current and needs a sinking input, an NPN output takes it
 * and needs a sourcing one.
 *
 * @param output polarity and kind of the controller's input
 * @returns the input that the polarity needs, and pass where it is the one there is; or what is not stated
 * Source: common practice of the trade. Makers' labels differ: the direction of the current decides.
 * @example inputMatch({ polarity: "NPN", controllerInput: "sinking" }) // { needs: "sourcing", statement: "fail" }
 */
export function inputMatch({
  polarity,
  controllerInput,
}: Pick<Output, "polarity" | "controllerInput">): Figure<InputMatch> {
  if (polarity === undefined) return notDetermined("the polarity of the output is not stated");
  if (controllerInput === undefined) return notDetermined("the kind of the controller's input is not stated");
  const needs = inputFor[polarity];
  return { needs, statement: needs === controllerInput ? "pass" : "fail" };
}
