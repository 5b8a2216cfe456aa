import { isDetermined } from "../../analysis/figures/figure.ts";
import type { Candidate, Output } from "../../model/instrument.ts";
import { inputMatch } from "../switching/input-match.ts";
import { type FitCell, type FitResult, notStated, worstFit } from "./fit-cell.ts";
import type { LoopNeeds } from "./loop-needs.ts";

type Part = { result: FitResult; reason: string };

/** The polarity that each kind of input needs: `inputMatch` the other way round. */
const polarityFor = { sinking: "PNP", sourcing: "NPN" } as const;

/**
 * Whether a candidate has a switched output for each that the loop uses: one that drives the controller's input, and
 * switches the same way.
 *
 * @param candidate polarity, function, number of its outputs
 * @param needs outputs of the tag, in the order of their table
 * @returns a cell for each output of the tag
 * Source: `input-match.ts`; own choice that the kind of the controller's input weighs more than the present polarity.
 * @example fitOutputs({ candidate: "A", polarity: "NPN", function: "NO" }, needs)[0].result // "does not fit", for a
 *   sinking input
 */
export function fitOutputs(candidate: Candidate, { outputs }: Pick<LoopNeeds, "outputs">): readonly FitCell[] {
  return outputs.map((output, index) => {
    const parts = partsOf(candidate, output, index);
    return {
      demand: `switched output ${output.output}`,
      result: worstFit(parts.map(({ result }) => result)),
      needs: needsWords(output),
      offers: offersWords(candidate),
      reason: parts.map(({ reason }) => reason).join("; "),
    };
  });
}

function partsOf(candidate: Candidate, output: Output, index: number): readonly Part[] {
  const count = countPart(candidate, index);
  if (count?.result === "does not fit") return [count];
  const functionPart = functionPartOf(candidate, output);
  return [
    ...(count === undefined ? [] : [count]),
    polarityPart(candidate, output),
    ...(functionPart === undefined ? [] : [functionPart]),
  ];
}

function countPart({ polarity, switchedOutputs }: Candidate, index: number): Part | undefined {
  if (polarity === "none") return { result: "does not fit", reason: "it has no switched output" };
  if (switchedOutputs !== undefined && index >= switchedOutputs) {
    return { result: "does not fit", reason: `it has ${switchedOutputs}, and this is number ${index + 1} of the loop` };
  }
  if (switchedOutputs !== undefined || index === 0) return undefined;
  return { result: "cannot be told", reason: "how many switched outputs it has is not stated" };
}

function polarityPart({ polarity }: Candidate, output: Output): Part {
  const { controllerInput } = output;
  const needed = controllerInput === undefined ? output.polarity : polarityFor[controllerInput];
  if (needed === undefined) {
    return { result: "cannot be told", reason: "the loop states neither the controller's input nor a polarity" };
  }
  if (polarity === undefined || polarity === "none") {
    return { result: "cannot be told", reason: "its polarity is not stated" };
  }
  if (polarity === "either") return { result: "fits", reason: `to be set to ${needed}` };
  if (controllerInput === undefined) {
    const isSame = polarity === needed;
    return isSame
      ? { result: "fits", reason: "the polarity that is there now" }
      : { result: "does not fit", reason: `${polarity} where ${needed} is there now` };
  }
  const match = inputMatch({ polarity, controllerInput });
  return isDetermined(match) && match.statement === "pass"
    ? { result: "fits", reason: `${polarity} drives a ${controllerInput} input` }
    : { result: "does not fit", reason: `${polarity} cannot drive a ${controllerInput} input` };
}

function functionPartOf(candidate: Candidate, output: Output): Part | undefined {
  if (output.function === undefined) return undefined;
  if (candidate.function === undefined) return { result: "cannot be told", reason: "its function is not stated" };
  if (candidate.function === "either") return { result: "fits", reason: `to be set to ${output.function}` };
  if (candidate.function === output.function) return { result: "fits", reason: `${output.function} as now` };
  const reason = `${candidate.function} for ${output.function}: the controller has to take the other state, and a broken wire then reads the other way`;
  return { result: "fits with a change", reason };
}

function needsWords({ polarity, function: switching, controllerInput }: Output): string {
  const input = controllerInput === undefined ? undefined : `into a ${controllerInput} input`;
  const words = [polarity, switching, input].filter((word) => word !== undefined);
  return words.length === 0 ? "a switched output" : words.join(", ");
}

function offersWords({ polarity, function: switching }: Candidate): string {
  if (polarity === "none") return "none";
  const words = [
    polarity === "either" ? "PNP or NPN" : polarity,
    switching === "either" ? "NO or NC" : switching,
  ].filter((word) => word !== undefined);
  return words.length === 0 ? notStated : words.join(", ");
}
