import { standardsOf } from "../analysis/uncertainty/standard-contributions.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import type { Missing } from "../verdict/completeness/missing-points.ts";

type Measured = Pick<CalibrationRecord, "decisionRule" | "standards">;

/**
 * What a phase was read for and cannot prove: a last stage of the loop whose numbers nobody says how to judge, and an
 * uncertainty that is taken off the tolerance and leaves the reference out.
 *
 * @param record its decision rule, and the standards that it names
 * @param phase its readings
 * @returns reasons; empty where there are none
 * Source: own choice; ILAC-P14:09/2020 for what an uncertainty has to hold; simple acceptance takes none off.
 * @example missingEvidence(record, { readings: [] }) // []
 */
export function missingEvidence(
  { decisionRule, standards }: Measured,
  { readings }: Pick<PhaseRecord, "readings">,
): readonly Missing[] {
  return [...unjudgedStage(readings), ...(readings.length === 0 ? [] : unknownReference(decisionRule, standards))];
}

function unjudgedStage(readings: PhaseRecord["readings"]): readonly Missing[] {
  const has = (field: keyof PhaseRecord["readings"][number]) => readings.some((one) => one[field] !== undefined);
  if (has("loopErrorDistance")) return [];
  if (has("value")) return [unjudged("the controller's value was", "value_lower and value_upper")];
  if (has("counts") && !has("inputCardErrorDistance") && !isJudgedByCounts(readings)) {
    return [unjudged("the raw counts were", "counts_lower and counts_upper")];
  }
  return [];
}

/** Where no signal was read, the counts are the first stage, and their error is that of the reading. */
function isJudgedByCounts(readings: PhaseRecord["readings"]): boolean {
  return (
    readings.every(({ signal }) => signal === undefined) && readings.some((one) => one.errorDistance !== undefined)
  );
}

function unjudged(what: string, columns: string): Missing {
  return { about: "stage", says: `${what} read and not judged, for ${columns} are not stated` };
}

function unknownReference(
  { name }: CalibrationRecord["decisionRule"],
  standards: CalibrationRecord["standards"],
): readonly Missing[] {
  const isKnown = standardsOf(standards, "distance").some(
    ({ expandedUncertainty }) => expandedUncertainty !== undefined,
  );
  if (name === "simple acceptance" || isKnown) return [];
  const says = `the decision rule (${name}) takes the uncertainty off the tolerance, and no standard of the reference distance is named with its own: U leaves it out`;
  return [{ about: "uncertainty", says }];
}
