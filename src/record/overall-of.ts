import type { OverallRecord } from "./overall-schema.ts";
import { isInTolerance, outputsStatement, phaseStatement } from "./phase-statement.ts";
import { lastPhaseName } from "./phases-of.ts";
import type { CalibrationRecord } from "./record-schema.ts";

/**
 * What a record says of the loop as a whole; of one of form 1, which did not ask whether enough was read, the worst of
 * readings and switched outputs in its last phase, and whether the loop was handed back.
 *
 * @param record of any form, in the present one
 * @returns its own word, or that of form 1
 * Source: `assembleOverall`; own choice for form 1.
 * @example overallOf(record) === record.overall // true
 */
export function overallOf(record: CalibrationRecord): OverallRecord {
  if (record.overall !== undefined) return record.overall;
  const of = record.phases.asFound === undefined && record.phases.asLeft === undefined ? null : lastPhaseName(record);
  const word = of === null ? null : phaseStatement(record, of);
  const missing = (record.loopChecks?.incomplete ?? []).map((says) => ({ about: "restored" as const, says }));
  const isOpen = word === null || (missing.length > 0 && isInTolerance(word));
  return {
    word: isOpen ? "not complete" : word,
    of,
    loop: (of && record.phases[of]?.verdict) ?? null,
    outputs: of === null ? null : outputsStatement(record, of),
    loopCheck: null,
    complete: missing.length === 0 && word !== null,
    missing,
  };
}
