import { canonicalText } from "../proof/canonical-text.ts";
import { recordChanges } from "../proof/record-changes.ts";
import type { Doubt } from "../record/doubt.ts";
import type { SealedRecord } from "../record/record-schema.ts";

/** Doubts whether a revision says rightly which record it replaces, and everything that differs from it. */
export function checkAmendment(replaced: SealedRecord, record: SealedRecord, place: string): readonly Doubt[] {
  const doubt = (says: string): Doubt => ({ about: "folder", place, says });
  const { amendment, revision } = record;
  if (amendment === undefined) return [doubt(`it is revision ${revision} and does not say what it amends`)];
  const { replaces, changes } = amendment;
  if (replaces.revision !== revision - 1 || replaces.sha256 !== replaced.seal.sha256) {
    return [doubt(`it says that it replaces another record than the filed revision ${revision - 1}`)];
  }
  const found = recordChanges(replaced, record);
  if (!isCanonical(found) || !isCanonical(changes)) return [doubt("it holds what JSON cannot: half of a character")];
  if (canonicalText(found) === canonicalText(changes)) return [];
  return [
    doubt(`its list of changes is not what differs from revision ${revision - 1}: ${differences(found, changes)}`),
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
