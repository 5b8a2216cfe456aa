import type { SetPointShares } from "../switching/set-point-shares.ts";
import { isSetPointOff, type SwitchedFound, type SwitchedState } from "../switching/switched-state.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { causeTitles, type Evidence, type Finding, rivalName } from "./finding.ts";

/**
 * Rows 27 and 32: a switched output that trips in the wrong place, or that its input cannot read.
 *
 * What is off, by how much and by whose share was judged before, in the direction that matters: here it gets its name.
 *
 * @param evidence of a phase
 * @returns findings for each output of the tag
 * Source: `judgeSetPoint`, `setPointShares`, `inputMatch`.
 * @example switchCauses(evidence)[0].row // 27
 */
export function switchCauses(evidence: CauseEvidence): readonly Finding[] {
  return evidence.switching.flatMap((state) => [...mismatch(state), ...switchPoint(evidence, state)]);
}

function mismatch({ output, wiring: { inputMatch }, found }: SwitchedState): readonly Finding[] {
  if (inputMatch === null || inputMatch.statement === "pass") return [];
  return [
    {
      row: 32,
      title: causeTitles[32] as string,
      stage: "switched output",
      says: `${output.output} is a ${output.polarity} output on a ${output.controllerInput} input, where it needs a ${inputMatch.needs} one. This is consistent with an input that never changes, or stands at 1 through a leakage.`,
      evidence: [{ name: "changes of state that were recorded", value: found?.trips.length ?? 0, unit: "" }],
      rivals: ["a wrong entry in the table outputs: labels of inputs differ from maker to maker"],
      separatedBy: "watch the sensor's indicator and the input bit together, and measure which way the current flows",
    },
  ];
}

function switchPoint({ instrument }: CauseEvidence, { output, found }: SwitchedState): readonly Finding[] {
  if (found === null || !isSetPointOff(found)) return [];
  const { title, says, rivals } = named(output.output, found.shares);
  return [
    {
      row: 27,
      title,
      stage: "switched output",
      says,
      evidence: numbersOf(output.setPoint, found, instrument.distanceUnit),
      rivals,
      separatedBy:
        found.shares === null
          ? "read the analog value around the set point against the reference"
          : "read the taught set point from the sensor, and compare it with the distance that the sensor shows at the trip",
    },
  ];
}

function numbersOf(setPoint: number, { setPoint: found, shares }: SwitchedFound, unit: string): Evidence[] {
  return [
    { name: "set point", value: setPoint, unit },
    ...(found === null ? [] : [{ name: "switches off it by", value: found.error, unit }]),
    ...(shares === null ? [] : [{ name: "the analog value explains", value: shares.shift, unit }]),
  ];
}

type Named = Pick<Finding, "title" | "says" | "rivals">;

function named(name: string, shares: SetPointShares | null): Named {
  const title = causeTitles[27] as string;
  switch (shares?.consistentWith) {
    case "shift":
      return {
        title: "switch point and analog value shifted together",
        says: `${name} trips off its set point by what the analog value is off, too. This is consistent with a shift that both share: mount, datum or air.`,
        rivals: [rivalName(10), rivalName(20)],
      };
    case "teach":
      return {
        title,
        says: `The analog value explains little of what ${name} trips off its set point. This is consistent with a switch point that drifted or was taught elsewhere.`,
        rivals: [],
      };
    case "teach and shift":
      return {
        title,
        says: `${name} trips off its set point by more than the analog value explains. This is consistent with a shift that both share and a switch point that was taught elsewhere.`,
        rivals: [rivalName(10)],
      };
    default:
      return {
        title,
        says: `${name} trips off its set point. This is consistent with a switch point that drifted, and with a shift that it shares with the analog value: nothing tells them apart here.`,
        rivals: [rivalName(10)],
      };
  }
}
