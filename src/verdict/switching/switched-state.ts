import { type TripDoubt, tripDoubt } from "../../analysis/plausibility/trip-doubt.ts";
import type { TripDirection } from "../../model/calibration-words.ts";
import type { Output } from "../../model/instrument.ts";
import type { Statement } from "../../model/statement.ts";
import type { InputMatch } from "./input-match.ts";
import type { SetPointShares } from "./set-point-shares.ts";
import type { FunctionMatch } from "./switching-function.ts";

type PassOrFail = "pass" | "fail";

/** Differential travel or repeat accuracy, percent of the operating distance. */
type Travel = { percent: number; limitPercent: number; statement: PassOrFail };

/** What was found of a switched output in one phase; distances in the instrument's unit. */
export type SwitchedFound = {
  trips: readonly { direction: TripDirection; cycle?: number | undefined; reference: number; isCounted: boolean }[];
  /** Most decimals of the references of its trips. */
  decimals: number;
  setPoint: { error: number; expandedUncertainty: number; decision: { statement: Statement } | null } | null;
  /** Null where the set point is where it should be, or nothing tells the parts apart. */
  shares: SetPointShares | null;
  differential: Travel | null;
  repeat: Travel | null;
  chatter: { statement: PassOrFail } | null;
  statement: Statement | null;
  /** Why a figure is not there, by its name; `function` where the states after its trips contradict each other. */
  notDetermined: Readonly<Record<string, string>>;
};

/** A switched output as it was judged, for whoever draws conclusions from it. */
export type SwitchedState = {
  output: Output;
  wiring: {
    inputMatch: InputMatch | null;
    /** Undefined where no state after a trip is stated. */
    functionMatch?: FunctionMatch | null | undefined;
    onVoltage?: { statement: PassOrFail } | null | undefined;
    offVoltage?: { statement: PassOrFail } | null | undefined;
    statement: PassOrFail | null;
  };
  /** Null where it was not tripped in the phase. */
  found: SwitchedFound | null;
};

/**
 * Whether the set point of an output is off: judged, and not accepted.
 *
 * @param found set point of one phase
 * @returns false for one that cannot be decided, which has no tolerance among others
 * Source: `judgeSetPoint`.
 * @example isSetPointOff({ setPoint: { error: 21, expandedUncertainty: 1, decision: { statement: "fail" } } }) // true
 */
export function isSetPointOff({ setPoint }: Pick<SwitchedFound, "setPoint">): boolean {
  const statement = setPoint?.decision?.statement;
  return statement === "fail" || statement === "conditional fail";
}

/**
 * Whether the trips of an output are in doubt as they are noted: then nothing rests on them.
 *
 * @param output its set point
 * @param found its trips
 * @param span of the range, same unit
 * @returns the doubt; undefined where there is none
 * Source: `tripDoubt`.
 * @example noteDoubt({ setPoint: 90 }, { trips: [{ direction: "approach", cycle: 1, reference: 91.2, isCounted: true },
 *   { direction: "recede", cycle: 1, reference: 90.1, isCounted: true }], decimals: 2 }, 150) // "exchanged"
 */
export function noteDoubt(
  { setPoint }: Pick<Output, "setPoint">,
  { trips, decimals }: Pick<SwitchedFound, "trips" | "decimals">,
  span: number,
): TripDoubt | undefined {
  return tripDoubt(
    trips.filter(({ isCounted }) => isCounted),
    { setPoint, span, step: 10 ** -decimals },
  );
}
