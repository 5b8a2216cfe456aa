import { daysBetween } from "../../analysis/years/day-number.ts";
import { otherThanStated } from "../../proof/signing-refusals.ts";
import { signingState } from "../../proof/signing-state.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { counted } from "../../units/counted.ts";
import type { LineOfPage } from "./ledger-reader.ts";

/**
 * What a record is, in a few words: whose it is, how it is signed, when it was filed, and whether a later revision took
 * its place.
 *
 * @param ofPage what the ledger says of the very bytes that were verified; nothing where it says nothing
 */
export function verifiedWords(record: SealedRecord, ofPage: LineOfPage | undefined): string {
  const { instrument, calibration, revision } = record;
  const parts = [instrument.tag, calibration.calibration, `revision ${revision}`, signedWords(record, ofPage)];
  for (const one of signingState(record).given) {
    const stated = otherThanStated(record, one);
    if (stated !== undefined) parts.push(`${one.name} signed for the work, which by the record ${stated} did`);
  }
  if (ofPage !== undefined) parts.push(`filed ${filedWords(record, ofPage.line.at)}`);
  if (ofPage?.replacedBy !== undefined) parts.push(`superseded by revision ${ofPage.replacedBy}`);
  return parts.join(", ");
}

function signedWords(record: SealedRecord, ofPage: LineOfPage | undefined): string {
  const { isIssued, given, unreadable } = signingState(record);
  if (isIssued) return "signed";
  const isBegun = given.length + unreadable > 0;
  const paper = ofPage?.line.action === "filed" ? ofPage.line.paper : undefined;
  if (paper !== undefined) return `${isBegun ? "signed in part, and " : "signed "}on paper: ${paper}`;
  return isBegun ? "signed in part" : "not signed";
}

/** How long after the last signature: as long as that, a key could be used with a time of its holder's choice. */
function filedWords(record: SealedRecord, at: string): string {
  const { issuedAt } = signingState(record);
  const day = at.slice(0, 10);
  if (issuedAt === undefined) return `on ${day}`;
  const days = daysBetween(issuedAt.slice(0, 10), day);
  return days <= 0 ? "on the day of the last signature" : `${counted(days, "day")} after the last signature`;
}
