import type { Check } from "./check-context.ts";

/** Whoever reviewed or approved a calibration is not who performed it. */
export const people: Check = ({ drafts, report }) => {
  for (const draft of drafts.calibrations) {
    const { performedBy: person, reviewedBy, approvedBy } = draft.row;
    if (person === undefined) continue;
    if (isSamePerson(person, reviewedBy)) {
      const values = { person, action: "reviewed" };
      report("calibrations", draft, "model/reviewer-is-performer", { column: "reviewed_by", values });
    }
    if (isSamePerson(person, approvedBy)) {
      const values = { person, action: "approved" };
      report("calibrations", draft, "model/reviewer-is-performer", { column: "approved_by", values });
    }
  }
};

function isSamePerson(one: string, other: string | undefined): boolean {
  return other !== undefined && folded(one) === folded(other);
}

/** "T. Example" and "t example" are one person. */
function folded(name: string): string {
  return name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "");
}
