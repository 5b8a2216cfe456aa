import type { IndexEntry } from "./index-entry.ts";

/** A standard, and one certificate of it where only that one is doubted. */
export type DoubtedStandard = { standard: string; certificate?: string | undefined };

/** A filed record that rests on a standard; `isCurrent` where no later revision took its place. */
export type RestingRecord = { entry: IndexEntry; certificates: readonly string[]; isCurrent: boolean };

/**
 * The filed records that rest on a standard, in the order of the work: what is to be looked at again where it is found
 * wrong. Superseded revisions are there too, for somebody may have acted on them.
 *
 * @returns empty where no filed record names the standard, or its certificate
 * Source: own choice; ISO/IEC 17025:2017, 6.4.9 and 7.10.1, for what a standard found defective asks for.
 */
export function whereUsed(
  entries: readonly IndexEntry[],
  { standard, certificate }: DoubtedStandard,
): readonly RestingRecord[] {
  const last = new Map<string, number>();
  for (const entry of entries) {
    last.set(keyOf(entry), Math.max(entry.summary.revision, last.get(keyOf(entry)) ?? 0));
  }
  const resting = entries.flatMap((entry): RestingRecord[] => {
    const certificates = entry.standards
      .filter((one) => one.standard === standard && (certificate === undefined || one.certificate === certificate))
      .map((one) => one.certificate);
    if (certificates.length === 0) return [];
    return [{ entry, certificates, isCurrent: entry.summary.revision === last.get(keyOf(entry)) }];
  });
  return resting.toSorted(
    (one, other) => dayOf(one).localeCompare(dayOf(other)) || one.entry.number - other.entry.number,
  );
}

function keyOf({ summary: { tag, calibration }, filedAs = tag }: IndexEntry): string {
  return JSON.stringify([filedAs, calibration]);
}

const dayOf = ({ entry }: RestingRecord) => entry.summary.performedOn ?? "";
