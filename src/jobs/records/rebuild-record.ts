import { assembleRecord } from "../../assembly/assemble-record.ts";
import type { Problem } from "../../problems/problem.ts";
import { placeText, whatIsWrong } from "../../problems/sentence.ts";
import type { Doubt } from "../../record/doubt.ts";
import type { CalibrationRecord, SealedRecord } from "../../record/record-schema.ts";
import { rebuildRows } from "./rebuild-rows.ts";

type Warning = CalibrationRecord["warnings"][number];

/**
 * A record made once more from the rows that it carries. Taken as recorded is what no row tells: the program's version, digest and self-test,
 * the files' names and digests, options of the run, why it amends another record, the records before it, and its
 * warnings, because those may rest on rows and columns that belong to no calibration; seal and signatures are checked
 * for themselves. A warning that the rows do give and the record does not have is added.
 */
export function rebuildRecord(record: SealedRecord): { record: SealedRecord } | { doubts: readonly Doubt[] } {
  const rebuilt = rebuildRows(record);
  if ("doubts" in rebuilt) return rebuilt;
  const { warnings, ...rows } = rebuilt.rows;
  const lost = warnings.filter((warning) => !record.warnings.some((recorded) => isSame(warning, recorded)));
  const assembled = assembleRecord(rows, {
    softwareVersion: record.software.version,
    ranWith: record.software,
    digests: new Map(record.inputs.files.map(({ name, sha256, byteLength }) => [name, { sha256, byteLength }])),
    warnings: lost,
    ruleOverride: record.decisionRule.givenForThisRun,
    amendment: record.amendment,
    history: record.history,
    filedRate: record.filedRate,
    monteCarloDraws: record.monteCarloDraws,
  });
  const recorded = record.warnings.map(({ code, place, says }) => ({ code, place, says }));
  return { record: { ...assembled, warnings: [...recorded, ...assembled.warnings], ...sealedAs(record) } };
}

/** Seal and signatures as they are, in the order in which a record is written. */
function sealedAs({ signOff, seal }: SealedRecord): Pick<SealedRecord, "signOff" | "seal"> {
  const { form, digest, sha256, fingerprint } = seal;
  return {
    signOff: { signatures: signOff.signatures.map((one) => ({ protected: one.protected, signature: one.signature })) },
    seal: { form, digest, sha256, fingerprint },
  };
}

function isSame(warning: Problem, { code, place, says }: Warning): boolean {
  return code === warning.code && place === placeText(warning.place) && says === whatIsWrong(warning);
}
