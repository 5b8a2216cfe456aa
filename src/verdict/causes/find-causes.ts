import type { Cause, Sighting } from "./cause.ts";
import { namedCause } from "./cause-of.ts";
import { causes } from "./causes.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import type { CauseNote, Finding } from "./finding.ts";
import { stageNotes } from "./stage-notes.ts";

/**
 * Everything that the readings of one phase are consistent with, and what they cannot tell.
 *
 * @param evidence of the phase
 * @returns findings in the order of the causes, none for a healthy loop; notes
 * Source: own choice of the order; each cause's own entry.
 * @example findCauses(evidence).findings.map(({ id }) => id) // ["datum-shifted"]
 */
export function findCauses(evidence: CauseEvidence): { findings: Finding[]; notes: CauseNote[] } {
  return {
    findings: causes.flatMap((cause) => cause.detect(evidence).map((sighting) => findingOf(cause, sighting))),
    notes: [...stageNotes(evidence)],
  };
}

function findingOf({ id, title, place, separatedBy }: Cause, sighting: Sighting): Finding {
  return {
    id,
    title,
    stage: sighting.stage ?? place,
    says: sighting.says,
    evidence: sighting.evidence,
    rivals: [...new Set(sighting.rivals)].filter((rival) => rival !== id).map(namedCause),
    separatedBy: sighting.separatedBy ?? separatedBy,
  };
}
