import type { Stage } from "../../analysis/readings/loop.ts";
import type { StageName } from "../../model/loop-stages.ts";
import type { Statement } from "../../model/statement.ts";
import type { Finding } from "../causes/finding.ts";
import type { DecisionRule } from "../decision/decision-rule.ts";
import type { LoopItemKey } from "../loop-check/loop-items.ts";
import type { SwitchedState } from "../switching/switched-state.ts";
import type { DriftFindings } from "./drift-history.ts";
import type { RecommendationThresholds } from "./recommendation-thresholds.ts";

/** The error that a correction leaves; part: of the tolerance on its side, 1 for the whole of it. */
export type ForecastLeft = { statement: Statement; errorDistance: number; part: number };

/** What re-teaching could do for one part of the loop, as `reteach` found it; null where it found none. */
export type Forecast = {
  now: ForecastLeft;
  best: ForecastLeft | null;
  ends: ForecastLeft | null;
  isCurable: boolean | null;
  /** What the best two constants leave for certain, whatever the number of readings; part of the tolerance. */
  steadyLeft?: number;
  /** The chance that new readings pass after a teach, 0 to 1. */
  chanceOfPass?: number;
  whyNot: { because: "spread at one point" | "curvature"; point: number; halfSpread: number } | null;
};

/** One part of the loop as it was judged; worst: greatest error of a reading over its tolerance. */
export type PartState = { statement: Statement | null; worst: number; forecast: Forecast | null };

/** What the readings say without those that stand apart: wild ones, exchanged rows, slips; null for a part that was not read. */
export type OthersState = {
  /** How many stand apart. */
  apart: number;
  sensor: ForecastLeft | null;
  controller: ForecastLeft | null;
  /** Where the worst of the others was read, at the end of the loop. */
  point: number;
};

/** The judged point that stands for the phase. */
export type WorstPoint = {
  point: number;
  errorDistance: number;
  expandedUncertainty: number;
  /** The lesser side of the tolerance. */
  tolerance: number;
  /** Greatest contribution of its budget, in words. */
  greatestSource: string | null;
};

/** An item of the loop check that does not pass, or says one thing and shows another. */
export type FailedCheck = {
  /** As it was written down, and as the list calls it; null for an item of the user's own. */
  item: string;
  key: LoopItemKey | null;
  says: string;
  isContradiction: boolean;
};

/** What one phase of a record shows, as far as a recommendation rests on it; distances in one unit. */
export type PhaseState = {
  unit: string;
  rangeLower: number;
  rangeUpper: number;
  rule: DecisionRule;
  minimumTestUncertaintyRatio: number;
  statement: Statement | null;
  /** The quantity that the sensor's part stands for. */
  judged: Stage;
  sensor: PartState | null;
  controller: PartState | null;
  /** Greatest error of each stage's line over the tolerance. */
  stageParts: readonly { stage: StageName; part: number }[];
  /** Whether zero or span of the sensor is off by more than its noise explains; absent where there is no line. */
  isLineOff?: boolean;
  findings: readonly Pick<Finding, "id" | "stage" | "says" | "rivals" | "separatedBy">[];
  /** Absent where none stands apart. */
  others?: OthersState;
  /** Readings inside the range that reported a fault instead of a distance. */
  faultReadings: number;
  /** Two standard deviations of repeated readings over the tolerance; or why there are none. */
  scatter: number | { notDetermined: string };
  /** The least that this may be for the readings that there are; 0 where nothing was repeated. */
  leastScatter: number;
  /** Half of the greatest gap between rising and falling over the tolerance. */
  gap: number | null;
  /** Whether the loop check looked at the target. */
  isTargetProved: boolean;
  /** Whether the loop check found that the output settles in time: its step response, or its filters. */
  isResponseProved?: boolean;
  /** New constants for the controller from the forecast, and what they would leave. */
  newConstants: Statement | null;
  worstPoint: WorstPoint | null;
  /** Why the phase is not complete, in words. */
  missing: readonly string[];
  /** The loop was adjusted and not read since: what was read before says nothing of how it stands. */
  isUnread?: boolean;
  /** Nothing is missing but test points, and three or more were read. */
  isThinlyRead?: boolean;
  switching: readonly SwitchedState[];
  failedChecks: readonly FailedCheck[];
  /** What would be left without the error of the day's air, over the tolerance. */
  leftWithoutAir: number | null;
  /** Whether it had been taught anew when these readings were taken. */
  isJustTaught: boolean;
  /** Whether the sensor passed before that, as found. */
  isPassingBefore?: boolean;
  drift: DriftFindings;
  thresholds: RecommendationThresholds;
};
