import { signingState } from "../../proof/signing-state.ts";
import type { SignedRecord } from "./sign-records.ts";

/** What was signed, a row a record, for a terminal; the first row names the columns. */
export function signedRows(signed: readonly SignedRecord[]): readonly (readonly string[])[] {
  const rows = signed.map(({ record, page, signedBy, signedAs }) => [
    record.instrument.tag,
    record.calibration.calibration,
    signedAs,
    signedBy,
    stateOf(record),
    page,
  ]);
  return [["tag", "calibration", "signed as", "by", "the record is", "page"], ...rows];
}

function stateOf(record: SignedRecord["record"]): string {
  const { issuedAt, missing } = signingState(record);
  return issuedAt === undefined ? `a draft: ${missing.join(", ")} missing` : `issued ${issuedAt.slice(0, 10)}`;
}
