import { loopOf } from "../../../src/analysis/readings/loop.ts";
import { switchedStates } from "../../../src/assembly/switched-states.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import { type CauseInputs, causeEvidence } from "../../../src/verdict/causes/evidence/cause-evidence.ts";
import { findCauses } from "../../../src/verdict/causes/find-causes.ts";
import { converterFaults, type DrawnFault, type FaultDraw } from "./converter-faults.ts";
import { instrumentOf, takeReadings, valueDecimals } from "./faulty-loop.ts";
import { healthy, otherFaults } from "./other-faults.ts";
import { recordOfRows, rowsOfDraw } from "./record-of-draw.ts";
import { seededDraws } from "./seeded-draws.ts";
import { sensorFaults } from "./sensor-faults.ts";

const draws: Readonly<Record<string, FaultDraw>> = { healthy, ...converterFaults, ...sensorFaults, ...otherFaults };

/** The causes that are drawn, by their ids; a place in this list is part of the seed of its draws, so it is only added to. */
export const drawnCauses = [
  "live-zero-scaled-from-zero",
  "from-zero-scaled-as-live-zero",
  "low-constant-wrong",
  "high-constant-wrong",
  "full-scale-count-wrong",
  "units-mixed-up",
  "constants-exchanged",
  "slope-turned-round",
  "offset-of-card",
  "datum-shifted",
  "shunt-or-gain-off",
  "leakage-across-loop",
  "current-limited",
  "voltage-output-overloaded",
  "blind-zone",
  "obstruction-in-beam",
  "target-beyond-range",
  "target-lost-fault",
  "target-lost-held",
  "air-temperature",
  "ends-taught-wrong",
  "output-not-settled",
  "play-in-rig",
  "axis-tilted",
  "weak-target",
  "curved-characteristic",
  "switch-point-off",
  "value-clamped-or-cut",
  "open-wire",
  "current-and-voltage-mixed-up",
  "other-channel",
  "output-and-input-unfit",
  "typing-error",
  "warm-up-or-drift",
  "one-point-off",
  "square-root-taken",
  "offset-in-controller",
] as const;

type DrawnCause = "healthy" | (typeof drawnCauses)[number];

/** What a draw may be called as well: the same fault, named by what its size or another reading shows of it. */
const alsoCalled: Readonly<Partial<Record<DrawnCause, readonly string[]>>> = {
  "high-constant-wrong": ["both-constants-wrong"],
  "ends-taught-wrong": ["both-ends-taught-wrong"],
  "output-not-settled": ["hysteresis-of-sensor"],
  "switch-point-off": ["output-and-value-shifted"],
  "shunt-or-gain-off": ["range-of-card-wrong", "voltage-divided", "signal-changed"],
};

/** Draw number `number` of a cause, with the seed of its readings. */
export function drawOf(cause: DrawnCause, number: number): { drawn: DrawnFault; seed: number } {
  const place = cause === "healthy" ? 0 : drawnCauses.indexOf(cause) + 1;
  const seed = 1_000_003 * place + 7919 * number + 17;
  return { drawn: (draws[cause] as FaultDraw)(seededDraws(seed)), seed: seed + 1 };
}

/** A drawn fault with the sheet that it leaves, as the search for causes takes it. */
export function inputsOf(drawn: DrawnFault, seed: number): CauseInputs {
  const { setting, fault } = drawn;
  const instrument = instrumentOf(setting);
  return {
    instrument,
    calibration: { calibration: "C-1", tag: "LT-1", ...setting.calibration },
    loop: loopOf(instrument),
    readings: takeReadings(setting, fault, seededDraws(seed)),
    switching: setting.outputs.length === 0 ? [] : switchedStates(recordOfRows(rowsOfDraw(drawn, seed)), "asFound"),
    loopChecks: setting.loopChecks,
    decimals: { reference: 1, signal: 3, signalAtCard: 3, counts: 0, value: valueDecimals(setting) },
    sharedUncertainty: 0,
  };
}

/** The same without some columns. */
export function withoutColumns(inputs: CauseInputs, columns: readonly (keyof Reading)[]): CauseInputs {
  const readings = inputs.readings.map(
    (reading) =>
      Object.fromEntries(
        Object.entries(reading).filter(([key]) => !columns.some((column) => column === key)),
      ) as Reading,
  );
  return { ...inputs, readings };
}

export type Classified = {
  variant: string;
  ids: readonly string[];
  stages: readonly string[];
  /** Whether the cause that was planted is found, named as a rival only, or not at all. */
  outcome: "found" | "rival" | "missed";
  isAlone: boolean;
};

/** What the search says of draw number `number` of a cause; another name of the same fault counts as its own. */
export function classifyDraw(cause: DrawnCause, number: number): Classified {
  const { drawn, seed } = drawOf(cause, number);
  const { findings } = findCauses(causeEvidence(inputsOf(drawn, seed)));
  const others = alsoCalled[cause] ?? [];
  const ids = findings.map(({ id }) => (others.includes(id) ? cause : id));
  const isFound = ids.includes(cause);
  const isRival = findings.some(({ rivals }) => rivals.some(({ id }) => id === cause));
  return {
    variant: drawn.variant,
    ids,
    stages: findings.map(({ stage }) => stage),
    outcome: isFound ? "found" : isRival ? "rival" : "missed",
    isAlone: isFound && new Set(ids).size === 1,
  };
}
