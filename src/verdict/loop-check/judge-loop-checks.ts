import type { LoopCheck } from "../../model/calibration.ts";
import { isBypassed } from "../../model/is-bypassed.ts";
import { type JudgedLoopCheck, judgeLoopCheck } from "./judge-loop-check.ts";
import { type ApplicableItem, type AppliedKey, applicableItems, foldedKey } from "./loop-items.ts";
import { type LimitContext, type LoopLimit, loopLimits } from "./loop-limits.ts";

/** A row of a loop check as judged, with the item of the list that it is; an item of the user's own has none. */
export type LoopCheckFinding = JudgedLoopCheck & { check: LoopCheck; item: ApplicableItem | undefined };

/** Everything that a loop check says. */
export type LoopCheckFindings = {
  findings: readonly LoopCheckFinding[];
  /** Items of the list that apply to the loop and have no result. */
  notLookedAt: readonly string[];
  /** Why the loop is not handed back, in words; empty where it is, or where that is not asked for. */
  incomplete: readonly string[];
};

/**
 * Judges the rows of a loop check against the list, the workbook and, where there are any, the readings.
 *
 * @param checks rows of one calibration, in the order of the table
 * @param context instrument, calibration, outputs
 * @param further limits that the readings add, by key
 * @returns a finding for each row, the items without a result, and what keeps a loop that is a safety function or was
 *   bypassed from being complete: that its last row "restored" does not say pass
 * Source: own choice; that a bypass ends with the proof of its removal is common practice of functional safety.
 * @example judgeLoopChecks([], { instrument: { ...needs.instrument, criticality: "safety" }, calibration:
 *   needs.calibration, outputs: [] }).incomplete // ["nobody has answered that the loop was restored"]
 */
export function judgeLoopChecks(
  checks: readonly LoopCheck[],
  context: LimitContext,
  further: ReadonlyMap<AppliedKey, LoopLimit> = new Map(),
): LoopCheckFindings {
  const items = applicableItems(context.instrument, context.outputs);
  const limits = new Map([...loopLimits(context), ...further]);
  const itemByKey = new Map(items.map((item) => [foldedKey(item.key), item]));
  const findings = checks.map((check) => {
    const item = itemByKey.get(foldedKey(check.item));
    return { ...judgeLoopCheck(check, item, item && limits.get(item.key)), check, item };
  });
  const answered = new Set(findings.filter(({ result }) => result !== "not looked at").map(({ item }) => item));
  return {
    findings,
    notLookedAt: items.filter((item) => !answered.has(item)).map(({ key }) => key),
    incomplete: incompleteOf(findings, context),
  };
}

function incompleteOf(
  findings: readonly LoopCheckFinding[],
  { instrument, calibration }: LimitContext,
): readonly string[] {
  if (instrument.criticality !== "safety" && !isBypassed(calibration)) return [];
  const last = findings.findLast(({ item }) => item?.key === "restored");
  if (last?.result === "pass") return [];
  if (last === undefined || last.result === "not looked at") return ["nobody has answered that the loop was restored"];
  return [`the answer to whether the loop was restored is: ${last.result}`];
}
