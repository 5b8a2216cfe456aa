import type { Output } from "../../model/instrument.ts";
import type { Statement } from "../../model/statement.ts";
import type { InputMatch } from "./input-match.ts";
import type { SetPointShares } from "./set-point-shares.ts";

type PassOrFail = "pass" | "fail";

/** Differential travel or repeat accuracy, percent of the operating distance. */
type Travel = { percent: number; limitPercent: number; statement: PassOrFail };

/** What was found of a switched output in one phase; distances in the instrument's unit. */
export type SwitchedFound = {
  trips: readonly unknown[];
  setPoint: { error: number; expandedUncertainty: number; decision: { statement: Statement } | null } | null;
  /** Null where the set point is where it should be, or nothing tells the parts apart. */
  shares: SetPointShares | null;
  differential: Travel | null;
  repeat: Travel | null;
  chatter: { statement: PassOrFail } | null;
  statement: Statement | null;
};

/** A switched output as it was judged, for whoever draws conclusions from it. */
export type SwitchedState = {
  output: Output;
  wiring: { inputMatch: InputMatch | null; statement: PassOrFail | null };
  /** Null where it was not tripped in the phase. */
  found: SwitchedFound | null;
};

/**
 * Whether the set point of an output is off: not accepted or, where it has no tolerance, off by more than its U.
 *
 * @param found set point and shares of one phase
 * @returns false for one that cannot be decided
 * Source: `judgeSetPoint`; without a tolerance the shares are there only where the error is beyond its U.
 * @example isSetPointOff({ setPoint: { error: 21, expandedUncertainty: 1, decision: { statement: "fail" } },
 *   shares: null }) // true
 */
export function isSetPointOff({ setPoint, shares }: Pick<SwitchedFound, "setPoint" | "shares">): boolean {
  if (setPoint === null) return false;
  if (setPoint.decision === null) return shares !== null;
  return setPoint.decision.statement === "fail" || setPoint.decision.statement === "conditional fail";
}
