import type { Instrument } from "../../model/instrument.ts";
import type { DecisionRuleName } from "../../model/instrument-words.ts";
import type { DecisionRule } from "./decision-rule.ts";

/** A rule given for one run, over what the instrument says. */
export type RuleOverride = { name?: DecisionRuleName | undefined; guardFactor?: number | undefined };

/** Least test uncertainty ratio below which a record says so: common practice ("four to one"), no single source. */
export const usualMinimumRatio = 4;

/**
 * The decision rule of an instrument: its own, or the one given for this run; simple acceptance where there is none.
 *
 * @param instrument decision_rule and guard_factor
 * @param override rule given for the run
 * @returns the rule; a guard band is 1 · U where no factor is given, and 0 for simple acceptance
 * Source: ISO/IEC 17025:2017, 7.8.6.1; ILAC-G8:09/2019, w = U as the usual guard band.
 * @example ruleOf({ tag: "LT-1", rangeLower: 0, rangeUpper: 100, distanceUnit: "mm", signalLower: 4, signalUpper: 20,
 *   signalUnit: "mA", tolerance: 1, toleranceBasis: "distance", decisionRule: "guard band" }, {})
 *   // { name: "guard band", guardFactor: 1 }
 */
export function ruleOf(instrument: Instrument, override: RuleOverride): DecisionRule {
  const name = override.name ?? instrument.decisionRule ?? "simple acceptance";
  return { name, guardFactor: hasGuardFactor(name) ? (override.guardFactor ?? instrument.guardFactor ?? 1) : 0 };
}

/**
 * Whether a decision rule has a guard band that is a part of the expanded uncertainty.
 *
 * @param name of the rule
 * @returns false for simple acceptance, and for a managed guard band, whose width follows from the risk
 * Source: ILAC-G8:09/2019, w = r · U.
 * @example hasGuardFactor("simple acceptance") // false
 */
export function hasGuardFactor(name: DecisionRuleName): boolean {
  return name === "guard band" || name === "non-binary guard band";
}
