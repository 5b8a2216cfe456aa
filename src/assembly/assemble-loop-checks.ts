import { type Figure, isDetermined, notDetermined } from "../analysis/figures/figure.ts";
import { requiredSupply } from "../analysis/stages/burden.ts";
import { burdenLimit, highestCurrent, loopBurden } from "../analysis/stages/loop-burden.ts";
import type { CalibrationRows } from "../model/calibration-case.ts";
import type { Instrument } from "../model/instrument.ts";
import { isBypassed } from "../model/is-bypassed.ts";
import type { LoopCheckItem, LoopChecksRecord } from "../record/loop-check-schema.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import { judgeLoopChecks, type LoopCheckFinding } from "../verdict/loop-check/judge-loop-checks.ts";
import { orNull, type Reasons } from "./phase/assemble-figures.ts";
import { stageFindings } from "./stage-findings.ts";

/**
 * The loop check of a calibration: where there are rows of one, and where the loop is a safety function or was bypassed,
 * for then it must be said whether it was restored.
 *
 * @param record with its phases
 * @param rows of the calibration
 * @returns the part, or nothing; numbers at full precision
 * Source: `judge-loop-checks.ts`, `loop-burden.ts`.
 * @example assembleLoopChecks(switched, { ...rows, loopChecks: [] }) // {}, for a loop that is neither a safety
 *   function nor bypassed
 */
export function assembleLoopChecks(
  record: CalibrationRecord,
  rows: CalibrationRows,
): Pick<CalibrationRecord, "loopChecks"> {
  const { instrument, calibration, outputs } = record;
  const checks = rows.loopChecks.map(({ row }) => row);
  const isAsked = instrument.criticality === "safety" || isBypassed(calibration);
  if (checks.length === 0 && !isAsked) return {};
  const { findings, notLookedAt, incomplete } = judgeLoopChecks(
    checks,
    { instrument, calibration, outputs },
    stageFindings(record),
  );
  const reasons: Reasons = {};
  return {
    loopChecks: {
      items: findings.map((finding, index) => itemOf(finding, rows.loopChecks[index]?.line ?? 0)),
      notLookedAt: [...notLookedAt],
      incomplete: [...incomplete],
      burden: orNull("burden", burdenOf(instrument), reasons),
      notDetermined: reasons,
    },
  };
}

function itemOf({ check, item, ...judged }: LoopCheckFinding, row: number): LoopCheckItem {
  const { measured, checkedBy, time, remark } = check;
  return {
    row,
    item: item?.key ?? check.item,
    number: item?.number ?? null,
    result: judged.result,
    decidedBy: judged.decidedBy,
    ...(measured !== undefined && { measured }),
    unit: judged.unit,
    low: judged.limits.low,
    high: judged.limits.high,
    words: [check.low, check.high].filter((own) => typeof own === "string"),
    computed: judged.computed,
    basis: judged.basis,
    found: judged.found,
    outside: [...judged.outside],
    isContradiction: judged.isContradiction,
    ...(checkedBy !== undefined && { checkedBy }),
    ...(time !== undefined && { time }),
    ...(remark !== undefined && { remark }),
  };
}

function burdenOf(instrument: Instrument): Figure<NonNullable<LoopChecksRecord["burden"]>> {
  if (instrument.signalUnit !== "mA") return notDetermined("the signal is a voltage");
  const found = loopBurden(instrument);
  if (!isDetermined(found)) return found;
  const limit = burdenLimit(instrument);
  if (!isDetermined(limit)) return limit;
  const { loopPowered, supplyMin } = instrument;
  const highest = highestCurrent(instrument);
  const isTwoWire = loopPowered === true && supplyMin !== undefined;
  const neededSupplyVolts = isTwoWire ? requiredSupply(supplyMin, highest / 1000, found.total) : null;
  return { ...found, ...limit, highestCurrent: highest, neededSupplyVolts };
}
