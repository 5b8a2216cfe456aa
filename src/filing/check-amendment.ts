import { canonicalText } from "../proof/canonical-text.ts";
import { isTyped, recordChanges } from "../proof/record-changes.ts";
import type { Doubt } from "../record/doubt.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import type { ReadRecord } from "../record/written-record.ts";

/** A record, and the JSON that it was written as. */
type Revision = Pick<ReadRecord, "record" | "form"> & { written: object };

/**
 * Doubts whether a revision says rightly which record it replaces, and everything that differs from it.
 *
 * What was compared when the revision was made were two records of its form. Where the replaced one is of an earlier
 * form, only what was typed is compared again: that no form changes, and how else the earlier one was read then, no
 * later program knows.
 */
export function checkAmendment(
  replaced: Revision,
  { record, written, form }: Revision,
  place: string,
): readonly Doubt[] {
  const doubt = (says: string): Doubt => ({ about: "folder", place, says });
  const { amendment, revision } = record;
  if (amendment === undefined) return [doubt(`it is revision ${revision} and does not say what it amends`)];
  const { replaces, changes } = amendment;
  if (replaces.revision !== revision - 1 || replaces.sha256 !== replaced.record.seal.sha256) {
    return [doubt(`it says that it replaces another record than the filed revision ${revision - 1}`)];
  }
  const isSameForm = replaced.form === form;
  const every = recordChanges(replaced.written as CalibrationRecord, written as CalibrationRecord);
  const found = isSameForm ? every : every.filter(isTyped);
  const listed = isSameForm ? changes : changes.filter(isTyped);
  if (!isCanonical(found) || !isCanonical(listed)) return [doubt("it holds what JSON cannot: half of a character")];
  if (canonicalText(found) === canonicalText(listed)) return [];
  return [
    doubt(`its list of changes is not what differs from revision ${revision - 1}: ${differences(found, listed)}`),
  ];
}

type Changes = readonly { place: string }[];

/** The first place in which two lists differ. */
function differences(found: Changes, listed: Changes): string {
  const index = found.findIndex((change, at) => canonicalText(change) !== canonicalText(listed[at] ?? null));
  const first = found[index] ?? listed[found.length];
  return `${listed.length} are listed, ${found.length} were found, the first that differs is ${first?.place ?? "none"}`;
}

function isCanonical(changes: Changes): boolean {
  try {
    return canonicalText(changes) !== "";
  } catch {
    return false;
  }
}
