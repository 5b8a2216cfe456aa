import type { TripDoubt } from "../../analysis/plausibility/trip-doubt.ts";
import { spanOf } from "../../model/range.ts";
import { numberWords } from "../loop-check/limit-words.ts";
import { exchangedWith } from "../switching/exchanged-with.ts";
import { isSetPointOff, noteDoubt, type SwitchedState } from "../switching/switched-state.ts";
import type { PhaseState } from "./phase-state.ts";
import { type RecommendedStep, stepOf } from "./step.ts";

/** What a switched output asks for, at which place. */
export type SwitchStep = {
  action: RecommendedStep["action"];
  of: "set-up" | "wiring" | "switched output" | "readings" | "standard";
  does: string;
  reason: string;
  /** The rule that led here, where its place does not say it. */
  rule?: string;
};

/**
 * What the switched outputs of a phase ask for.
 *
 * Where the trips contradict each other as they are noted, nothing rests on them. Two outputs that each trip where the
 * other one is set to are told apart before either is taught. A teach of its own that drifted is taught anew; what the
 * analog value is off by, too, is a shift in front of both, and teaching the output would hide it.
 *
 * @param state of the phase, with its switched outputs as they were judged
 * @returns one entry a thing to do; none where every output passes
 * Source: `setPointShares`, `judgeSetPoint`; own choice of what each asks for.
 * @example switchSteps({ switching: [], unit: "mm", rangeLower: 0, rangeUpper: 1 }) // []
 */
export function switchSteps(
  state: Pick<PhaseState, "switching" | "unit" | "rangeLower" | "rangeUpper">,
): readonly SwitchStep[] {
  const exchanged = exchangedWith(state.switching, state);
  return state.switching.flatMap((output) => {
    const other = exchanged.get(output.output.output);
    const ofSetPoint = other === undefined ? setPointOf(output, state.unit) : exchangedStep(output, other, state.unit);
    const byTrips = [...ofSetPoint, ...travelOf(output)];
    const doubt = output.found === null ? undefined : noteDoubt(output.output, output.found, spanOf(state));
    const name = output.output.output;
    return [
      ...wiringOf(output),
      ...statesOf(output),
      ...(byTrips.length > 0 && doubt !== undefined ? [doubtStep(name, doubt)] : byTrips),
    ];
  });
}

/** Said of both of them, in the same words of what to do, so that it stands there once. */
function exchangedStep(
  { output: { output, setPoint }, found }: SwitchedState,
  other: string,
  unit: string,
): SwitchStep[] {
  const [first, second] = [output, other].toSorted();
  const at = setPoint + (found?.setPoint?.error ?? 0);
  return [
    {
      action: "repair wiring or set-up",
      of: "wiring",
      does: `see which of ${first} and ${second} is which, at the terminals, in the settings of the sensor and in the tables, and put right what is exchanged; teach neither of them before`,
      reason: `${output} trips at ${numberWords(at, unit, 4)}, where ${other} is set to.`,
    },
  ];
}

function doubtStep(output: string, doubt: TripDoubt): SwitchStep {
  return {
    action: "cannot be decided",
    of: "readings",
    does: `Compare the trips of ${output} with the sheet, or trip it again, three times each way; correct nothing by guess.`,
    reason:
      doubt === "exchanged"
        ? `${output} releases nearer than it operates, as its trips are noted, and no output does that: approach and recede may be exchanged.`
        : `One trip of ${output} lies far from its fellows: a slip, or a trip that does not belong to them.`,
    rule: "what was written down is in doubt",
  };
}

/**
 * Those of them that are not repairs, as steps of their own: repairs go with the others of their place.
 *
 * @param asked of `switchSteps`
 * @returns steps to teach an output, to read again, or to measure with a better standard
 * Source: own choice.
 * @example outputSteps([]) // []
 */
export function outputSteps(asked: readonly SwitchStep[]): RecommendedStep[] {
  return asked
    .filter(({ of }) => of !== "set-up" && of !== "wiring")
    .map(({ action, of, does, reason, rule = ruleOf(of) }) => stepOf({ action, of, does, rule, reasons: [reason] }));
}

function ruleOf(of: SwitchStep["of"]): string {
  if (of === "switched output") return "the switch point is off, and the analog value does not explain it";
  return of === "standard"
    ? "the uncertainty is too large for the tolerance of the set point"
    : "nothing tells a drifted teach from a shift";
}

function wiringOf({ output, wiring }: SwitchedState): SwitchStep[] {
  if (wiring.statement !== "fail") return [];
  const { inputMatch, functionMatch, onVoltage, offVoltage } = wiring;
  const name = output.output;
  const repair = { action: "repair wiring or set-up", of: "wiring" } as const;
  const fit = { ...repair, does: `make ${name} and its input fit` };
  const voltage = [onVoltage, offVoltage].some((judged) => judged?.statement === "fail");
  return [
    ...(inputMatch?.statement === "fail"
      ? [
          {
            ...fit,
            reason: `${name} is a ${output.polarity} output and needs a ${inputMatch.needs} input; this one is ${output.controllerInput}.`,
          },
        ]
      : []),
    ...(voltage
      ? [{ ...fit, reason: `The voltage across the input of ${name} is not one that it surely reads.` }]
      : []),
    ...(functionMatch?.statement === "fail"
      ? [
          {
            ...repair,
            does: `read the NO/NC setting of ${name}, and put right what is wrong, the setting or the table outputs`,
            reason: `By the states after its trips ${name} is ${functionMatch.seen}, and it is stated as ${output.function}.`,
          },
        ]
      : []),
  ];
}

/** Once on and once off after the same movement: one of the two was not so, or the output does not do the same each time. */
function statesOf({ output: { output }, found }: SwitchedState): SwitchStep[] {
  if (found?.notDetermined.function === undefined) return [];
  return [
    {
      action: "cannot be decided",
      of: "readings",
      does: `Trip ${output} again, three times each way, and note its state after each trip; correct nothing by guess.`,
      reason: `The states after the trips of ${output} contradict each other: on after the same movement in one cycle, and off in another.`,
      rule: "what was written down is in doubt",
    },
  ];
}

function setPointOf({ output: { output, setPoint }, found }: SwitchedState, unit: string): SwitchStep[] {
  if (found?.setPoint?.decision?.statement === "cannot be decided") {
    return [
      {
        action: "cannot be decided",
        of: "standard",
        does: `Find the switch point of ${output} with a standard of smaller uncertainty.`,
        reason: `U of the set point of ${output} leaves no error that could be accepted.`,
      },
    ];
  }
  if (found === null || found.setPoint === null) return [];
  if (found.setPoint.decision === null) return [unlimitedStep(output, found.setPoint.error, unit)];
  if (!isSetPointOff(found)) return [];
  const off = `${output} trips ${offWords(found.setPoint.error, unit)} its set point of ${numberWords(setPoint, unit)}`;
  const teach: SwitchStep = {
    action: "re-teach",
    of: "switched output",
    does: `Teach the switch point of ${output} anew, at ${numberWords(setPoint, unit)}.`,
    reason: `${off}, and the analog value explains little of it.`,
  };
  const shift: SwitchStep = {
    action: "repair wiring or set-up",
    of: "set-up",
    does: "look for what has moved, mount, datum or target, and put it back where it belongs",
    reason: `${off}, and the analog value is off by about the same: what both share has moved.`,
  };
  switch (found.shares?.consistentWith) {
    case "teach":
      return [teach];
    case "shift":
      return [shift];
    case "teach and shift":
      return [
        { ...shift, reason: `${off}; the analog value explains a part of it.` },
        { ...teach, reason: `${off}; the analog value explains a part of it only.` },
      ];
    default:
      return [
        {
          action: "cannot be decided",
          of: "readings",
          does: `Read the analog value around ${numberWords(setPoint, unit)} before ${output} is taught anew.`,
          reason: `${off}, and nothing tells a teach that drifted from a shift of mount or datum.`,
        },
      ];
  }
}

/** How far it trips off its set point is known, and not how far it may. */
function unlimitedStep(output: string, error: number, unit: string): SwitchStep {
  return {
    action: "cannot be decided",
    of: "switched output",
    does: `State how far ${output} may trip off its set point (set_point_tolerance of the table outputs), and make the record again.`,
    reason: `${output} trips ${offWords(error, unit)} its set point, and no tolerance of it is stated.`,
    rule: "an output whose set point has no tolerance neither passes nor fails",
  };
}

function offWords(error: number, unit: string): string {
  if (error === 0) return "at";
  return `${numberWords(Math.abs(error), unit, 3)} ${error < 0 ? "nearer than" : "farther than"}`;
}

function travelOf({ output: { output }, found }: SwitchedState): SwitchStep[] {
  if (found === null) return [];
  const { differential, repeat, chatter } = found;
  const failed = [
    ...(differential?.statement === "fail" ? ["differential travel"] : []),
    ...(repeat?.statement === "fail" ? ["repeat accuracy"] : []),
    ...(chatter?.statement === "fail" ? ["chatter"] : []),
  ];
  if (failed.length === 0) return [];
  return [
    {
      action: "repair wiring or set-up",
      of: "set-up",
      does: `look at target, mount and hysteresis setting of ${output}`,
      reason: `${output} does not pass in ${failed.join(", ")}.`,
    },
  ];
}
