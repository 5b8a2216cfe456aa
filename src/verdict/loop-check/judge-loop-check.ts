import type { LoopCheck } from "../../model/calibration.ts";
import { convert } from "../../units/convert.ts";
import { isInside, type NumberLimits } from "../../units/is-inside.ts";
import { unitOf, unitTable } from "../../units/unit-table.ts";
import { outsideWords } from "./limit-words.ts";
import type { ApplicableItem } from "./loop-items.ts";
import type { LoopLimit } from "./loop-limits.ts";

export const loopResults = ["pass", "fail", "not applicable", "not looked at"] as const;
export type LoopResult = (typeof loopResults)[number];

/** One row of a loop check and what follows from it; numbers in the row's unit. */
export type JudgedLoopCheck = {
  result: LoopResult;
  /** Whether the result was written down or follows from the number. */
  decidedBy: "technician" | "number" | null;
  unit: string | null;
  limits: NumberLimits;
  /** The same quantity as the workbook's other tables give it. */
  computed: number | null;
  basis: string | null;
  /** What the readings or the tables say of the item without a number, in words. */
  found: string | null;
  /** What lies outside its limits, in words; empty where nothing does. */
  outside: readonly string[];
  /** The row says pass, and a number or another part of the record says otherwise. */
  isContradiction: boolean;
};

/**
 * Judges one row of a loop check: the number against the row's own limits and against those that follow from the
 * workbook, the narrower of the two on each side; on a limit is inside.
 *
 * @param check the row; its numbers in its own unit, or in that of the item where it names none
 * @param item of the list, or undefined for one of the user's own
 * @param limit what the workbook says of the item, in the item's unit, or undefined
 * @returns the technician's result; where none is written, pass or fail as the number says, if there is a number with a
 *   limit; else "not looked at". A row that says pass while something lies outside is a contradiction
 * Source: own choice.
 * @example judgeLoopCheck({ calibration: "C-1", item: "warm-up", measured: 20, low: 15 }, undefined, undefined).result // "pass"
 */
export function judgeLoopCheck(
  check: LoopCheck,
  item: Pick<ApplicableItem, "unit"> | undefined,
  limit: LoopLimit | undefined,
): JudgedLoopCheck {
  const unit = check.unit ?? item?.unit ?? null;
  const known = limit && inUnit(limit, item?.unit, unit);
  const limits = { low: narrower(Math.max, check.low, known?.low), high: narrower(Math.min, check.high, known?.high) };
  const computed = known?.computed ?? null;
  const outside = [
    ...numberOutside(check.measured, "", limits, unit),
    ...numberOutside(computed, " by the tables", limits, unit),
    ...(limit?.finding?.isPass === false ? [limit.finding.says] : []),
  ];
  const isNumberDecided = hasLimit(limits) && typeof check.measured === "number";
  const byNumber = outside.length === 0 ? "pass" : "fail";
  return {
    result: check.result ?? (isNumberDecided ? byNumber : "not looked at"),
    decidedBy: check.result !== undefined ? "technician" : isNumberDecided ? "number" : null,
    unit,
    limits,
    computed,
    basis:
      limit === undefined ? null : known === undefined ? `not compared: it is measured in ${item?.unit}` : limit.basis,
    found: limit?.finding?.says ?? null,
    outside,
    isContradiction: check.result === "pass" && outside.length > 0,
  };
}

function hasLimit({ low, high }: NumberLimits): boolean {
  return low !== null || high !== null;
}

/** The limit in the unit of the row; nothing where the two units do not measure the same. */
function inUnit(limit: LoopLimit, from: string | undefined, to: string | null): LoopLimit | undefined {
  if (from === undefined || to === null || from.toLowerCase() === to.toLowerCase()) return limit;
  const source = unitOf(from);
  const target = unitOf(to);
  if (source === undefined || target === undefined || unitTable[source].kind !== unitTable[target].kind) return;
  const turned = (value: number | undefined) => (value === undefined ? undefined : convert(value, source, target));
  return { ...limit, low: turned(limit.low), high: turned(limit.high), computed: turned(limit.computed) };
}

function narrower(
  pick: (one: number, other: number) => number,
  own: number | string | undefined,
  known: number | undefined,
): number | null {
  if (typeof own !== "number") return known ?? null;
  return known === undefined ? own : pick(own, known);
}

function numberOutside(
  value: number | string | null | undefined,
  origin: string,
  limits: NumberLimits,
  unit: string | null,
): readonly string[] {
  if (typeof value !== "number" || isInside(value, limits)) return [];
  return [outsideWords(value, limits, unit, origin)];
}
