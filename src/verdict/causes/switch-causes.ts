import { spanOf } from "../../model/range.ts";
import { exchangedWith } from "../switching/exchanged-with.ts";
import type { SetPointShares } from "../switching/set-point-shares.ts";
import { isSetPointOff, noteDoubt, type SwitchedFound, type SwitchedState } from "../switching/switched-state.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import type { Evidence } from "./finding.ts";

// A switched output that trips in the wrong place, or that its input cannot read. What is off, by how much and by whose
// share was judged before, in the direction that matters: here it gets its name.

/** The input of the controller does not take the output. */
export const outputAndInputUnfit: Cause = {
  id: "output-and-input-unfit",
  title: "output and input do not fit (PNP, NPN), or the bit is inverted",
  place: "switched output",
  separatedBy: "watch the sensor's indicator and the input bit together, and measure which way the current flows",
  remedy: { cures: "switched output", does: null },
  detect: ({ switching }) =>
    switching.flatMap(({ output, wiring: { inputMatch }, found }) => {
      if (inputMatch === null || inputMatch.statement === "pass") return [];
      return [
        {
          says: `${output.output} is a ${output.polarity} output on a ${output.controllerInput} input, where it needs a ${inputMatch.needs} one. This is consistent with an input that never changes, or stands at 1 through a leakage.`,
          evidence: [{ name: "changes of state that were recorded", value: found?.trips.length ?? 0, unit: "" }],
          rivals: ["outputs-row-wrong"],
        },
      ];
    }),
};

const taughtSetPoint =
  "read the taught set point from the sensor, and compare it with the distance that the sensor shows at the trip";

/** The output trips off its set point, by more than the analog value explains or by nobody knows whose share. */
export const switchPointOff: Cause = {
  id: "switch-point-off",
  title: "switch point off",
  place: "switched output",
  separatedBy: taughtSetPoint,
  remedy: { cures: "switched output", does: null },
  detect: (evidence) => sightings(evidence, (shares) => shares?.consistentWith !== "shift", offWords),
};

/** The output trips off its set point by as much as the analog value is off. */
export const outputAndValueShifted: Cause = {
  id: "output-and-value-shifted",
  title: "switch point and analog value shifted together",
  place: "switched output",
  separatedBy: taughtSetPoint,
  remedy: { cures: "switched output", does: null },
  detect: (evidence) =>
    sightings(
      evidence,
      (shares) => shares?.consistentWith === "shift",
      (name) => ({
        says: `${name} trips off its set point by what the analog value is off, too. This is consistent with a shift that both share: mount, datum or air.`,
        rivals: ["datum-shifted", "air-temperature"],
      }),
    ),
};

/** Where no tolerance is stated the shares are there only for an error beyond its U: it passes nothing, and is seen. */
function isOffItsSetPoint(found: SwitchedFound): boolean {
  return found.setPoint?.decision === null ? found.shares !== null : isSetPointOff(found);
}

/** It releases too far from where it operates. */
export const differentialTooWide: Cause = {
  id: "differential-too-wide",
  title: "differential of the switched output too wide",
  place: "switched output",
  separatedBy:
    "read the hysteresis setting of the output, and trip it again slowly with a flat target square to the axis",
  remedy: { cures: "switched output", does: null },
  detect: ({ switching, instrument }) =>
    switching.flatMap(({ output, found }) => {
      const travel = found?.differential;
      if (travel?.statement !== "fail") return [];
      return [
        {
          says: `${output.output} releases farther from where it operates than its limit allows. This is consistent with a hysteresis that is set too wide, or with a window that was taught in place of a point.`,
          evidence: [
            { name: "differential travel", value: travel.percent, unit: "% of the operating distance" },
            { name: "limit", value: travel.limitPercent, unit: "% of the operating distance" },
          ],
          rivals: ["play-in-rig", ...notedWrong(output, found, instrument)],
        },
      ];
    }),
};

/** It changes more than once in a run. */
export const outputChatters: Cause = {
  id: "output-chatters",
  title: "chatter of the switched output",
  place: "switched output",
  separatedBy: "hold the target still at the trip and watch the output; then once more with motors and drives off",
  remedy: { cures: "switched output", does: null },
  detect: ({ switching }) =>
    switching.flatMap(({ output, found }) => {
      if (found?.chatter?.statement !== "fail") return [];
      return [
        {
          says: `${output.output} changes more than once while the target goes one way. This is consistent with chatter: a hysteresis that is too narrow for the scatter, a target that shakes, or interference on the wire.`,
          evidence: [{ name: "changes of state that were recorded", value: found.trips.length, unit: "" }],
          rivals: ["scatter-everywhere", "weak-target"],
        },
      ];
    }),
};

/** It operates at another distance each time. */
export const outputDoesNotRepeat: Cause = {
  id: "output-does-not-repeat",
  title: "a switched output that does not repeat",
  place: "switched output",
  separatedBy: "trip it ten times with a large, flat target square to the axis, slowly and by the same hand",
  remedy: { cures: "switched output", does: null },
  detect: ({ switching, instrument }) =>
    switching.flatMap(({ output, found }) => {
      const repeat = found?.repeat;
      if (repeat?.statement !== "fail") return [];
      return [
        {
          says: `${output.output} operates at another distance each time, by more than its limit allows. This is consistent with a weak or unsteady target, with a rig that is moved by hand, and with a switch stage that scatters.`,
          evidence: [
            { name: "repeat accuracy", value: repeat.percent, unit: "% of the operating distance" },
            { name: "limit", value: repeat.limitPercent, unit: "% of the operating distance" },
          ],
          rivals: ["weak-target", "reference-moved", ...notedWrong(output, found, instrument)],
        },
      ];
    }),
};

/** Each of two outputs trips where the other one is set to. */
export const outputsExchanged: Cause = {
  id: "outputs-exchanged",
  title: "two switched outputs exchanged",
  place: "switched output",
  separatedBy:
    "pull the core of one of them off its terminal, and see which input changes; read both set points from the sensor",
  remedy: { cures: "switched output", does: null },
  detect: ({ switching, instrument }) => {
    const exchanged = exchangedWith(switching, instrument);
    return switching.flatMap(({ output: { output, setPoint }, found }) => {
      const other = exchanged.get(output);
      if (other === undefined || !found?.setPoint) return [];
      return [
        {
          says: `${output} trips where ${other} is set to, and ${other} where ${output} is. This is consistent with outputs, cores or names that are exchanged.`,
          evidence: numbersOf(setPoint, { setPoint: found.setPoint, shares: null }, instrument.distanceUnit),
          rivals: ["switch-point-off"],
        },
      ];
    });
  },
};

type Words = Pick<Sighting, "says" | "rivals" | "separatedBy">;

function sightings(
  { switching, instrument }: CauseEvidence,
  isIts: (shares: SetPointShares | null) => boolean,
  wordsOf: (output: string, shares: SetPointShares | null) => Words,
): readonly Sighting[] {
  const exchanged = exchangedWith(switching, instrument);
  return switching.flatMap(({ output, found }) => {
    if (found === null || !isOffItsSetPoint(found) || !isIts(found.shares) || exchanged.has(output.output)) return [];
    const numbers = numbersOf(output.setPoint, found, instrument.distanceUnit);
    const words = wordsOf(output.output, found.shares);
    return [{ ...words, rivals: [...words.rivals, ...notedWrong(output, found, instrument)], evidence: numbers }];
  });
}

/** Trips that contradict each other may be noted wrong, whatever they show. */
function notedWrong(
  output: SwitchedState["output"],
  found: SwitchedFound | null,
  instrument: CauseEvidence["instrument"],
): readonly string[] {
  return found !== null && noteDoubt(output, found, spanOf(instrument)) !== undefined ? ["trips-noted-wrong"] : [];
}

function numbersOf(
  setPoint: number,
  { setPoint: found, shares }: Pick<SwitchedFound, "setPoint" | "shares">,
  unit: string,
): Evidence[] {
  return [
    { name: "set point", value: setPoint, unit },
    ...(found === null ? [] : [{ name: "switches off it by", value: found.error, unit }]),
    ...(shares === null ? [] : [{ name: "the analog value explains", value: shares.shift, unit }]),
  ];
}

function offWords(name: string, shares: SetPointShares | null): Words {
  const noAnalog = shares === null && {
    separatedBy: "read the analog value around the set point against the reference",
  };
  switch (shares?.consistentWith) {
    case "teach":
      return {
        says: `The analog value explains little of what ${name} trips off its set point. This is consistent with a switch point that drifted or was taught elsewhere.`,
        rivals: [],
      };
    case "teach and shift":
      return {
        says: `${name} trips off its set point by more than the analog value explains. This is consistent with a shift that both share and a switch point that was taught elsewhere.`,
        rivals: ["datum-shifted"],
      };
    default:
      return {
        says: `${name} trips off its set point. This is consistent with a switch point that drifted, and with a shift that it shares with the analog value: nothing tells them apart here.`,
        rivals: ["datum-shifted"],
        ...noAnalog,
      };
  }
}
