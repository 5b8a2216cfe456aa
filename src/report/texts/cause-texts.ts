import type { EvidenceRecord, FindingRecord, NamedCauseRecord, PhaseCauses } from "../../record/causes-schema.ts";
import type { PhaseName } from "../../record/phase-name.ts";
import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { writeFixed, writePlain, writeSigned } from "../../units/write-number.ts";
import { firstReasons, recommendationNow } from "./recommendation-texts.ts";

/** The causes of each phase that was looked at, in the order of the work. */
export function causesOf(
  record: CalibrationRecord,
): readonly { name: PhaseName; title: string; causes: PhaseCauses }[] {
  return phasesOf(record).flatMap(({ name, title }) => {
    const causes = record.causes?.[name];
    return causes === undefined ? [] : [{ name, title, causes }];
  });
}

/**
 * The first finding of a phase that does not pass, where the first page does not say it elsewhere: a reason of what to
 * do repeats it, and as found and as left may have the same.
 */
export function causeOnFirstPage(
  record: CalibrationRecord,
  phase: PhaseName,
): { says: string; others: number } | undefined {
  const first = firstFinding(record, phase);
  if (first === undefined) return undefined;
  const steps = recommendationNow(record)?.steps ?? [];
  const isReason = steps.some((step) =>
    firstReasons(step, steps.length).some(({ cause }) => cause?.id === first.id && cause.stage === first.stage),
  );
  const isSaidLater = phase === "asFound" && firstFinding(record, "asLeft")?.says === first.says;
  const others = (record.causes?.[phase]?.findings.length ?? 0) - 1;
  return isReason || isSaidLater ? undefined : { says: first.says, others };
}

function firstFinding({ phases, causes }: CalibrationRecord, phase: PhaseName): FindingRecord | undefined {
  return phases[phase]?.verdict === "pass" ? undefined : causes?.[phase]?.findings[0];
}

/** Causes by the titles that stand in the record, so that one that this program does not know has its words too. */
export function titlesOf(causes: readonly NamedCauseRecord[]): string {
  return causes.map(({ title }) => title).join("; ");
}

/** A number of a finding as it reads: "+0.79 ± 0.02 % of span", "16.03 mA". */
export function evidenceWords({ value, unit, standardUncertainty }: EvidenceRecord): string {
  const isError = unit === "% of span" || unit === "steps";
  if (unit === "°C") return `${writeFixed(value, 1)} °C`;
  return `${numberWords(value, standardUncertainty, isError)}${unit === "" ? "" : ` ${unit}`}`;
}

/** Value and standard uncertainty to the same place; five digits where there is none. */
export function numberWords(value: number, standardUncertainty: number | undefined, isSigned: boolean): string {
  if (standardUncertainty !== undefined && standardUncertainty > leastUncertainty(value)) {
    const written = writeWithUncertainty(value, standardUncertainty);
    const sign = isSigned && value > 0 && /[1-9]/u.test(written.value) ? "+" : "";
    return `${sign}${written.value} ± ${written.uncertainty}`;
  }
  if (isSigned) return writeSigned(value, Math.abs(value) >= 10 ? 1 : 2);
  return Number.isInteger(value) ? writeFixed(value, 0) : writePlain(Number(value.toPrecision(5)));
}

/** An uncertainty below the seventh digit of its value is that of a computation, not of a measurement. */
function leastUncertainty(value: number): number {
  return 1e-7 * Math.max(1, Math.abs(value));
}
