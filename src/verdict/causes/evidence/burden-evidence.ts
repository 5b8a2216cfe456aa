import { convert } from "../../../units/convert.ts";
import { type UnitSymbol, unitOf, unitTable } from "../../../units/unit-table.ts";
import type { LoopItemKey, OwnItemKey } from "../../loop-check/loop-items.ts";
import type { Evidence } from "../finding.ts";
import type { CauseEvidence } from "./cause-evidence.ts";

/**
 * The number that a loop check holds under one of several names.
 *
 * @param evidence with the loop checks
 * @param names as people write them; capitals, spaces and marks do not count
 * @param unit in which the number is wanted; a row without a unit is taken to be in it
 * @returns the number measured, in that unit; undefined where none of them is there, it is words, or of another kind
 * Source: own choice.
 * @example checkedNumber({ loopChecks: [{ calibration: "C-1", item: "burden", measured: 0.5, unit: "kΩ" }] }, ["burden"], "Ω") // 500
 */
export function checkedNumber(
  { loopChecks }: Pick<CauseEvidence, "loopChecks">,
  names: readonly (LoopItemKey | OwnItemKey)[],
  unit: UnitSymbol,
): number | undefined {
  for (const name of names) {
    for (const { item, measured, unit: written } of loopChecks) {
      if (folded(item) !== folded(name) || typeof measured !== "number") continue;
      const stated = written === undefined ? unit : unitOf(written);
      if (stated !== undefined && unitTable[stated].kind === unitTable[unit].kind)
        return convert(measured, stated, unit);
    }
  }
  return undefined;
}

function folded(text: string): string {
  return text.toLowerCase().replace(/[^a-z0-9]/gu, "");
}

/**
 * What the loop carried when 20 mA were simulated at the sensor's end.
 *
 * @param evidence with the loop checks
 * @returns mA, or undefined where nobody tried
 * Source: the loop check "simulated 20 mA".
 * @example fullSimulation({ loopChecks: [{ item: "simulated 20 mA", measured: 16.1 }] }) // 16.1
 */
export function fullSimulation(evidence: Pick<CauseEvidence, "loopChecks">): number | undefined {
  return checkedNumber(evidence, ["simulated 20 mA"], "mA");
}

/**
 * The greatest current that supply and burden allow: I = (V − V_min) / R.
 *
 * @param evidence with the loop checks and the instrument: supply voltage and burden, measured or stated
 * @returns mA with the numbers that it came from; undefined where one of them is missing
 * Source: Ohm's law.
 * @example burdenLimitedCurrent({ loopChecks: [], instrument: { supplyVoltage: 18, supplyMin: 10, cardResistance: 500 } }).milliamps
 *   // 16
 */
export function burdenLimitedCurrent(
  evidence: Pick<CauseEvidence, "loopChecks" | "instrument">,
): { milliamps: number; evidence: Evidence[] } | undefined {
  const { supplyVoltage, supplyMin, cardResistance, barrierResistance = 0 } = evidence.instrument;
  const supply = checkedNumber(evidence, ["supply voltage", "supply without load"], "V") ?? supplyVoltage;
  const stated = cardResistance === undefined ? undefined : cardResistance + barrierResistance;
  const burden = checkedNumber(evidence, ["burden"], "Ω") ?? stated;
  if (supply === undefined || burden === undefined || burden <= 0 || supplyMin === undefined) return undefined;
  const milliamps = (1000 * (supply - supplyMin)) / burden;
  return {
    milliamps,
    evidence: [
      { name: "supply", value: supply, unit: "V" },
      { name: "the sensor needs", value: supplyMin, unit: "V" },
      { name: "burden", value: burden, unit: "Ω" },
      { name: "supply and burden allow", value: milliamps, unit: "mA" },
    ],
  };
}
